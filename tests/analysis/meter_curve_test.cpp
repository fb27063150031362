// One meter's register: estimate, bounds, events. Section 4 of the method; figures by hand.
#include "tests/analysis/builders.h"

#include <cmath>
#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

MeterCurve curve(std::vector<MeterReading> readings, std::optional<double> resolution = {},
                 std::optional<double> watts = {}, std::optional<double> top = {})
{
    MeterRegister meter;
    meter.readings = std::move(readings);
    if (resolution)
        meter.resolution = Energy::kilowattHours(*resolution);
    if (top)
        meter.rollsOverAt = Energy::kilowattHours(*top);
    const auto rated = watts ? std::optional(Power::watts(*watts)) : std::nullopt;
    return {meter, rated};
}

/// 07:00 100.0 kWh, 19:00 101.2 kWh (the check table's row).
std::vector<MeterReading> twelveHours()
{
    return {meterReading(7, 100.0, 1), meterReading(19, 101.2, 1)};
}

TEST(MeterCurve, IsStraightBetweenReadings)
{
    // At 13:00 the register was at 100.6. Bounds: 99.95 … 101.25 there, 99.95 … 100.05 at 07:00.
    expectFigure(curve(twelveHours()).over(hourSpan(7, 13)), 0.6, 0.0, 1.3);
    // The full pair: ± 0.05 at either end.
    expectFigure(curve(twelveHours()).over(hourSpan(7, 19)), 1.2, 1.1, 1.3);
}

TEST(MeterCurve, RatedPowerTightensTheBounds)
{
    // 150 W. At 13:00: high min(101.25, 100.05 + 0.9) = 100.95; low max(99.95, 101.15 − 0.9)
    // = 100.25. From 07:00 (99.95 … 100.05): 0.2 … 1.0.
    expectFigure(curve(twelveHours(), {}, 150).over(hourSpan(7, 13)), 0.6, 0.2, 1.0);
    // 11:00: high 100.05 + 0.6 = 100.65, low max(99.95, 101.15 − 1.2 = 99.95); to 13:00 (above):
    // low max(0, 100.25 − 100.65), high 100.95 − 99.95.
    expectFigure(curve(twelveHours(), {}, 150).over(hourSpan(11, 13)), 0.2, 0.0, 1.0);
}

TEST(MeterCurve, ARatedPowerThatIsTooSmallIsIgnoredAndReported)
{
    // 50 W for 12 h are 0.6 kWh, plus 0.1 of resolution: a reading of 1.2 shows that the rated
    // power is wrong.
    const MeterCurve wrong = curve(twelveHours(), {}, 50);
    EXPECT_EQ(wrong.pairsAboveRatedPower(), 1u);
    expectFigure(wrong.over(hourSpan(7, 13)), 0.6, 0.0, 1.3);
    // 92 W: 1.104 + 0.1 > 1.2, possible; 91 W: 1.092 + 0.1 < 1.2, impossible.
    EXPECT_EQ(curve(twelveHours(), {}, 92).pairsAboveRatedPower(), 0u);
    EXPECT_EQ(curve(twelveHours(), {}, 91).pairsAboveRatedPower(), 1u);
}

TEST(MeterCurve, TheRatedPowerIsIgnoredForThatPairOnly)
{
    const MeterCurve both = curve(
        {meterReading(0, 0.0, 1), meterReading(10, 5.0, 1), meterReading(20, 6.0, 1)}, {}, 200);
    EXPECT_EQ(both.pairsAboveRatedPower(), 1u);
    // 0–5 h: the pair's 5 kWh exceed 2.1: only −0.05 … 5.05 at 5 h.
    expectFigure(both.over(hourSpan(0, 5)), 2.5, 0.0, 5.1);
    // 10–15 h: high min(6.05, 5.05 + 1.0), low max(4.95, 5.95 − 1.0); from 4.95 … 5.05.
    expectFigure(both.over(hourSpan(10, 15)), 0.5, 0.0, 1.1);
}

TEST(MeterCurve, TheEstimateIsWithinItsBoundsWhereTheMeterRanAtFullPower)
{
    // 1.2 kWh in 12 h at 95 W (1.14): within the resolution, so the power is possible, but the
    // straight line rises faster than it allows.
    const EnergyFigure figure = curve(twelveHours(), {}, 95).over(hourSpan(9, 17));
    EXPECT_NEAR(figure.kwh, 0.8, 1e-9);
    EXPECT_LE(figure.low, figure.kwh);
    EXPECT_GE(figure.high, figure.kwh);
}

TEST(MeterCurve, ResolutionDefaultsToTheFinestDecimal)
{
    EXPECT_DOUBLE_EQ(curve({meterReading(0, 5.0, 1), meterReading(1, 5.83, 2)}).resolutionKwh(),
                     0.01);
    EXPECT_DOUBLE_EQ(curve({meterReading(0, 5, 0), meterReading(1, 6, 0)}).resolutionKwh(), 1.0);
    EXPECT_DOUBLE_EQ(curve({meterReading(0, 5, 0), meterReading(1, 6, 0)}, 0.1).resolutionKwh(),
                     0.1);
}

TEST(MeterCurve, ARolloverAddsTheTop)
{
    // 99986 → 11 with highest value 100000: 25 kWh (the check table's row); ± 0.5 at either end.
    const std::vector<MeterReading> readings{meterReading(0, 99986, 0),
                                             meterReading(10, 11, 0, MeterEvent::rollover)};
    expectFigure(curve(readings, {}, {}, 100000).over(hourSpan(0, 10)), 25.0, 24.0, 26.0);
    // Halfway 12.5; the register was between 99985.5 and 100011.5.
    expectFigure(curve(readings, {}, {}, 100000).over(hourSpan(0, 5)), 12.5, 0.0, 26.0);
}

TEST(MeterCurve, AnImpossibleRolloverGivesNoEnergy)
{
    const std::vector<MeterReading> readings{meterReading(0, 12000, 0),
                                             meterReading(10, 11, 0, MeterEvent::rollover)};
    // Without a highest value, and with one that the register had already passed.
    EXPECT_FALSE(curve(readings).over(hourSpan(0, 10)).any());
    EXPECT_FALSE(curve(readings, {}, {}, 10000).over(hourSpan(0, 10)).any());
}

TEST(MeterCurve, AnUnexplainedDropLeavesThePairOut)
{
    const MeterCurve drop = curve({meterReading(0, 5.0, 1), meterReading(10, 6.0, 1),
                                   meterReading(20, 2.0, 1), meterReading(30, 3.5, 1)});
    const EnergyFigure figure = drop.over(hourSpan(0, 30));
    // 1.0 ± 0.1 and 1.5 ± 0.1.
    expectFigure(figure, 2.5, 2.3, 2.7);
    EXPECT_EQ(figure.metered, (std::vector{hourSpan(0, 10), hourSpan(20, 30)}));
    EXPECT_FALSE(drop.over(hourSpan(12, 18)).any());
}

std::vector<MeterReading> withReset()
{
    return {meterReading(0, 50.0, 1), meterReading(10, 3.0, 1, MeterEvent::reset),
            meterReading(20, 5.0, 1)};
}

TEST(MeterCurve, AResetPairIsAtLeastTheNewReading)
{
    expectFigure(curve(withReset()).over(hourSpan(0, 10)), 3.0, 2.95, unbounded);
    // A part of the pair: distributed evenly, low 0.
    expectFigure(curve(withReset()).over(hourSpan(0, 5)), 1.5, 0.0, unbounded);
    expectFigure(curve(withReset()).over(hourSpan(4, 10)), 1.8, 0.0, unbounded);
}

TEST(MeterCurve, AResetPairIsAtMostWhatTheRatedPowerAllows)
{
    expectFigure(curve(withReset(), {}, 1000).over(hourSpan(0, 10)), 3.0, 2.95, 10.0);
    expectFigure(curve(withReset(), {}, 1000).over(hourSpan(0, 5)), 1.5, 0.0, 5.0);
    // With the following plain pair: 2.0, 1.9 … 2.1.
    expectFigure(curve(withReset(), {}, 1000).over(hourSpan(0, 20)), 5.0, 4.85, 12.1);
    // 250 W for 10 h are 2.5 kWh: wrong, so unbounded again.
    const MeterCurve wrong = curve(withReset(), {}, 250);
    EXPECT_EQ(wrong.pairsAboveRatedPower(), 1u);
    expectFigure(wrong.over(hourSpan(0, 10)), 3.0, 2.95, unbounded);
}

TEST(MeterCurve, BoundsOfAResetPairKeepTheirOrder)
{
    // 290 W allow 2.9 kWh, less than the read minimum of 2.95, but within the resolution.
    const EnergyFigure figure = curve(withReset(), {}, 290).over(hourSpan(0, 10));
    EXPECT_LE(figure.low, figure.kwh);
    EXPECT_LE(figure.kwh, figure.high);
}

TEST(MeterCurve, NothingIsExtrapolated)
{
    const EnergyFigure figure = curve(twelveHours()).over(hourSpan(0, 24));
    expectFigure(figure, 1.2, 1.1, 1.3);
    EXPECT_EQ(figure.metered, (std::vector{hourSpan(7, 19)}));
    EXPECT_FALSE(curve(twelveHours()).over(hourSpan(0, 7)).any());
    EXPECT_FALSE(curve(twelveHours()).over(hourSpan(19, 24)).any());
    EXPECT_FALSE(curve({meterReading(7, 100.0, 1)}).over(hourSpan(0, 24)).any());
    EXPECT_FALSE(curve({}).over(hourSpan(0, 24)).any());
}

TEST(MeterCurve, TwelveHoursOfZeroAreLegitimate)
{
    const EnergyFigure figure =
        curve({meterReading(0, 7.25), meterReading(12, 7.25)}).over(hourSpan(0, 12));
    expectFigure(figure, 0.0, 0.0, 0.01);
    EXPECT_DOUBLE_EQ(figure.meteredMs(), 12 * hourMs);
}

TEST(MeterCurve, ChainsOfPairsTakeTheirBoundsAtTheirEnds)
{
    // The readings between do not widen the bounds: 3.0 ± 0.1.
    const MeterCurve chain = curve({meterReading(0, 1.0, 1), meterReading(5, 1.5, 1),
                                    meterReading(9, 3.0, 1), meterReading(20, 4.0, 1)});
    expectFigure(chain.over(hourSpan(0, 20)), 3.0, 2.9, 3.1);
}

/// The method's meter, each reading's time good to 10 min.
std::vector<MeterReading> doubted()
{
    std::vector<MeterReading> readings{meterReading(0, 5.00), meterReading(8, 5.80),
                                       meterReading(20, 6.40)};
    for (MeterReading& reading : readings)
        reading.timeDoubt = std::chrono::minutes{10};
    return readings;
}

// The example of section 8.5 of the method.
TEST(DoubtOfTimes, IsTheWorkedExample)
{
    const Span past{hour(0), hour(8.1)};
    // Estimate 0.80 + 0.60 × 6/720.
    expectFigure(curve(doubted()).over(past), 0.805, 0.0, 1.41);
    expectFigure(curve(doubted(), {}, 120).over(past), 0.805, 0.782, 0.842);
    expectFigure(curve(doubted()).over(hourSpan(0, 10)), 0.9, 0.79, 1.41);
    expectFigure(curve(doubted(), {}, 120).over(hourSpan(0, 10)), 0.9, 0.79, 1.07);
    std::vector<MeterReading> sure = doubted();
    for (MeterReading& reading : sure)
        reading.timeDoubt = {};
    expectFigure(curve(sure, {}, 120).over(past), 0.805, 0.79, 0.822);
}

TEST(DoubtOfTimes, AnEdgeAtAReadingIsTheMomentOfThatReading)
{
    expectFigure(curve(doubted()).over(hourSpan(0, 8)), 0.8, 0.79, 0.81);
    expectFigure(curve(doubted()).over(hourSpan(8, 20)), 0.6, 0.59, 0.61);
}

TEST(DoubtOfTimes, AnEdgeNearTheFirstReadingMovesInward)
{
    // From 00:05, so from 00:10: at least 5.80 − 5.805, at most 5.805 − 4.995.
    expectFigure(curve(doubted()).over({hour(5.0 / 60.0), hour(8)}), 0.8 * (475.0 / 480.0), 0.0,
                 0.81);
}

TEST(DoubtOfTimes, ARestartIsWholeOnlyBeyondTheDoubt)
{
    std::vector<MeterReading> readings{meterReading(0, 5.0), meterReading(8, 0.5, 2),
                                       meterReading(16, 1.0), meterReading(24, 1.5)};
    readings[1].event = MeterEvent::reset;
    readings.insert(readings.begin(), meterReading(-8, 4.0));
    for (MeterReading& reading : readings)
        reading.timeDoubt = std::chrono::minutes{10};
    const MeterCurve reset = curve(readings);
    EXPECT_NEAR(reset.over(hourSpan(-4, 12)).low, 0.495, 1e-9) << "and nothing of what is beside";
    EXPECT_NEAR(reset.over({hour(-0.1), hour(12)}).low, 0.0, 1e-9) << "6 min before the reading";
    EXPECT_NEAR(reset.over({hour(0), hour(8)}).low, 0.495, 1e-9) << "the readings themselves";
}

TEST(DoubtOfTimes, APairWithinItsDoubtDoesNotRefuteTheRatedPower)
{
    // 0.25 kWh in 2 h are 125 W; within ± 10 min each it may have been 0.25 kWh in 2 h 20 min.
    std::vector<MeterReading> readings{meterReading(0, 1.0), meterReading(2, 1.25)};
    EXPECT_EQ(curve(readings, {}, 110).pairsAboveRatedPower(), 1u);
    for (MeterReading& reading : readings)
        reading.timeDoubt = std::chrono::minutes{10};
    EXPECT_EQ(curve(readings, {}, 110).pairsAboveRatedPower(), 0u);
}

} // namespace
} // namespace holdband::test
