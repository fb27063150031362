// The verdicts, their precedence, ignored excursions and uncertainty: section 3 of the method.
#include "tests/analysis/builders.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

/// 21 °C is passed at 4 and at 6 h: an excursion of 2 h above 20 ± 1.
Series twoHoursAbove()
{
    return series({{0, 20}, {3, 20}, {4, 21}, {5, 22}, {6, 21}, {7, 20}, {10, 20}});
}

Verdict verdictOf(Batch batch, Series beer, double ignoredMinutes = 0.0, double gapMinutes = 180)
{
    batch.ignoreShorterThan = toMilliseconds(Hours{ignoredMinutes / 60.0});
    return judged(batch, std::move(beer), gapMinutes).asPlanned.verdict;
}

TEST(IgnoreShorterThan, AnExcursionOfJustThatLengthLeaves)
{
    const Batch batch = batchOf({hold("Hold", 20)}, 10);
    EXPECT_EQ(verdictOf(batch, twoHoursAbove(), 0), Verdict::left);
    EXPECT_EQ(verdictOf(batch, twoHoursAbove(), 120), Verdict::left);
    EXPECT_EQ(verdictOf(batch, twoHoursAbove(), 121), Verdict::stayed);
}

TEST(IgnoreShorterThan, ExcursionsCutByAStagesEndCountTogether)
{
    // The stage ends at 5 h, in the middle of the excursion: 1 h and 1 h.
    const Batch two = batchOf({hold("One", 20, 5), hold("Two", 20)}, 10);
    EXPECT_EQ(verdictOf(two, twoHoursAbove(), 120), Verdict::left);
    EXPECT_EQ(verdictOf(two, twoHoursAbove(), 121), Verdict::stayed);
    // Three stages: 4–4.5, 4.5–5.5, 5.5–6 h.
    const Batch three = batchOf({hold("One", 20, 4.5), hold("Two", 20, 1), hold("Three", 20)}, 10);
    EXPECT_EQ(verdictOf(three, twoHoursAbove(), 120), Verdict::left);
    EXPECT_EQ(verdictOf(three, twoHoursAbove(), 121), Verdict::stayed);
}

TEST(IgnoreShorterThan, ExcursionsOnOppositeSidesDoNotCountTogether)
{
    // At 5 h the target changes from 20 to 24: above by 1 K before, below by 1 K after, for 1 h and
    // for 0.5 h (23 °C is passed at 5.5 h).
    Stage warm = hold("Warm", 24);
    warm.settleAllowed = Hours{0};
    const Batch batch = batchOf({hold("One", 20, 5), warm}, 10);
    const Series beer = series({{0, 20}, {3, 20}, {4, 21}, {5, 22}, {6, 24}, {10, 24}});
    EXPECT_EQ(verdictOf(batch, beer, 60, 240), Verdict::left);
    EXPECT_EQ(verdictOf(batch, beer, 80, 240), Verdict::stayed);
}

TEST(IgnoreShorterThan, AnExcursionAfterAGapIsNotContinuous)
{
    // Above 4–5 h up to the stage's end, and again 6–7 h after a gap of 61 min.
    const Batch batch = batchOf({hold("One", 20, 5), hold("Two", 20)}, 12);
    const Series beer = series({{0, 20},
                                {1, 20},
                                {2, 20},
                                {3, 20},
                                {4, 21},
                                {5, 22},
                                {6.1, 22},
                                {7.1, 21},
                                {8, 20},
                                {9, 20},
                                {10, 20},
                                {11, 20},
                                {12, 20}});
    EXPECT_EQ(verdictOf(batch, beer, 60, 60), Verdict::left);
    EXPECT_EQ(verdictOf(batch, beer, 90, 60), Verdict::stayed);
}

TEST(Verdicts, LeftComesBeforeNotEnoughData)
{
    // 3 h of 10 h covered, with one excursion.
    const Batch batch = batchOf({hold("Hold", 20)}, 10);
    const Series beer = series({{0, 20}, {1, 22}, {2, 20}, {3, 20}});
    EXPECT_EQ(verdictOf(batch, beer, 0, 60), Verdict::left);
}

TEST(Verdicts, NinetyPercentCoveredIsEnough)
{
    Series beer = series({{0, 20}, {4, 20}, {5, 20}, {10, 20}});
    beer.breaks = {2}; // 4–5 h: 9 of 10 h are covered
    EXPECT_EQ(verdictOf(batchOf({hold("Hold", 20)}, 10), beer, 0, 300), Verdict::stayed);
    beer.at[2] = hour(5) + Milliseconds{1};
    EXPECT_EQ(verdictOf(batchOf({hold("Hold", 20)}, 10), beer, 0, 300), Verdict::notEnoughData);
}

TEST(Verdicts, CoverageIsSummedOverTheStages)
{
    // One: 2 of 4 h; two: 16 of 16 h. 18 of 20 is 90 %.
    Series beer = series({{0, 20}, {2, 20}, {4, 20}, {12, 20}, {20, 20}});
    beer.breaks = {2};
    const Batch batch = batchOf({hold("One", 20, 4), hold("Two", 20)}, 20);
    EXPECT_EQ(verdictOf(batch, beer, 0, 480), Verdict::stayed);
}

TEST(Verdicts, TheShareNeededIsASetting)
{
    Batch batch = batchOf({hold("Hold", 20)}, 10);
    const RunInput input = runInput(batch, series({{0, 20}, {4, 20}, {8, 20}}), 240);
    const auto stages = placeStages(batch, input.span.end);
    EXPECT_EQ(judgeBatch(stages, input.judging, {0.8}).asPlanned.verdict, Verdict::stayed);
    EXPECT_EQ(judgeBatch(stages, input.judging, {0.81}).asPlanned.verdict, Verdict::notEnoughData);
}

TEST(Verdicts, LeftComesBeforeMissedAndMissedBeforeStayed)
{
    Stage crash = hold("Crash", 2, 2);
    const Batch batch = batchOf({hold("One", 20, 6), crash}, 8);
    EXPECT_EQ(verdictOf(batch, series({{0, 20}, {3, 20}, {6, 20}, {8, 10}}), 0), Verdict::missed);
    EXPECT_EQ(verdictOf(batch, series({{0, 20}, {3, 22}, {6, 20}, {8, 10}}), 0), Verdict::left);
}

std::optional<bool> sureOf(const Batch& batch, Series beer, std::optional<double> accuracy)
{
    return judged(batch, std::move(beer), 300, accuracy).sure;
}

Series peakAt(double peak)
{
    return series({{0, 20}, {2, 20}, {4, peak}, {6, 20}, {10, 20}});
}

TEST(Uncertainty, StayedIsSureIfTheTighterBandHoldsToo)
{
    const Batch batch = batchOf({hold("Hold", 20)}, 10);
    EXPECT_EQ(sureOf(batch, peakAt(20.4), 0.5), true);
    EXPECT_EQ(sureOf(batch, peakAt(20.5), 0.5), true) << "on the tighter edge";
    EXPECT_EQ(sureOf(batch, peakAt(20.7), 0.5), false);
}

TEST(Uncertainty, LeftIsSureIfTheWiderBandIsLeftToo)
{
    const Batch batch = batchOf({hold("Hold", 20)}, 10);
    EXPECT_EQ(sureOf(batch, peakAt(21.6), 0.5), true);
    EXPECT_EQ(sureOf(batch, peakAt(21.5), 0.5), false) << "on the wider edge";
    EXPECT_EQ(sureOf(batch, peakAt(21.3), 0.5), false);
}

TEST(Uncertainty, UnknownAccuracyAndNotEnoughDataAreNeitherSureNorUnsure)
{
    const Batch batch = batchOf({hold("Hold", 20)}, 10);
    EXPECT_EQ(sureOf(batch, peakAt(20.4), std::nullopt), std::nullopt);
    EXPECT_EQ(sureOf(batch, series({{0, 20}, {1, 20}}), 0.5), std::nullopt);
}

TEST(Uncertainty, WithoutATighterBandOnlyLeavingCanBeSure)
{
    const Batch batch = batchOf({hold("Hold", 20)}, 10);
    for (const double accuracy : {1.0, 1.5}) {
        EXPECT_EQ(sureOf(batch, peakAt(20.0), accuracy), false) << accuracy;
        EXPECT_EQ(sureOf(batch, peakAt(25.0), accuracy), true) << accuracy;
        EXPECT_EQ(sureOf(batch, peakAt(21.5), accuracy), false) << accuracy;
    }
    const Batch missed = batchOf({hold("Crash", 2)}, 10);
    EXPECT_EQ(sureOf(missed, peakAt(20.0), 1.0), false);
}

TEST(Uncertainty, MissedIsSureIfTheBeerStaysAwayFromBothEdges)
{
    const Batch batch = batchOf({hold("Crash", 10)}, 6);
    // 12 °C is 1 K past the edge: with ± 0.5 K still missed, with ± 1 K perhaps arrived.
    const Series beer = series({{0, 20}, {3, 14}, {6, 12}});
    EXPECT_EQ(sureOf(batch, beer, 0.5), true);
    EXPECT_EQ(sureOf(batch, beer, 1.0), false);
}

TEST(Uncertainty, JudgesSettlingAgain)
{
    // 23 falling 1 K an hour to 20 at 3 h: arrives at 2 h, at 2.5 h (± 0.5) and 1.5 h (± 1.5).
    const JudgedBatch batch = judged(batchOf({hold("Hold", 20)}, 10),
                                     series({{0, 23}, {3, 20}, {6, 20}, {10, 20}}), 240, 0.5);
    EXPECT_NEAR(batch.asPlanned.stages.at(0).settlingMs, 2.0 * hourMs, 1e-6);
    EXPECT_NEAR(batch.tighter->stages.at(0).settlingMs, 2.5 * hourMs, 1e-6);
    EXPECT_NEAR(batch.wider->stages.at(0).settlingMs, 1.5 * hourMs, 1e-6);
    EXPECT_EQ(batch.sure, true);
}

TEST(Verdicts, ABatchWithoutAnyReadingHasNotEnoughData)
{
    const JudgedBatch batch = judged(batchOf({hold("Hold", 20)}, 10), {}, 60, 0.5);
    EXPECT_EQ(batch.asPlanned.verdict, Verdict::notEnoughData);
    EXPECT_EQ(batch.sure, std::nullopt);
    EXPECT_FALSE(batch.statistics.at(0).minimum);
    EXPECT_FALSE(batch.statistics.at(0).quantiles);
    EXPECT_TRUE(batch.deviation.empty());
}

} // namespace
} // namespace holdband::test
