// A forecast split over the stages of its plan, and what it will cost. Section 8.1 of the method in
// DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/forecast.h"
#include "core/analysis/money.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace holdband::analysis {

/// What a stage of the plan will use, with its part's relative interval.
struct StageForecast {
    std::string label;
    BatchPart part = BatchPart::beforeCrash;
    double hours = 0.0;    ///< h
    double liftK = 0.0;    ///< K
    double lineKwh = 0.0;  ///< of its own lift and hours
    double extraKwh = 0.0; ///< its share of the part's extra
    EnergyForecast energy; ///< kwh = lineKwh + extraKwh
};

/// One figure for each stage; empty where a planned part has no forecast. `stages` and `lifts` are
/// those that the plan's parts were made from. The extra before the crash goes to stages by their
/// hours within 72 h of the plan's start; that of the crash by their hours until `arrivalHours`
/// (crashDuration()) after its start, all of it to the crash's first stage where that is absent.
std::vector<StageForecast> stageForecasts(const Forecast& forecast,
                                          const std::vector<PlacedStage>& stages,
                                          const std::vector<Lift>& lifts,
                                          std::optional<double> arrivalHours);

/// The cost of the forecast: each stage's energy at its mean price (currency for a kWh, in the
/// stages' order), with the total's relative interval. Absent without a total or a stage.
std::optional<Cost> forecastCost(const Forecast& forecast, const std::vector<StageForecast>& stages,
                                 std::span<const double> meanPrices);

} // namespace holdband::analysis
