// Heat moved, as an estimate from volume and temperatures. No Qt, no SQL.
#pragma once

#include "core/quantity/energy.h"
#include "core/quantity/temperature.h"
#include "core/quantity/volume.h"

namespace holdband::analysis {

/// Density × specific heat of beer, kJ/(L·K): 1.010 kg/L × 4.0 kJ/(kg·K). Beer's specific heat
/// lies between 3.85 and 4.10 (an estimate, common practice, no source); water at 20 °C has
/// 0.9982 × 4.184 (IAPWS).
inline constexpr double beerHeatPerLitreKelvin = 1.010 * 4.0;

/// Heat of fermentation, kJ per kg of extract (252 Btu/lb, quoted).
inline constexpr double fermentationHeatPerKg = 586.0;

/// Heat to take out of the volume to bring it from one temperature to another; negative when it
/// has to be put in. An estimate, good to a few percent.
inline Energy heatToCool(Volume volume, Temperature from, Temperature to)
{
    return Energy::joules(1000.0 * beerHeatPerLitreKelvin * volume.litres() *
                          (from - to).kelvins());
}

/// Heat given off by fermenting that much extract, kg.
inline Energy fermentationHeat(double extractKg)
{
    return Energy::joules(1000.0 * fermentationHeatPerKg * extractKg);
}

} // namespace holdband::analysis
