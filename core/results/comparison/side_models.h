// The parts of a comparison that are computed after the measures: same weather, money and
// judgement. Not for use outside core/results.
#pragma once

#include "core/analysis/setup_comparison.h"
#include "core/results/comparison/side_by_side.h"

#include <optional>
#include <vector>

namespace holdband::results {

/// The pairs of one side, and the mean length of its batches, h.
struct SidePairs {
    std::vector<analysis::WeatherPair> pairs;
    double meanHours = 0.0; ///< h
    bool hasMeter = true;   ///< there are register readings
    bool hasAmbient = true; ///< there are readings of the room
};

void addWeather(SideBySide& review, SidePairs a, SidePairs b);

/// The mean price that both sides paid for a kWh; absent where it is not known of both.
std::optional<double> meanPriceOfBoth(const SideBySide& review);

/// Needs the measures and the weather. `windows`: the price changes over the day.
void addMoney(SideBySide& review, const Setup& setupA, const Setup& setupB, bool windows);

/// Needs the measures and the weather.
void addJudgement(SideBySide& review, const Setup& setupA, const Setup& setupB);

} // namespace holdband::results
