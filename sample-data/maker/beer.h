// Beer in a vessel as one thermal mass: its heat capacity and the heat of fermentation.
#pragma once

#include "sample-data/maker/scenario.h"

namespace holdband::sample {

inline constexpr double vesselVolumeL = 5.0 * 3.785411784; ///< 5 US gallons

/// Heat to warm the vessel's beer by one kelvin, J/K. Specific heat 4.0 kJ/(kg K), an estimate in
/// the middle of the values published for beer and wort (3.85 to 4.10).
double heatCapacity(const Batch& batch);

/// Extract fermented from original to final gravity, kg, after Balling.
double extractFermentedKg(const Batch& batch);

/// Heat of fermentation at an instant, W: 586 kJ for each kg of extract, spread by the slope of a
/// logistic curve.
double fermentationHeatW(const Batch& batch, Instant at);

/// The batch that fills a vessel at an instant, or null.
const Batch* batchIn(const Scenario& scenario, Vessel vessel, Instant at);

} // namespace holdband::sample
