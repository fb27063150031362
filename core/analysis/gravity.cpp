#include "core/analysis/gravity.h"

#include "core/quantity/plato.h"

#include <algorithm>

namespace holdband::analysis {

namespace {

constexpr double ethanolDensity = 0.794; ///< as Balling's relation uses it

double realExtract(double original, double apparent)
{
    return 0.1808 * original + 0.8192 * apparent;
}

} // namespace

double alcoholSimple(Gravity original, Gravity final)
{
    return 131.25 * (original.specific() - final.specific());
}

double alcoholByWeight(Gravity original, Gravity final)
{
    const double oe = platoOf(original);
    const double re = realExtract(oe, platoOf(final));
    return (oe - re) / (2.0665 - 0.010665 * oe);
}

double alcoholBalling(Gravity original, Gravity final)
{
    return alcoholByWeight(original, final) * final.specific() / ethanolDensity;
}

double apparentAttenuation(Gravity original, Gravity final)
{
    const double extract = original.specific() - 1.0;
    if (extract == 0.0)
        return 0.0;
    return 100.0 * (original.specific() - final.specific()) / extract;
}

double realAttenuation(Gravity original, Gravity final)
{
    const double oe = platoOf(original);
    if (oe == 0.0)
        return 0.0;
    return 100.0 * (oe - realExtract(oe, platoOf(final))) / oe;
}

double extractFermentedKg(Volume volume, Gravity original, Gravity final)
{
    const double wortKg =
        volume.litres() * original.specific() * waterDensity(Temperature::celsius(20.0));
    const double alcohol = alcoholByWeight(original, final);
    return wortKg * 2.0665 * alcohol / (100.0 + 1.0665 * alcohol);
}

double waterDensity(Temperature temperature)
{
    const double t = temperature.celsius();
    const double top =
        999.83952 +
        t * (16.945176 +
             t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
    return top / (1.0 + 16.879850e-3 * t) / 1000.0;
}

Gravity correctedForTemperature(Gravity reading, Temperature sample, Temperature calibration)
{
    return Gravity::specific(reading.specific() * waterDensity(calibration) / waterDensity(sample));
}

} // namespace holdband::analysis
