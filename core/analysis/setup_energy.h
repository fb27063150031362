// The energy of a setup: the sum of its meters in service, or of its power logs where it has no
// meter; and each batch's share of it. Section 4 of the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/energy_figure.h"
#include "core/analysis/meter_curve.h"
#include "core/analysis/track.h"

#include <optional>
#include <set>
#include <string>
#include <variant>
#include <vector>

namespace holdband::analysis {

/// Power readings (W) integrated by the trapezoid rule over covered pieces. The bounds of such a
/// figure are unknown: the load between two readings is not recorded.
class PowerCurve {
public:
    PowerCurve(Series watts, Milliseconds gapLimit);
    EnergyFigure over(Span span) const;
    std::optional<Span> readSpan() const;

private:
    Series m_watts;
    Milliseconds m_gapLimit;
};

struct EnergySource {
    std::string name;
    std::variant<MeterCurve, PowerCurve> curve;
    std::optional<Instant> from; ///< in service from; absent: always
    std::optional<Instant> to;
    std::optional<double> accuracy; ///< fraction of the reading
};

/// Assumed for a meter of unknown accuracy class when two meters are compared.
inline constexpr double assumedMeterAccuracy = 0.02;

/// How bounds are widened by the meters' own accuracy: not at all, or for all but some meters.
struct Widening {
    bool wanted = false;
    std::set<std::string> sharedMeters; ///< measured both sides: common error
};

class SetupEnergy {
public:
    explicit SetupEnergy(std::vector<EnergySource> sources) : m_sources(std::move(sources)) {}

    const std::vector<EnergySource>& sources() const { return m_sources; }

    /// Metered while every source in service is metered.
    EnergyFigure over(Span span, const Widening& widening = {}) const;

    /// Names of the sources in service at any instant of the span.
    std::set<std::string> inService(Span span) const;

private:
    std::vector<Span> constantService(Span span) const;
    /// For each source, the spans in which it is in service and all sources in service are metered.
    /// A source's bounds are computed over each full span, even if another source comes into
    /// service during it.
    std::vector<std::vector<Span>> meteredBySource(Span span) const;

    std::vector<EnergySource> m_sources;
};

/// The largest doubt of a reading's time whose energy belongs to the span.
Milliseconds largestTimeDoubt(const SetupEnergy& setup, Span span);

/// From the first reading of any of the sources to the last; absent where none was read twice.
std::optional<Span> readSpan(const SetupEnergy& setup);

/// A stretch of time in which a batch has a constant share of its setup's energy.
struct WeightedSpan {
    Span span;
    double weight; ///< share of the setup's energy, 0 … 1
};

/// When a batch ran on the setup, and its weight in the sharing (1, or its volume).
struct ConcurrentBatch {
    Span span;
    double part = 1.0; ///< relative: 1, or its volume
    std::string batch = {};
};

/// Another batch that ran on the setup at the same time.
struct SharedTime {
    std::string batch;
    Milliseconds length{0};

    bool operator==(const SharedTime&) const = default;
};

/// The batches that shared the setup with `concurrentBatches[which]` inside `span`, and for how
/// long; in the order of `concurrentBatches`.
std::vector<SharedTime> sharedTimes(const std::vector<ConcurrentBatch>& concurrentBatches,
                                    std::size_t which, Span span);

/// The shares of `concurrentBatches[which]` over its own span: maximal spans of constant weight.
std::vector<WeightedSpan> sharesOf(const std::vector<ConcurrentBatch>& concurrentBatches,
                                   std::size_t which);

/// The parts of `span` in which no batch ran.
std::vector<Span> idleSpans(const std::vector<ConcurrentBatch>& concurrentBatches, Span span);

/// The batch's share of the setup's energy inside `span`.
EnergyFigure shareOver(const SetupEnergy& setup, const std::vector<WeightedSpan>& shares, Span span,
                       const Widening& widening = {});

} // namespace holdband::analysis
