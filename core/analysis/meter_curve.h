// The cumulative energy of one meter, from its register readings: exact at the readings, straight
// between them, with the bounds that the readings' resolution and the doubt of their times give.
// Sections 4 and 8.5 of the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/energy_figure.h"
#include "core/model/readings.h"
#include "core/quantity/energy.h"

#include <optional>
#include <vector>

namespace holdband::analysis {

/// One unit of the finest decimal among the readings (5.00 → 0.01 kWh); 1 kWh where there is none.
Energy finestDecimal(const std::vector<MeterReading>& readings);

struct MeterRegister {
    std::vector<MeterReading> readings; ///< strictly increasing in time, corrections applied
    std::optional<Energy> resolution;   ///< absent: finestDecimal(readings)
    std::optional<Energy> rollsOverAt;
    Milliseconds timeDoubt{0}; ///< of readings without one of their own
    /// Indices of readings (increasing) before which nothing was recorded: the energy since the
    /// reading before is unknown.
    std::vector<std::size_t> gapsBefore = {};
    /// Each step was rounded by itself, as the logged energy of an interval is, not the register
    /// as a whole: the errors of several steps add up.
    bool roundedEach = false;
};

class MeterCurve {
public:
    /// What happened between two successive readings.
    enum class Pair {
        plain,
        reset,   ///< the register restarted at 0 between the two
        unknown, ///< nothing was recorded, or it reads less than before and no reason was
                 ///< given: its energy is not counted
    };

    MeterCurve(const MeterRegister& meter, std::optional<Power> ratedPower);

    bool empty() const { return m_at.size() < 2; }
    std::size_t size() const { return m_at.size(); }
    Instant at(std::size_t i) const { return m_at[i]; }
    Milliseconds timeDoubt(std::size_t i) const { return m_doubt[i]; }
    /// From the first reading to the last; absent for fewer than two.
    std::optional<Span> readSpan() const
    {
        return empty() ? std::nullopt : std::optional(Span{m_at.front(), m_at.back()});
    }
    Pair pairBefore(std::size_t i) const { return m_pairs[i]; }
    /// The index of the reading at exactly that instant.
    std::optional<std::size_t> readingAt(Instant at) const;
    double resolutionKwh() const { return m_resolution; }
    /// How many pairs used more than the rated power allows.
    std::size_t pairsAboveRatedPower() const { return m_aboveRated; }

    /// Energy of the metered part of the span: between first and last reading, without
    /// unknown pairs. An edge that is a reading's time means the moment of that reading.
    EnergyFigure over(Span span) const;

private:
    /// Successive readings with plain pairs between them.
    struct Chain {
        std::size_t first;
        std::size_t last;
    };
    /// Bounds of the energy at an instant, from the start of the record.
    struct Bounds {
        double low;
        double high;
    };
    double estimateAt(Instant at) const;
    Bounds boundsAt(Instant at, const Chain& chain) const;
    Bounds boundsOfRead(std::size_t i) const;
    void tighten(Bounds& bounds, Instant at, const Chain& between) const;
    std::size_t pairHolding(Instant at) const;
    bool powerHolds(std::size_t pair) const;
    EnergyFigure overChain(const Chain& chain, Span span) const;
    EnergyFigure overReset(std::size_t pair, Span part, Span span) const;
    double roundingOver(Span span) const;
    bool isWhole(std::size_t pair, Span span) const;
    void place(const MeterRegister& meter, std::size_t i);

    std::vector<Instant> m_at;
    std::vector<Milliseconds> m_doubt; ///< of m_at
    std::vector<double> m_kwh;         ///< unrolled: never decreasing over plain pairs
    std::vector<Pair> m_pairs;         ///< m_pairs[i] is between readings i − 1 and i
    std::vector<double> m_reset;       ///< the new register over a reset pair, else 0
    double m_resolution = 0.0;
    bool m_roundedEach = false;
    std::optional<Power> m_power;
    std::vector<bool> m_powerHolds; ///< per pair
    std::size_t m_aboveRated = 0;
};

} // namespace holdband::analysis
