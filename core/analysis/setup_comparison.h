// Two setups over their batches: what is kept of each batch, and means with intervals.
// Section 6 of the method in DEVELOPERS.md. No Qt, no SQL.
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

/// All that a comparison of setups needs of one batch; small, so that it can be kept.
struct BatchSummary {
    std::vector<std::optional<double>> measures; ///< in the order of measureRules()
    std::vector<bool> missed;                    ///< the stage or run that the measure is of
    /// How far the measure may lie lower and higher by the sensor's doubt; absent where unknown or
    /// the measure is none of temperature.
    std::vector<std::optional<std::array<double, 2>>> sensorDoubt;
    FairnessFacts facts;
    Distribution deviation;       ///< over the edges that were asked for
    std::vector<QuietPair> quiet; ///< for the same-weather model
    /// How far the meters that served can be wrong, a fraction: the largest, 2 % where unknown.
    double meterDoubt = 0.0;
};

BatchSummary summaryOf(const ComparisonSide& run, std::span<const double> edges,
                       const std::vector<Span>& betweenReadings, Milliseconds quietAfter);

/// The mean of the batches that have the measure, as computed; low and high of the 95 % interval
/// (Student t) from three of them on. Absent without any.
std::optional<Bounded> plainMean(const std::vector<BatchSummary>& batches, std::size_t measure);

/// The part of a mean's interval that can be: nothing but the mean deviation below 0, no share
/// above 1.
Bounded possible(Bounded figure, MeasureId id);

/// Means with their intervals, cut to what can be. Nobody is ahead where the intervals overlap, nor
/// where they would with the doubt of the instruments added, which is the same in every batch and
/// which the interval does not know of; on temperature nobody where a batch missed a stage.
std::vector<Measure> compareSetups(const std::vector<BatchSummary>& a,
                                   const std::vector<BatchSummary>& b);

} // namespace holdband::analysis
