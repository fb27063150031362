// Lift, degree-hours and heat: section 5 of the method. Figures by hand.
#include "core/analysis/heat.h"
#include "tests/analysis/builders.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

Lift lift(const Series& ambient, const Series& beer, double hours, double gapHours = 2.0)
{
    const Milliseconds gap = toMilliseconds(Hours{gapHours});
    return liftOver(ambient, gap, beer, gap, {{hour(0), hour(hours)}});
}

TEST(Lift, IsAmbientMinusBeer)
{
    // 10 K for 4 h.
    const Lift figure =
        lift(series({{0, 30}, {2, 30}, {4, 30}}), series({{0, 20}, {2, 20}, {4, 20}}), 4);
    EXPECT_DOUBLE_EQ(figure.coolingKh, 40.0);
    EXPECT_DOUBLE_EQ(figure.heatingKh, 0.0);
    EXPECT_DOUBLE_EQ(*figure.mean(), 10.0);
    EXPECT_TRUE(figure.knownEnough());
}

TEST(Lift, IsSplitWhereItCrossesZero)
{
    // 30 → 10 over 4 h against 20: +10 … −10, crossing at 2 h: 10 K·h to either side.
    const Lift figure = lift(series({{0, 30}, {4, 10}}), series({{0, 20}, {4, 20}}), 4, 4);
    EXPECT_DOUBLE_EQ(figure.coolingKh, 10.0);
    EXPECT_DOUBLE_EQ(figure.heatingKh, 10.0);
    EXPECT_DOUBLE_EQ(*figure.mean(), 0.0);
}

TEST(Lift, DegreeHoursAreNotDegreeDays)
{
    // 12 h at 55 °F and 12 h at 75 °F against 65 °F: the mean is 65, yet 120 °F·h of cooling
    // (the check table's row); the step takes 1 ms.
    const auto fahrenheit = [](double value) { return Temperature::fahrenheit(value).celsius(); };
    Series ambient = series({{0, fahrenheit(55)}, {12, fahrenheit(55)}});
    ambient.at.insert(ambient.at.end(), {hour(12) + Milliseconds{1}, hour(24)});
    ambient.value.insert(ambient.value.end(), {fahrenheit(75), fahrenheit(75)});
    const Lift figure = lift(ambient, series({{0, fahrenheit(65)}, {24, fahrenheit(65)}}), 24, 24);
    EXPECT_NEAR(figure.coolingKh * 1.8, 120.0, 1e-4);
    EXPECT_NEAR(figure.heatingKh * 1.8, 120.0, 1e-4);
    EXPECT_NEAR(*figure.mean(), 0.0, 1e-6);
}

TEST(Lift, CountsOnlyWhereBothAreCovered)
{
    const Lift figure = lift(series({{0, 30}, {2, 30}, {5, 30}, {7, 30}}),
                             series({{0, 20}, {2, 20}, {4, 20}, {6, 20}}), 8);
    // 0–2 h and 5–6 h of 8 h.
    EXPECT_DOUBLE_EQ(figure.knownHours, 3.0);
    EXPECT_DOUBLE_EQ(figure.coolingKh, 30.0);
    EXPECT_FALSE(figure.knownEnough());
}

TEST(EnergyPerDegreeDay, IsAbsentWhereTooLittleOfTheLiftIsKnown)
{
    Lift figure;
    figure.coolingKh = 100.0;
    figure.knownHours = 9.0;
    figure.spanHours = 10.0;
    // 100 K·h are 4.1667 K·d; 2 kWh over them 0.48.
    EXPECT_NEAR(*energyPerDegreeDay(2.0, figure), 0.48, 1e-12);
    figure.knownHours = 8.99;
    EXPECT_FALSE(energyPerDegreeDay(2.0, figure));
    figure.knownHours = 10.0;
    figure.coolingKh = 0.0;
    EXPECT_FALSE(energyPerDegreeDay(2.0, figure));
}

TEST(EnergyPerDegreeDay, ComparesTheMeteredPartWithTheLiftOfThatPart)
{
    // Ambient 30 for 5 h, then 40 for 5 h (step 1 ms); the meter runs for the first 5 h only.
    RunInput input =
        runInput(batchOf({hold("Hold", 20)}, 10), series({{0, 20}, {5, 20}, {10, 20}}), 300);
    input.ambient = series({{0, 30}, {5, 30}, {10, 40}});
    input.ambient.at.insert(input.ambient.at.begin() + 2, hour(5) + Milliseconds{1});
    input.ambient.value.insert(input.ambient.value.begin() + 2, 40.0);
    input.ambientGap = std::chrono::hours{5};
    input.setup = oneMeter({meterReading(0, 1.0), meterReading(5, 3.0)});
    const RunFigures run = analyseRun(input);
    // 2 kWh / (50 K·h / 24).
    EXPECT_NEAR(*run.energy.kwhPerDegreeDay, 2.0 / (50.0 / 24.0), 1e-9);
    EXPECT_NEAR(run.energy.lift->coolingKh, 50.0 + 100.0, 1e-4);
    EXPECT_TRUE(run.energy.partlyMetered());
}

TEST(Heat, OfACrash)
{
    // 5 US gal, 68 → 34 °F: 1460 kJ = 0.405 kWh within 2 % (check table, derived).
    const Energy heat =
        heatToCool(Volume::usGallons(5), Temperature::fahrenheit(68), Temperature::fahrenheit(34));
    EXPECT_NEAR(heat.joules() / 1000.0, 1460.0, 0.02 * 1460.0);
    EXPECT_NEAR(heat.kilowattHours(), 0.405, 0.02 * 0.405);
    EXPECT_LT(heatToCool(Volume::litres(1), Temperature::celsius(2), Temperature::celsius(20)),
              Energy{});
}

TEST(Heat, OfFermentation)
{
    // 1.634 kg × 586 kJ/kg = 958 kJ = 0.266 kWh (check table; 252 Btu/lb as quoted).
    EXPECT_NEAR(fermentationHeat(1.634).joules() / 1000.0, 958.0, 1.0);
    EXPECT_NEAR(fermentationHeat(1.634).kilowattHours(), 0.266, 0.0005);
    // 252 Btu/lb in kJ/kg: 252 × 1.05505585262 / 0.45359237 = 586.2.
    EXPECT_NEAR(252 * 1.05505585262 / 0.45359237, fermentationHeatPerKg, 0.5);
}

TEST(Heat, RemovedPerElectricityUsedOverACrash)
{
    // 20 L from 20 °C at 10 h down 3 K an hour; ± 1 K around 2 °C is entered at 3 °C: 17 K in
    // 17/3 h. Heat 20 × 4.04 × 17 kJ = 1373.6 kJ = 0.381556 kWh; the meter runs at 0.1 kWh an
    // hour: 0.566667 kWh over the same time. 0.673333.
    RunInput input = runInput(batchOf({hold("Hold", 20, 10), hold("Crash", 2)}, 20),
                              series({{0, 20}, {5, 20}, {10, 20}, {16, 2}, {20, 2}}), 360);
    input.batch.volume = Volume::litres(20);
    input.setup = oneMeter({meterReading(0, 0.0), meterReading(20, 2.0)});
    const RunFigures run = analyseRun(input);
    ASSERT_TRUE(run.crashHeat);
    EXPECT_NEAR(run.crashHeat->moved.kilowattHours(), 0.3815556, 1e-6);
    EXPECT_NEAR(*run.crashHeat->effectivePerformance(), 0.3815556 / 0.5666667, 1e-5);
}

} // namespace
} // namespace holdband::test
