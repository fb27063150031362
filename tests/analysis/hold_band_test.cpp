// Time inside and outside, and excursions: section 3 of the method. Figures by hand.
#include "tests/analysis/builders.h"

#include <cmath>
#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

BandJudgement judgeOne(Schedule schedule, double ended, Series beer, double gapMinutes,
                       std::size_t stage = 0)
{
    return judged(batchOf(std::move(schedule), ended), std::move(beer), gapMinutes)
        .asPlanned.stages.at(stage);
}

/// A hold at 20 °C that allows no settling time.
Stage strictHold(std::optional<double> hours = {})
{
    Stage stage = hold("Hold", 20, hours);
    stage.settleAllowed = Hours{0};
    return stage;
}

Series fahrenheitSeries(std::initializer_list<std::pair<double, double>> minutes)
{
    Series result;
    for (const auto& [at, value] : minutes) {
        result.at.push_back(hour(at / 60.0));
        result.value.push_back(Temperature::fahrenheit(value).celsius());
    }
    return result;
}

Batch fahrenheitBatch(double targetF, double toleranceF, double endedHour)
{
    Stage stage = hold("Hold", 0);
    stage.target = Temperature::fahrenheit(targetF);
    Batch batch = batchOf({stage}, endedHour);
    batch.tolerance = TemperatureDifference::fahrenheitDegrees(toleranceF);
    return batch;
}

TEST(HoldBand, FiveReadingsInAnHour)
{
    // 68 ± 3 °F; 68, 70, 73, 70, 68 every 15 min: 71 is passed at 20 and 40 min, the area is two
    // triangles of 10 min × 2 °F / 2 (the check table's row, derived from straight lines).
    const BandJudgement stage =
        judged(fahrenheitBatch(68, 3, 1),
               fahrenheitSeries({{0, 68}, {15, 70}, {30, 73}, {45, 70}, {60, 68}}), 15)
            .asPlanned.stages.at(0);
    constexpr double minuteMs = 60000.0;
    EXPECT_NEAR(stage.aboveMs, 20 * minuteMs, 1e-6);
    EXPECT_NEAR(stage.insideMs, 40 * minuteMs, 1e-6);
    ASSERT_EQ(stage.excursions.size(), 1u);
    const Excursion& excursion = stage.excursions[0];
    EXPECT_NEAR(excursion.startMs, 20 * minuteMs, 1e-6);
    EXPECT_NEAR(excursion.endMs, 40 * minuteMs, 1e-6);
    EXPECT_NEAR(excursion.areaMs / minuteMs * 1.8, 20.0, 1e-9);
    EXPECT_NEAR(68 + 3 + excursion.peak * 1.8, 73.0, 1e-9);
    EXPECT_EQ(excursion.cut, Cut::cameBack);
}

TEST(HoldBand, EdgesAreInsideInEitherUnit)
{
    // Every integer Fahrenheit target and tolerance: a beer exactly on an edge never leaves the
    // band.
    for (int target = 30; target <= 90; ++target) {
        for (const int tolerance : {1, 2, 3, 5, 7}) {
            const double edge = target + (target % 2 == 0 ? tolerance : -tolerance);
            const JudgedBatch batch =
                judged(fahrenheitBatch(target, tolerance, 2),
                       fahrenheitSeries({{0, edge}, {60, edge}, {120, edge}}), 60);
            const BandJudgement& stage = batch.asPlanned.stages.at(0);
            EXPECT_FALSE(stage.settles) << target;
            EXPECT_DOUBLE_EQ(stage.insideMs, 2 * hourMs) << target;
            EXPECT_TRUE(stage.excursions.empty()) << target;
        }
    }
}

TEST(HoldBand, TheSlackIsAMillionthOfAKelvin)
{
    const auto above = [](double past) {
        return judgeOne({hold("Hold", 20)}, 3,
                        series({{0, 20}, {1, 21 + past}, {2, 21 + past}, {3, 20}}), 60)
            .aboveMs;
    };
    EXPECT_DOUBLE_EQ(above(0.9e-6), 0.0);
    EXPECT_GT(above(1.1e-6), hourMs);
}

TEST(HoldBand, BothEdgesWithinOnePiece)
{
    // 23 → 17 in 6 h, 1 K an hour: above to 2 h, inside to 4 h, below to 6 h.
    const BandJudgement stage = judgeOne({strictHold()}, 6, series({{0, 23}, {6, 17}}), 360);
    EXPECT_DOUBLE_EQ(stage.aboveMs, 2 * hourMs);
    EXPECT_DOUBLE_EQ(stage.insideMs, 2 * hourMs);
    EXPECT_DOUBLE_EQ(stage.belowMs, 2 * hourMs);
    ASSERT_EQ(stage.excursions.size(), 2u);
    EXPECT_EQ(stage.excursions[0],
              (Excursion{Side::above, 0, 2 * hourMs, 2, 0, 2 * hourMs, Cut::cameBack, 2 * hourMs}));
    EXPECT_EQ(stage.excursions[1], (Excursion{Side::below, 4 * hourMs, 6 * hourMs, 2, 6 * hourMs,
                                              2 * hourMs, Cut::stageEnd, 2 * hourMs}));
}

TEST(HoldBand, UpwardThroughBothEdgesInOrder)
{
    const BandJudgement stage = judgeOne({strictHold()}, 6, series({{0, 17}, {6, 23}}), 360);
    ASSERT_EQ(stage.excursions.size(), 2u);
    EXPECT_EQ(stage.excursions[0].side, Side::below);
    EXPECT_DOUBLE_EQ(stage.excursions[0].endMs, 2 * hourMs);
    EXPECT_EQ(stage.excursions[1].side, Side::above);
    EXPECT_DOUBLE_EQ(stage.excursions[1].startMs, 4 * hourMs);
}

TEST(HoldBand, ARampingTargetIsCrossedExactly)
{
    // Target 20 → 10 over 10 h, beer at 20: d = t. Out from 1 h; area 9²/2 = 40.5 K·h, peak 9 K.
    const BandJudgement stage = judgeOne({hold("Hold", 20, 2), ramp("Fall", 10, 10)}, 12,
                                         series({{0, 20}, {4, 20}, {8, 20}, {12, 20}}), 240, 1);
    ASSERT_EQ(stage.excursions.size(), 1u);
    EXPECT_NEAR(stage.excursions[0].startMs, hourMs, 1e-6);
    EXPECT_NEAR(stage.excursions[0].peak, 9.0, 1e-12);
    EXPECT_NEAR(stage.excursions[0].areaMs / hourMs, 40.5, 1e-9);
    EXPECT_NEAR(stage.insideMs, hourMs, 1e-6);
}

TEST(Excursions, AreCutByAGap)
{
    const BandJudgement stage = judgeOne(
        {hold("Hold", 20)}, 7, series({{0, 20}, {1, 22}, {2, 22}, {5, 22}, {6, 20}, {7, 20}}), 60);
    ASSERT_EQ(stage.excursions.size(), 2u);
    EXPECT_DOUBLE_EQ(stage.excursions[0].startMs, 0.5 * hourMs);
    EXPECT_DOUBLE_EQ(stage.excursions[0].endMs, 2 * hourMs);
    EXPECT_EQ(stage.excursions[0].cut, Cut::gap);
    EXPECT_DOUBLE_EQ(stage.excursions[1].startMs, 5 * hourMs);
    EXPECT_EQ(stage.excursions[1].cut, Cut::cameBack);
}

TEST(Excursions, AreCutByAGapThatLastsToTheStagesEnd)
{
    const BandJudgement stage =
        judgeOne({hold("Hold", 20)}, 7, series({{0, 20}, {1, 22}, {2, 22}}), 60);
    ASSERT_EQ(stage.excursions.size(), 1u);
    EXPECT_EQ(stage.excursions[0].cut, Cut::gap);
}

TEST(Excursions, ThatCameBackBeforeAGapCameBack)
{
    const BandJudgement stage =
        judgeOne({hold("Hold", 20)}, 7, series({{0, 20}, {1, 22}, {2, 20}}), 60);
    ASSERT_EQ(stage.excursions.size(), 1u);
    EXPECT_EQ(stage.excursions[0].cut, Cut::cameBack);
}

/// An excursion whose last covered reading is exactly on the edge, typed in °F.
Cut cutOnTheEdge(double targetF, double toleranceF)
{
    const double edge = targetF + toleranceF;
    return judged(fahrenheitBatch(targetF, toleranceF, 6),
                  fahrenheitSeries({{0, targetF}, {60, edge + 2}, {120, edge}}), 60)
        .asPlanned.stages.at(0)
        .excursions.at(0)
        .cut;
}

TEST(Excursions, CameBackWhereTheLastReadingSitsOnTheEdge)
{
    // The edge is inside, whatever the rounding error from °F to °C.
    for (int target = 30; target <= 90; ++target)
        EXPECT_EQ(cutOnTheEdge(target, 3), Cut::cameBack) << target;
    const BandJudgement stage =
        judgeOne({hold("Hold", 20)}, 2, series({{0, 20}, {1, 22}, {2, 21}}), 60);
    EXPECT_EQ(stage.excursions.at(0).cut, Cut::cameBack) << "at the stage's end";
}

/// 22 °C, back to 20.5 for an instant, 22 again; `legMs` for each way.
Series shortReturn(int legMs)
{
    Series beer = series({{0, 20}, {1, 22}, {2, 22}});
    for (const auto& [legs, value] : {std::pair{1, 20.5}, std::pair{2, 22.0}}) {
        beer.at.push_back(hour(2) + Milliseconds{legs * legMs});
        beer.value.push_back(value);
    }
    beer.at.push_back(hour(3));
    beer.value.push_back(22);
    return beer;
}

TEST(Excursions, AReturnOfLessThanAMillisecondDoesNotSplit)
{
    // With the shortest return that a batch can set.
    Batch batch = batchOf({hold("Hold", 20)}, 3);
    batch.bandTimes.returnTime = Milliseconds{0};
    const auto excursions = [&](int legMs) {
        return judged(batch, shortReturn(legMs), 60).asPlanned.totals.excursions;
    };
    // Each way is 1.5 K, of which 0.5 K inside: a third of a leg. 2 × 1/3 ms is less than 1 ms.
    EXPECT_EQ(excursions(1), 1u);
    // 2 × 2/3 ms is more.
    EXPECT_EQ(excursions(2), 2u);
}

TEST(Excursions, PeakAndAreaAddUpOverPieces)
{
    // 21 at 1 h, 23 at 2 h, 22 at 3 h, 21 at 5 h: areas 1, 1.5 and 1 K·h; peak 2 K.
    const BandJudgement stage = judgeOne(
        {hold("Hold", 20)}, 6, series({{0, 20}, {1, 21}, {2, 23}, {3, 22}, {5, 21}, {6, 20}}), 120);
    ASSERT_EQ(stage.excursions.size(), 1u);
    EXPECT_DOUBLE_EQ(stage.excursions[0].outsideMs, 4 * hourMs);
    EXPECT_DOUBLE_EQ(stage.excursions[0].peak, 2.0);
    EXPECT_DOUBLE_EQ(stage.excursions[0].areaMs, 3.5 * hourMs);
}

TEST(HoldBand, CoverageCountsOnlyHoldTime)
{
    // Settles 0–1 h (22 → 21), covered to 4 h of 6: hold 5 h, covered 3 h.
    const BandJudgement stage =
        judgeOne({hold("Hold", 20)}, 6, series({{0, 22}, {1, 21}, {2, 20}, {3, 20}, {4, 20}}), 60);
    EXPECT_DOUBLE_EQ(stage.settlingMs, hourMs);
    EXPECT_DOUBLE_EQ(stage.holdMs, 5 * hourMs);
    EXPECT_DOUBLE_EQ(stage.coveredMs, 3 * hourMs);
}

TEST(HoldBand, TemperaturesIncludeInterpolatedEnds)
{
    // Stage 1 … 3 h of a beer falling 2 K an hour from 25 at 0 h: 23 to 19; settling ends at 21.
    const JudgedBatch batch = judged(batchOf({hold("Warm", 25, 1), hold("Hold", 20, 2)}, 3),
                                     series({{0, 25}, {4, 17}}), 240);
    const StageStatistics& statistics = batch.statistics.at(1);
    EXPECT_NEAR(*statistics.maximum, 21.0, 1e-9);
    EXPECT_NEAR(*statistics.minimum, 19.0, 1e-9);
    // Uniform between 1 and −1: mean 0, mean square 1/3, mean absolute 1/2.
    EXPECT_NEAR(statistics.deviation.mean(), 0.0, 1e-9);
    EXPECT_NEAR(statistics.deviation.rootMeanSquare(), std::sqrt(1.0 / 3.0), 1e-9);
    EXPECT_NEAR(statistics.deviation.standardDeviation(), std::sqrt(1.0 / 3.0), 1e-9);
    EXPECT_NEAR(statistics.deviation.meanAbsolute(), 0.5, 1e-9);
    // 5 % of the time is below −0.9, half below 0, 95 % below 0.9.
    EXPECT_NEAR(statistics.quantiles->at(0), -0.9, 1e-9);
    EXPECT_NEAR(statistics.quantiles->at(1), 0.0, 1e-9);
    EXPECT_NEAR(statistics.quantiles->at(2), 0.9, 1e-9);
}

} // namespace
} // namespace holdband::test
