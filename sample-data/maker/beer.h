// Beer in a vessel as one lump of heat: what it holds, what fermentation gives off.
#pragma once

#include "sample-data/maker/scenario.h"

namespace holdband::sample {

inline constexpr double vesselVolumeL = 5.0 * 3.785411784; ///< 5 US gallons

/// Heat to warm the vessel's beer by one kelvin, J/K. Specific heat 4.0 kJ/(kg K), the middle of
/// what is given for beer and wort (3.85 to 4.10): an estimate.
double heatCapacity(const Batch& batch);

/// Extract fermented from original to final gravity, kg, after Balling.
double extractFermentedKg(const Batch& batch);

/// Heat of fermentation at an instant, W: 586 kJ for each kg of extract, spread by the slope of a
/// logistic curve.
double fermentationHeatW(const Batch& batch, Instant at);

/// The batch that fills a vessel at an instant, or null.
const Batch* batchIn(const Scenario& scenario, Vessel vessel, Instant at);

} // namespace holdband::sample
