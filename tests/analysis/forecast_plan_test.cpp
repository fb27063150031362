// What a plan needs: its lift in a typed or recorded room, its parts, its stages. Method.md 8.1's
// formula for a typed room is checked against a numerical mean of max(0, room − target); its plan
// has a room of 22 ± 2 °C, and lifts of 4 and 20 K.
#include "core/analysis/forecast_stages.h"
#include "core/analysis/heat.h"
#include "core/analysis/planned_lift.h"
#include "tests/analysis/builders.h"
#include "tests/analysis/forecast_batches.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace holdband::test {
namespace {

using namespace analysis;

std::vector<PlacedStage> workedStages()
{
    return placeStages(batchOf({hold("Ferment", 18.0, 216), hold("Crash", 2.0, 48)}, 264),
                       hour(264));
}

/// The midpoint rule over the wave and the ramp of the distance, both independently.
double meanByNumbers(double from, double to, double amplitude)
{
    constexpr int steps = 2000;
    double sum = 0.0;
    for (int ramp = 0; ramp < steps; ++ramp) {
        const double above = from + (to - from) * (ramp + 0.5) / steps;
        for (int wave = 0; wave < steps; ++wave)
            sum += std::max(
                0.0, above + amplitude * std::sin(2.0 * std::numbers::pi * (wave + 0.5) / steps));
    }
    return sum / steps / steps;
}

TEST(MeanLiftOfWave, IsTheMeanOfItsPositivePart)
{
    for (const double above : {-3.0, -2.0, -1.3, -0.2, 0.0, 0.7, 1.9, 2.0, 5.0})
        EXPECT_NEAR(meanLiftOfWave(above, 2.0), meanByNumbers(above, above, 2.0), 1e-5) << above;
    EXPECT_NEAR(meanLiftOfWave(0.0, 2.0), 2.0 / std::numbers::pi, 1e-12);
    EXPECT_EQ(meanLiftOfWave(1.0, 0.0), 1.0);
    EXPECT_EQ(meanLiftOfWave(0.0, 0.0), 0.0);
}

TEST(MeanLiftOfWave, OfARampIsTheMeanOverItsTargets)
{
    for (const auto& [from, to] :
         {std::pair{-3.0, 3.0}, {1.5, -0.5}, {4.0, 1.0}, {-5.0, -3.0}, {3.0, 8.0}, {1.0, 1.001}})
        EXPECT_NEAR(meanLiftOfWave(from, to, 2.0), meanByNumbers(from, to, 2.0), 1e-5)
            << from << " to " << to;
}

TEST(PlannedLifts, OfATypedRoomAreTheWorkedExamples)
{
    const auto lifts = plannedLifts(workedStages(), TypedRoom{22.0, 4.0});
    ASSERT_EQ(lifts.size(), 2u);
    EXPECT_NEAR(lifts[0].coolingKh, 4.0 * 216, 1e-9);
    EXPECT_NEAR(lifts[1].coolingKh, 20.0 * 48, 1e-9);
    EXPECT_EQ(roomDoubtK(TypedRoom{}), 1.0);
}

TEST(PlannedLifts, OfARecordedRoomAreExactOnItsPieces)
{
    // 16 to 24 °C over 264 h, without a reading between 0 and 264: above 18 °C from 66 h on.
    const Track room{hour(0), {0.0, 264 * msPerHour}, {16.0, 24.0}, {{0, 1}}};
    const auto lifts = plannedLifts(workedStages(), room);
    const double at216 = 16.0 + 8.0 * 216 / 264;
    EXPECT_NEAR(lifts[0].coolingKh, (at216 - 18.0) * 150.0 / 2.0, 1e-6);
    EXPECT_NEAR(lifts[0].heatingKh, 66.0, 1e-6);
    EXPECT_NEAR(lifts[1].coolingKh, ((at216 + 24.0) / 2.0 - 2.0) * 48.0, 1e-6);
    EXPECT_EQ(roomDoubtK(room), 0.0);
}

PartHeat workedHeat()
{
    PartHeat heat;
    heat[BatchPart::beforeCrash] = fermentationHeat(1.8);
    heat[BatchPart::crash] = crashTargetHeat(workedStages(), Volume::litres(20.0));
    return heat;
}

TEST(PlannedParts, AreTheWorkedExamples)
{
    const auto stages = workedStages();
    const auto parts =
        plannedParts(stages, plannedLifts(stages, TypedRoom{22.0, 4.0}), workedHeat());
    ASSERT_TRUE(parts);
    const PartConditions& before = *(*parts)[BatchPart::beforeCrash];
    EXPECT_NEAR(before.hours, 216.0, 1e-9);
    EXPECT_NEAR(before.liftK, 4.0, 1e-9);
    EXPECT_NEAR(before.heatKwh.value(), 0.293, 5e-7);
    const PartConditions& crash = *(*parts)[BatchPart::crash];
    EXPECT_NEAR(crash.hours, 48.0, 1e-9);
    EXPECT_NEAR(crash.liftK, 20.0, 1e-9);
    EXPECT_NEAR(crash.heatKwh.value(), 0.359111, 5e-7);
}

TEST(PlannedParts, WithoutACrashAreOne)
{
    const auto stages = placeStages(batchOf({hold("Ferment", 18.0, 216)}, 216), hour(216));
    const auto parts = plannedParts(stages, plannedLifts(stages, TypedRoom{22.0, 4.0}), {});
    ASSERT_TRUE(parts);
    EXPECT_TRUE((*parts)[BatchPart::beforeCrash]);
    EXPECT_FALSE((*parts)[BatchPart::beforeCrash]->heatKwh);
    EXPECT_FALSE((*parts)[BatchPart::crash]);
}

TEST(PlannedParts, NeedARoomKnownForNineTenths)
{
    const auto stages = workedStages();
    const auto upTo = [&](double hours) {
        const Track room{hour(0), {0.0, hours * msPerHour}, {22.0, 22.0}, {{0, 1}}};
        return plannedParts(stages, plannedLifts(stages, room), {}).has_value();
    };
    EXPECT_TRUE(upTo(264));
    EXPECT_TRUE(upTo(216 + 0.9 * 48));
    EXPECT_FALSE(upTo(216 + 0.89 * 48));
}

TEST(PastPart, CountsWhereNineTenthsAreMeteredAndTheLiftIsKnown)
{
    const Span part{hour(0), hour(100)};
    const auto metered = [](double hours) {
        return EnergyFigure{3.0, 2.9, 3.1, {{hour(0), hour(hours)}}};
    };
    const auto made =
        pastPart(metered(90), part, Lift{450.0, 9.0, 85.0, 90.0}, Energy::joules(3.6e6));
    ASSERT_TRUE(made);
    EXPECT_NEAR(made->conditions.hours, 90.0, 1e-9);
    EXPECT_NEAR(made->conditions.liftK, 450.0 / 85.0, 1e-12);
    EXPECT_NEAR(made->conditions.heatKwh.value(), 1.0, 1e-12);
    EXPECT_EQ(made->kwh, 3.0);
    EXPECT_FALSE(pastPart(metered(89), part, Lift{450.0, 9.0, 89.0, 89.0}, {}));
    EXPECT_FALSE(pastPart(metered(90), part, Lift{450.0, 9.0, 80.0, 90.0}, {}));
    EXPECT_FALSE(pastPart({}, part, {}, {}));
}

/// Two stages before the crash, and two from it on.
std::vector<PlacedStage> fourStages()
{
    return placeStages(batchOf({hold("First", 18.0, 60), hold("Second", 18.0, 156),
                                hold("Crash", 2.0, 24), hold("Cold", 2.0, 24)},
                               264),
                       hour(264));
}

TEST(StageForecasts, HaveTheirOwnLineEnergyAndTheExtraByTheHoursOfItsHeat)
{
    const Forecast made = forecast(workedBasis(), workedPlan());
    const auto stages = fourStages();
    const auto lifts = plannedLifts(stages, TypedRoom{22.0, 4.0});
    const auto split = stageForecasts(made, stages, lifts, 36.0);
    ASSERT_EQ(split.size(), 4u);
    EXPECT_NEAR(split[0].lineKwh, 4.40781 * 60 / 216, 5e-6);
    const double before = made.parts[BatchPart::beforeCrash]->extraKwh;
    EXPECT_NEAR(split[0].extraKwh, before * 60 / 72, 1e-9);
    EXPECT_NEAR(split[1].extraKwh, before * 12 / 72, 1e-9);
    const double crash = made.parts[BatchPart::crash]->extraKwh;
    EXPECT_NEAR(split[2].extraKwh, crash * 24 / 36, 1e-9);
    EXPECT_NEAR(split[3].extraKwh, crash * 12 / 36, 1e-9);
    double sum = 0.0;
    for (const StageForecast& stage : split)
        sum += stage.energy.kwh;
    EXPECT_NEAR(sum, made.total->kwh, 1e-9);
    EXPECT_EQ(split[3].energy.halfWidth, made.parts[BatchPart::crash]->energy.halfWidth);
    EXPECT_EQ(split[3].label, "Cold");

    const auto unknownArrival = stageForecasts(made, stages, lifts, {});
    EXPECT_NEAR(unknownArrival[2].extraKwh, crash, 1e-9);
    EXPECT_EQ(unknownArrival[3].extraKwh, 0.0);
}

TEST(ForecastCost, IsEachStagesEnergyAtItsMeanPrice)
{
    const Forecast made = forecast(workedBasis(), workedPlan());
    const auto stages = workedStages();
    const auto split = stageForecasts(made, stages, plannedLifts(stages, TypedRoom{22.0, 4.0}), {});
    const std::vector<double> prices{0.30, 0.20};
    const auto cost = forecastCost(made, split, prices);
    ASSERT_TRUE(cost);
    EXPECT_NEAR(cost->amount, 0.30 * 5.13410 + 0.20 * 3.35249, 5e-6);
    EXPECT_NEAR(cost->high / cost->amount, 9.56953 / 8.48659, 5e-6);
    EXPECT_NEAR(cost->amount / cost->low, 8.48659 / 7.52619, 5e-6);
    EXPECT_FALSE(forecastCost({}, {}, prices));
}

} // namespace
} // namespace holdband::test
