// Extract, attenuation and alcohol checked against published tables. Section 7 of the method.
#include "core/analysis/gravity.h"
#include "core/quantity/plato.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

Gravity sg(double value)
{
    return Gravity::specific(value);
}

TEST(Plato, AgreesWithThePublishedTable)
{
    // NBS Circular 440 (1942), Table 114, 20 °C: °Brix (°Plato within 0.01) and gravity.
    const std::pair<double, double> rows[] = {{2, 1.00780},  {4, 1.01569},  {8, 1.03180},
                                              {10, 1.04003}, {12, 1.04837}, {15, 1.06111},
                                              {20, 1.08297}};
    for (const auto& [plato, gravity] : rows) {
        EXPECT_NEAR(platoOf(sg(gravity)), plato, 0.002) << gravity;
        EXPECT_NEAR(gravityOfPlato(plato).specific(), gravity, 0.00001) << plato;
    }
}

TEST(Plato, IsNeverNegative)
{
    // The cubic gives −0.003 at 1.000.
    EXPECT_EQ(platoOf(sg(1.0)), 0.0);
    EXPECT_EQ(platoOf(sg(0.996)), 0.0);
}

struct Row {
    double original;
    double final;
    double simple;
    double balling;
    double apparent;
    double real;
};

TEST(Alcohol, AgreesWithTheCheckTable)
{
    // Derived with Balling's relations after Nielsen et al., Brauwelt International 2007 (RE =
    // 0.1808 OE + 0.8192 AE; A = (OE − RE)/(2.0665 − 0.010665 OE)); ± 0.005. The table has 64.98
    // for the first row's real attenuation; the same relations give 64.9855, computed here: OE
    // 12.38765, AE 2.56078, 0.8192 (1 − AE/OE).
    const Row rows[] = {{1.050, 1.010, 5.250, 5.294, 80.000, 64.9855},
                        {1.055, 1.015, 5.250, 5.309, 72.727, 58.82},
                        {1.060, 1.012, 6.300, 6.384, 80.000, 64.87},
                        {1.064, 1.013, 6.694, 6.796, 79.688, 64.56}};
    for (const Row& row : rows) {
        EXPECT_NEAR(alcoholSimple(sg(row.original), sg(row.final)), row.simple, 0.0005);
        EXPECT_NEAR(alcoholBalling(sg(row.original), sg(row.final)), row.balling, 0.005);
        EXPECT_NEAR(apparentAttenuation(sg(row.original), sg(row.final)), row.apparent, 0.0005);
        EXPECT_NEAR(realAttenuation(sg(row.original), sg(row.final)), row.real, 0.005);
    }
}

TEST(Alcohol, IsZeroWithoutFermentation)
{
    EXPECT_NEAR(alcoholBalling(sg(1.050), sg(1.050)), 0.0, 1e-12);
    EXPECT_EQ(apparentAttenuation(sg(1.0), sg(1.0)), 0.0);
    EXPECT_EQ(realAttenuation(sg(1.0), sg(1.0)), 0.0);
}

TEST(Extract, FermentedByMassBalance)
{
    // 5 US gal, 1.050 → 1.010: 1.634 kg of extract (check table, derived, ± 2 %). By Balling,
    // 2.0665 A of extract make the beer of 100 + 1.0665 A of wort: with A = 4.1615 % of the beer
    // 8.2342 % of 19.838 kg. The beer's real extract is a share of the beer, which is lighter
    // than the wort by its gas and yeast: (OE − RE) × wort would be 1.597, 2.2 % too little.
    const double kg = extractFermentedKg(Volume::usGallons(5), sg(1.050), sg(1.010));
    EXPECT_NEAR(kg, 1.634, 0.001);
    // 0.791 kg of alcohol and 0.756 kg of gas go with it (Balling's proportions).
    EXPECT_NEAR(kg / 2.0665, 0.791, 0.001);
    EXPECT_NEAR(kg / 2.0665 * 0.9565, 0.756, 0.001);
    EXPECT_NEAR(extractFermentedKg(Volume::litres(20), sg(1.050), sg(1.050)), 0.0, 1e-12);
}

TEST(Extract, BalancesBallingsRelation)
{
    // OE = 100 (2.0665 A + ER)/(100 + 1.0665 A), Nielsen et al. 2007. The relations of alcohol and
    // real extract are rounded, so the original extract is reproduced within 0.05.
    const Gravity original = sg(1.050);
    const Gravity final = sg(1.010);
    const double a = alcoholByWeight(original, final);
    const double er = 0.1808 * platoOf(original) + 0.8192 * platoOf(final);
    EXPECT_NEAR(100.0 * (2.0665 * a + er) / (100.0 + 1.0665 * a), platoOf(original), 0.05);
}

TEST(WaterDensity, AgreesWithIapws)
{
    // IAPWS at 0.1 MPa (Debian python3-iapws), kg/m³.
    const std::pair<double, double> rows[] = {
        {4, 999.9742}, {10, 999.7019}, {20, 998.2065}, {25, 997.0470}};
    for (const auto& [celsius, density] : rows)
        EXPECT_NEAR(waterDensity(Temperature::celsius(celsius)) * 1000.0, density, 0.01) << celsius;
}

TEST(Hydrometer, IsCorrectedForTheSamplesTemperature)
{
    // Check table, derived from the densities of water; ± 0.0003. Calibrated at 60 °F.
    struct Sample {
        double read;
        double fahrenheit;
        double truth;
    };
    for (const Sample& sample : {Sample{1.050, 68, 1.05085}, Sample{1.040, 77, 1.04205},
                                 Sample{1.050, 80, 1.05254}, Sample{1.050, 50, 1.04928}}) {
        const Gravity corrected =
            correctedForTemperature(sg(sample.read), Temperature::fahrenheit(sample.fahrenheit),
                                    Temperature::fahrenheit(60));
        EXPECT_NEAR(corrected.specific(), sample.truth, 0.0003) << sample.fahrenheit;
    }
}

} // namespace
} // namespace holdband::test
