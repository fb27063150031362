// What the next batch would truly use: the model run for one batch alone on a setup, without
// sensors and meters. A test compares it with what Holdband forecasts from the sample.
#pragma once

#include "sample-data/maker/scenario.h"

#include <optional>
#include <string>

namespace holdband::sample {

/// Of one batch; both parts are whole.
struct TrueBatch {
    double roomMeanC = 0.0;
    double roomSwingC = 0.0;  ///< K, mean of the days' highest minus lowest
    double liftBeforeK = 0.0; ///< mean of max(0, room − beer) before the crash
    double liftCrashK = 0.0;
    double kwhBefore = 0.0; ///< before the crash, without cooling the bath before pitching
    double kwhCrash = 0.0;
    std::optional<double> crashHours; ///< from turning down to the band's edge; absent: never
    double crashAboveHours = 0.0;     ///< in the crash, above the band after having been in it
};

/// Runs a batch of which every stage but the last has hours. The last one is its crash.
TrueBatch trueBatch(const Batch& batch, const Weather& weather);

/// A CSV file: the plan "Ale" pitched on 1 July 2026 in the scenario's weather, and 20 more ales in
/// other Julys, each on both setups.
std::string truthTable();

} // namespace holdband::sample
