// Two setups over their batches: a summary of each batch, and means with intervals. Section 6 of
// the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/comparison.h"
#include "core/analysis/distribution.h"
#include "core/analysis/fairness.h"
#include "core/analysis/same_weather.h"

#include <array>
#include <optional>
#include <span>
#include <vector>

namespace holdband::analysis {

/// Everything that a comparison of setups needs from one batch; small, so that it can be cached.
struct BatchSummary {
    std::vector<std::optional<double>> measures; ///< in the order of measureRules()
    std::vector<bool> missed; ///< whether the stage or run that the measure is about was missed
    /// How much lower and higher the measure may be because of the sensor's uncertainty; absent
    /// where unknown or where it is not a temperature measure.
    std::vector<std::optional<std::array<double, 2>>> sensorUncertainty;
    FairnessFacts facts;
    Distribution deviation;       ///< over the requested edges
    std::vector<QuietPair> quiet; ///< for the same-weather model
    /// The possible error of the meters in service, a fraction: the largest, 2 % where unknown.
    double meterUncertainty = 0.0;
    std::vector<EnergyPoint> energyCurve;
};

BatchSummary summaryOf(const ComparisonSide& run, std::span<const double> edges,
                       const std::vector<Span>& betweenReadings, Milliseconds quietAfter);

/// The mean; low and high of its 95 % interval (Student t) if there are at least three values.
/// Absent without any.
std::optional<Bounded> meanOf(std::span<const double> values);

/// The mean of the batches that have the measure, as computed; low and high of the 95 % interval
/// (Student t) if there are at least three. Absent without any.
std::optional<Bounded> plainMean(const std::vector<BatchSummary>& batches, std::size_t measure);

/// The possible part of a mean's interval: only the mean deviation can be below 0, no share can be
/// above 1.
Bounded possible(Bounded figure, MeasureId id);

/// Means with their intervals, cut to possible values. Neither side is ahead where the intervals
/// overlap, or would overlap if the instruments' uncertainty were added (it is the same in every
/// batch, so the interval does not include it). For temperature measures neither is ahead if a
/// batch missed a stage.
std::vector<Measure> compareSetups(const std::vector<BatchSummary>& a,
                                   const std::vector<BatchSummary>& b);

} // namespace holdband::analysis
