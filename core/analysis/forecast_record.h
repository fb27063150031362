// What a forecast needs from one past batch. Section 8.1 of the method in DEVELOPERS.md. No Qt, no
// SQL.
#pragma once

#include "core/analysis/crash_duration.h"
#include "core/analysis/forecast_parts.h"
#include "core/analysis/run.h"
#include "core/analysis/same_weather.h"

#include <optional>
#include <vector>

namespace holdband::analysis {

/// Small, so that it can be cached; all of it follows from one computed run.
struct ForecastRecord {
    PastBatch past;                  ///< the parts that count
    std::vector<QuietPair> quiet;    ///< for the line of power over lift
    bool shared = false;             ///< another batch ran on its setup meanwhile
    std::optional<PastCrash> crash;  ///< absent without a crash; litres 0 where unknown
    std::optional<double> seenLiftK; ///< K: seenLift()
    double resolutionKwh = 0.0;      ///< kWh, the coarsest register in service
};

/// `figures` are analyseRun() of the input; `between` the setup's times between readings.
ForecastRecord forecastRecordOf(const RunInput& input, const RunFigures& figures,
                                const std::vector<Span>& between, Milliseconds quietAfter);

} // namespace holdband::analysis
