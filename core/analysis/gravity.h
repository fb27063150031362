// Attenuation and alcohol from gravities. Section 7 of the method in DEVELOPERS.md.
// Source: Balling's relations after Nielsen et al., Brauwelt International 2007.
// No Qt, no SQL.
#pragma once

#include "core/quantity/gravity.h"
#include "core/quantity/temperature.h"
#include "core/quantity/volume.h"

namespace holdband::analysis {

/// Alcohol by volume, %, as 131.25 × (OG − FG): the simple formula.
double alcoholSimple(Gravity original, Gravity final);

/// Alcohol by volume, %, by Balling: alcohol by weight × FG / 0.794.
double alcoholBalling(Gravity original, Gravity final);

/// Alcohol by weight, %, by Balling: (OE − RE) / (2.0665 − 0.010665 OE).
double alcoholByWeight(Gravity original, Gravity final);

/// (OG − FG) / (OG − 1), %. 0 where the original gravity is 1.
double apparentAttenuation(Gravity original, Gravity final);

/// (OE − RE) / OE, % by weight of extract, with RE = 0.1808 OE + 0.8192 AE.
double realAttenuation(Gravity original, Gravity final);

/// Extract that has fermented, kg, in a volume measured at pitching. By Balling's balance: 100 kg
/// of beer with A kg of alcohol come from 100 + 1.0665 A kg of wort and took 2.0665 A of extract.
double extractFermentedKg(Volume volume, Gravity original, Gravity final);

/// Density of water at 0.1 MPa, kg/L, 0 … 40 °C (Kell's formula of 1975, from memory; checked
/// against IAPWS values).
double waterDensity(Temperature temperature);

/// The true gravity of a sample that was not at the hydrometer's calibration temperature: reading ×
/// ρ(calibration) / ρ(sample); the expansion of the glass is ignored.
Gravity correctedForTemperature(Gravity reading, Temperature sample, Temperature calibration);

} // namespace holdband::analysis
