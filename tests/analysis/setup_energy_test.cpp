// A setup's energy, its batches' shares, its idle time and its cost. Section 4 of the method.
#include "core/analysis/money.h"
#include "tests/analysis/builders.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

TEST(SetupEnergy, IsTheSumOfItsMeters)
{
    const SetupEnergy setup({meterSource("A", {meterReading(0, 1.0, 1), meterReading(10, 2.0, 1)}),
                             meterSource("B", {meterReading(0, 5.00), meterReading(10, 5.50)})});
    // 1.0 ± 0.1 and 0.5 ± 0.01.
    expectFigure(setup.over(hourSpan(0, 10)), 1.5, 1.39, 1.61);
    EXPECT_EQ(setup.inService(hourSpan(0, 10)), (std::set<std::string>{"A", "B"}));
}

TEST(SetupEnergy, IsMeteredWhereAllMetersAre)
{
    const SetupEnergy setup({meterSource("A", {meterReading(0, 1.0, 1), meterReading(10, 2.0, 1)}),
                             meterSource("B", {meterReading(5, 5.00), meterReading(20, 6.50)})});
    const EnergyFigure figure = setup.over(hourSpan(0, 20));
    EXPECT_EQ(figure.metered, (std::vector{hourSpan(5, 10)}));
    EXPECT_NEAR(figure.kwh, 0.5 + 0.5, 1e-9);
}

TEST(SetupEnergy, ASwappedMeterTakesOver)
{
    const SetupEnergy setup(
        {meterSource("Old", {meterReading(0, 90.0, 1), meterReading(10, 91.0, 1)}, {}, 10),
         meterSource("New", {meterReading(10, 0.0, 1), meterReading(20, 2.0, 1)}, 10)});
    const EnergyFigure figure = setup.over(hourSpan(0, 20));
    expectFigure(figure, 3.0, 2.8, 3.2);
    EXPECT_EQ(figure.metered, (std::vector{hourSpan(0, 20)}));
    EXPECT_EQ(setup.inService(hourSpan(0, 9)), (std::set<std::string>{"Old"}));
}

TEST(SetupEnergy, TimeWithoutAMeterInServiceIsNotMetered)
{
    const SetupEnergy setup(
        {meterSource("Old", {meterReading(0, 90.0, 1), meterReading(12, 91.2, 1)}, {}, 10),
         meterSource("New", {meterReading(8, 0.0, 1), meterReading(20, 1.2, 1)}, 11)});
    EXPECT_EQ(setup.over(hourSpan(0, 20)).metered,
              (std::vector{hourSpan(0, 10), hourSpan(11, 20)}));
    EXPECT_NEAR(setup.over(hourSpan(0, 20)).kwh, 1.0 + 0.9, 1e-9);
}

TEST(SetupEnergy, AMetersBoundsDoNotWidenWhereAnotherComesIntoService)
{
    // A over the full span: 10 ± 0.1. B from 5 h: 1 ± 0.1. B beginning between A's readings does
    // not affect A.
    const SetupEnergy setup(
        {meterSource("A", {meterReading(0, 1.0, 1), meterReading(10, 11.0, 1)}),
         meterSource("B", {meterReading(5, 3.0, 1), meterReading(10, 4.0, 1)}, 5)});
    expectFigure(setup.over(hourSpan(0, 10)), 11.0, 10.8, 11.2);
}

TEST(SetupEnergy, AMetersAccuracyIsAFactorOnItsBounds)
{
    const SetupEnergy setup(
        {meterSource("A", {meterReading(0, 0.0, 0), meterReading(10, 100.0, 3)}, {}, {}, 0.01)});
    // A class 1 meter, 100 kWh: 99 … 101, and the resolution of ± 0.001.
    expectFigure(setup.over(hourSpan(0, 10), {true, {}}), 100.0, 99.999 * 0.99, 100.001 * 1.01);
    expectFigure(setup.over(hourSpan(0, 10), {true, {"A"}}), 100.0, 99.999, 100.001);
    expectFigure(setup.over(hourSpan(0, 10)), 100.0, 99.999, 100.001);
    const SetupEnergy unknown(
        {meterSource("A", {meterReading(0, 0.0, 0), meterReading(10, 100.0, 3)})});
    expectFigure(unknown.over(hourSpan(0, 10), {true, {}}), 100.0, 99.999 * 0.98, 100.001 * 1.02);
}

TEST(PowerLogs, IntegrateByTheTrapezoidRuleOverCoveredPieces)
{
    // 100 → 200 W in 1 h: 0.15 kWh; a gap; 200 W for 1 h: 0.2 kWh.
    const SetupEnergy setup(
        {{"Plug",
          PowerCurve(series({{0, 100}, {1, 200}, {5, 200}, {6, 200}}), toMilliseconds(Hours{1})),
          {},
          {},
          {}}});
    const EnergyFigure figure = setup.over(hourSpan(0, 6));
    EXPECT_NEAR(figure.kwh, 0.35, 1e-12);
    EXPECT_EQ(figure.metered, (std::vector{hourSpan(0, 1), hourSpan(5, 6)}));
    EXPECT_FALSE(figure.lowKnown());
    EXPECT_FALSE(figure.highKnown());
    // 0.5–1 h: from 150 to 200 W.
    EXPECT_NEAR(setup.over(hourSpan(0.5, 3)).kwh, 0.0875, 1e-12);
}

/// 1 kWh an hour for 20 h, read at both ends to ± 0.5 kWh.
SetupEnergy steady()
{
    return SetupEnergy({meterSource("A", {meterReading(0, 0, 0), meterReading(20, 20, 0)})});
}

TEST(Shares, BatchesAtTheSameTimeHaveEqualShares)
{
    // One: 0–10 h, two: 5–15 h. One: 5 h alone and 5 h of a half.
    const std::vector<ConcurrentBatch> concurrentBatches{{hourSpan(0, 10), 1},
                                                         {hourSpan(5, 15), 1}};
    EXPECT_NEAR(shareOver(steady(), sharesOf(concurrentBatches, 0), hourSpan(0, 20)).kwh, 7.5,
                1e-9);
    EXPECT_NEAR(shareOver(steady(), sharesOf(concurrentBatches, 1), hourSpan(0, 20)).kwh, 7.5,
                1e-9);
    // Idle from 15 to 20 h: everything adds up to 20.
    EXPECT_EQ(idleSpans(concurrentBatches, hourSpan(0, 20)), (std::vector{hourSpan(15, 20)}));
}

TEST(Shares, MayGoByVolume)
{
    // 20 L and 10 L: two thirds and one third of 5 h.
    const std::vector<ConcurrentBatch> concurrentBatches{{hourSpan(0, 10), 20},
                                                         {hourSpan(5, 15), 10}};
    EXPECT_NEAR(shareOver(steady(), sharesOf(concurrentBatches, 0), hourSpan(0, 20)).kwh,
                5 + 10.0 / 3.0, 1e-9);
    EXPECT_NEAR(shareOver(steady(), sharesOf(concurrentBatches, 1), hourSpan(0, 20)).kwh,
                5.0 / 3.0 + 5, 1e-9);
}

TEST(Shares, BoundsAreTheWeightedSumsOverSpansOfConstantWeight)
{
    const std::vector<ConcurrentBatch> concurrentBatches{{hourSpan(0, 10), 1},
                                                         {hourSpan(5, 15), 1}};
    // Register bounds at 0 h −0.5 … 0.5, at 5 and 10 h −0.5 … 20.5.
    // 0–5 h alone: 0 … 21; 5–10 h: 0 … 21, halved. Together 0 … 31.5.
    const EnergyFigure share = shareOver(steady(), sharesOf(concurrentBatches, 0), hourSpan(0, 20));
    EXPECT_NEAR(share.low, 0.0, 1e-9);
    EXPECT_NEAR(share.high, 31.5, 1e-9);
}

TEST(Shares, ABatchThatNeverSharesHasTheMetersBounds)
{
    // The neighbour touches its span and does not run during it.
    const std::vector<ConcurrentBatch> concurrentBatches{{hourSpan(0, 20), 1},
                                                         {hourSpan(20, 30), 1}};
    expectFigure(shareOver(steady(), sharesOf(concurrentBatches, 0), hourSpan(0, 20)), 20.0, 19.0,
                 21.0);
    EXPECT_EQ(sharesOf(concurrentBatches, 0).size(), 1u);
}

TEST(Shares, ABatchThatReplacesAnotherDoesNotCutTheSpan)
{
    // Two neighbours one after the other: the weight is constantly a half.
    const std::vector<ConcurrentBatch> concurrentBatches{
        {hourSpan(0, 20), 1}, {hourSpan(0, 8), 1}, {hourSpan(8, 20), 1}};
    const auto shares = sharesOf(concurrentBatches, 0);
    ASSERT_EQ(shares.size(), 1u);
    EXPECT_DOUBLE_EQ(shares[0].weight, 0.5);
    expectFigure(shareOver(steady(), shares, hourSpan(0, 20)), 10.0, 9.5, 10.5);
}

TEST(Idle, IsTimeWithoutABatch)
{
    const std::vector<ConcurrentBatch> concurrentBatches{
        {hourSpan(2, 4), 1}, {hourSpan(3, 6), 1}, {hourSpan(8, 9), 1}};
    EXPECT_EQ(idleSpans(concurrentBatches, hourSpan(0, 10)),
              (std::vector{hourSpan(0, 2), hourSpan(6, 8), hourSpan(9, 10)}));
    EXPECT_EQ(idleSpans({}, hourSpan(0, 10)), (std::vector{hourSpan(0, 10)}));
    EXPECT_TRUE(idleSpans(concurrentBatches, hourSpan(3, 5)).empty());
}

TEST(Spans, UniteAndIntersect)
{
    EXPECT_EQ(unite({hourSpan(4, 6), hourSpan(0, 2), hourSpan(2, 3), hourSpan(5, 5)}),
              (std::vector{hourSpan(0, 3), hourSpan(4, 6)}));
    EXPECT_EQ(intersect({hourSpan(0, 5), hourSpan(6, 9)}, {hourSpan(4, 7), hourSpan(8, 20)}),
              (std::vector{hourSpan(4, 5), hourSpan(6, 7), hourSpan(8, 9)}));
}

std::vector<WeightedSpan> alone(double from, double to)
{
    return {{hourSpan(from, to), 1.0}};
}

TEST(Cost, AFlatPriceTimesTheEnergy)
{
    const auto cost = costOver(steady(), alone(0, 20), {{hourSpan(0, 20), 0.15}}, hourSpan(0, 20));
    ASSERT_TRUE(cost);
    // 20 kWh, 19 … 21.
    EXPECT_NEAR(cost->amount, 3.00, 1e-9);
    EXPECT_NEAR(cost->low, 2.85, 1e-9);
    EXPECT_NEAR(cost->high, 3.15, 1e-9);
}

TEST(Cost, EachWindowsEnergyHasItsBounds)
{
    const auto cost = costOver(steady(), alone(0, 20),
                               {{hourSpan(0, 10), 0.1}, {hourSpan(10, 20), 0.3}}, hourSpan(0, 20));
    ASSERT_TRUE(cost);
    // 10 kWh each: 1 + 3. Each window has 0 … 21 kWh, which would add up to 0 … 8.4; but both
    // together have 19 … 21 kWh, at a price between 0.1 and 0.3.
    EXPECT_NEAR(cost->amount, 4.0, 1e-9);
    EXPECT_NEAR(cost->low, 0.1 * 19, 1e-9);
    EXPECT_NEAR(cost->high, 0.3 * 21, 1e-9);
}

TEST(Cost, WindowsWithReadingsAtTheirEdgesHaveSeparateBounds)
{
    const SetupEnergy read =
        oneMeter({meterReading(0, 0.0), meterReading(10, 10.0), meterReading(20, 11.0)}, 0.01);
    const auto cost = costOver(read, alone(0, 20),
                               {{hourSpan(0, 10), 0.1}, {hourSpan(10, 20), 0.3}}, hourSpan(0, 20));
    ASSERT_TRUE(cost);
    // 10 ± 0.01 kWh at 0.1 and 1 ± 0.01 at 0.3: closer than 11 ± 0.01 at 0.1 … 0.3.
    EXPECT_NEAR(cost->amount, 1.3, 1e-9);
    EXPECT_NEAR(cost->low, 0.999 + 0.297, 1e-9);
    EXPECT_NEAR(cost->high, 1.001 + 0.303, 1e-9);
}

TEST(Cost, ANegativePriceSwapsTheBounds)
{
    const auto cost = costOver(steady(), alone(0, 20), {{hourSpan(0, 20), -0.1}}, hourSpan(0, 20));
    ASSERT_TRUE(cost);
    EXPECT_NEAR(cost->low, -2.1, 1e-9);
    EXPECT_NEAR(cost->high, -1.9, 1e-9);
}

TEST(Cost, AShareCostsItsShare)
{
    const auto cost =
        costOver(steady(), {{hourSpan(0, 20), 0.5}}, {{hourSpan(0, 20), 0.2}}, hourSpan(0, 20));
    EXPECT_NEAR(cost->amount, 2.0, 1e-9);
}

TEST(Cost, IsAbsentWithoutEnergyOrPrice)
{
    EXPECT_FALSE(costOver(steady(), alone(0, 20), {}, hourSpan(0, 20)));
    EXPECT_FALSE(costOver(steady(), alone(0, 20), {{hourSpan(0, 15), 0.1}}, hourSpan(0, 20)));
    EXPECT_FALSE(
        costOver(SetupEnergy({}), alone(0, 20), {{hourSpan(0, 20), 0.1}}, hourSpan(0, 20)));
    EXPECT_FALSE(costOver(steady(), alone(0, 40), {{hourSpan(0, 40), 0.1}}, hourSpan(20, 40)));
}

TEST(Cost, IsThatOfTheMeteredPart)
{
    const auto cost =
        costOver(steady(), alone(-10, 30), {{hourSpan(-10, 30), 0.1}}, hourSpan(-10, 30));
    ASSERT_TRUE(cost);
    EXPECT_NEAR(cost->amount, 2.0, 1e-9);
}

TEST(Cost, HasNoUpperBoundWhereTheEnergyHasNone)
{
    const SetupEnergy setup(
        {meterSource("A", {meterReading(0, 9, 0), meterReading(10, 2, 0, MeterEvent::reset)})});
    const auto cost = costOver(setup, alone(0, 10), {{hourSpan(0, 10), 0.1}}, hourSpan(0, 10));
    ASSERT_TRUE(cost);
    EXPECT_NEAR(cost->low, 0.15, 1e-9);
    EXPECT_EQ(cost->high, unbounded);
}

} // namespace
} // namespace holdband::test
