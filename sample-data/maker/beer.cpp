#include "sample-data/maker/beer.h"

#include <cmath>

namespace holdband::sample {

namespace {

constexpr double specificHeat = 4000.0;      // J/(kg K)
constexpr double heatOfFermentation = 586e3; // J/kg extract
constexpr double waterDensity = 0.9982;      // kg/L at 20 °C

/// °Plato of a gravity at 20 °C: the trade's usual cubic, within 0.002 of NBS Circular 440.
double plato(double gravity)
{
    const double g = gravity;
    return -616.868 + 1111.14 * g - 630.272 * g * g + 135.997 * g * g * g;
}

} // namespace

double heatCapacity(const Batch& batch)
{
    return vesselVolumeL * waterDensity * batch.originalGravity * specificHeat;
}

double extractFermentedKg(const Batch& batch)
{
    const double original = plato(batch.originalGravity);
    const double real = 0.1808 * original + 0.8192 * plato(batch.finalGravity);
    const double alcoholShare = (original - real) / (2.0665 - 0.010665 * original) / 100.0;
    const double beerKg = vesselVolumeL * waterDensity * batch.finalGravity;
    return 2.0665 * alcoholShare * beerKg;
}

double fermentationHeatW(const Batch& batch, Instant at)
{
    if (at < batch.pitched)
        return 0.0;
    const double x = (hoursBetween(batch.pitched, at) - batch.halfwayHours) / batch.paceHours;
    const double fallen = std::exp(-std::abs(x));
    const double slope = fallen / ((1.0 + fallen) * (1.0 + fallen));
    const double joules = heatOfFermentation * extractFermentedKg(batch);
    return joules * slope / (batch.paceHours * 3600.0);
}

const Batch* batchIn(const Scenario& scenario, Vessel vessel, Instant at)
{
    for (const Batch& batch : scenario.batches)
        if (batch.vessel == vessel && Span{batch.filled, batch.emptied}.contains(at))
            return &batch;
    return nullptr;
}

} // namespace holdband::sample
