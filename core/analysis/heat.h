// Heat quantities of the beer, estimated from volume and temperatures. No Qt, no SQL.
#pragma once

#include "core/quantity/energy.h"
#include "core/quantity/temperature.h"
#include "core/quantity/volume.h"

namespace holdband::analysis {

/// Beer, kg/L (common practice, no source).
inline constexpr double beerDensity = 1.010;
/// Beer, kJ/(kg·K): between 3.85 and 4.10 (an estimate, common practice, no source); water at 20 °C
/// has 4.184 at 0.9982 kg/L (IAPWS).
inline constexpr double beerSpecificHeat = 4.0;
/// Density × specific heat of beer, kJ/(L·K).
inline constexpr double beerHeatPerLitreKelvin = beerDensity * beerSpecificHeat;

/// Heat of fermentation, kJ per kg of extract (252 Btu/lb, quoted).
inline constexpr double fermentationHeatPerKg = 586.0;

/// Heat to remove from the volume to bring it from one temperature to another; negative where heat
/// must be added. An estimate, good to a few percent.
inline Energy heatToCool(Volume volume, Temperature from, Temperature to)
{
    return Energy::joules(1000.0 * beerHeatPerLitreKelvin * volume.litres() *
                          (from - to).kelvins());
}

/// Heat released by fermenting that much extract (kg).
inline Energy fermentationHeat(double extractKg)
{
    return Energy::joules(1000.0 * fermentationHeatPerKg * extractKg);
}

} // namespace holdband::analysis
