// Arrival, settling, missed stages: section 2 of the method. Target 20 °C ± 1 K unless stated.
#include "tests/analysis/builders.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

struct Judged {
    JudgedBatch batch;

    const BandJudgement& stage(std::size_t i = 0) const { return batch.asPlanned.stages.at(i); }
    Verdict verdict() const { return batch.asPlanned.verdict; }
    SettlingFigures settling(std::size_t i = 0) const
    {
        return settlingFigures(batch.tracks.at(i), stage(i));
    }
};

Judged judge(Schedule schedule, std::optional<double> ended, Series beer, double gapMinutes)
{
    return {judged(batchOf(std::move(schedule), ended), std::move(beer), gapMinutes)};
}

/// 23 °C at pitching, falling 1 K an hour to 19 at 4 h, 20 from 5 h on.
Series fallingBeer()
{
    return series({{0, 23}, {4, 19}, {5, 20}, {10, 20}});
}

TEST(Settling, LastsUntilTheBeerEntersTheBand)
{
    const Judged run = judge({hold("Hold", 20)}, 10, fallingBeer(), 300);
    // 21 °C is passed at 2 h.
    ASSERT_TRUE(run.stage().arrival);
    EXPECT_DOUBLE_EQ(run.stage().arrival->ms, 2 * hourMs);
    EXPECT_TRUE(run.stage().arrival->seen);
    EXPECT_DOUBLE_EQ(run.stage().settlingMs, 2 * hourMs);
    EXPECT_DOUBLE_EQ(run.stage().holdMs, 8 * hourMs);
    EXPECT_DOUBLE_EQ(run.stage().coveredMs, 8 * hourMs);
    EXPECT_DOUBLE_EQ(run.stage().insideMs, 8 * hourMs);
    EXPECT_EQ(run.verdict(), Verdict::stayed);
}

TEST(Settling, IsReported)
{
    const Judged run = judge({hold("Hold", 20)}, 10, fallingBeer(), 300);
    const SettlingFigures figures = run.settling();
    EXPECT_DOUBLE_EQ(*figures.clockMs, 2 * hourMs);
    // (3 − 1) K in 2 h; 1 K below the target at 4 h, recrossed at 5 h.
    EXPECT_NEAR(*figures.ratePerMs * hourMs, 1.0, 1e-12);
    EXPECT_DOUBLE_EQ(*figures.overshoot, 1.0);
}

TEST(Settling, BeyondTheAllowedHoursIsJudged)
{
    Stage stage = hold("Hold", 20);
    stage.settleAllowed = Hours{1};
    const Judged run = judge({stage}, 10, fallingBeer(), 300);
    // Above from 1 h (22 °C, 1 K past the edge) to 2 h: area 0.5 K·h.
    EXPECT_DOUBLE_EQ(run.stage().settlingMs, hourMs);
    EXPECT_DOUBLE_EQ(run.stage().holdMs, 9 * hourMs);
    EXPECT_NEAR(run.stage().aboveMs, hourMs, 1e-6);
    ASSERT_EQ(run.stage().excursions.size(), 1u);
    EXPECT_NEAR(run.stage().excursions[0].startMs, hourMs, 1e-6);
    EXPECT_NEAR(run.stage().excursions[0].peak, 1.0, 1e-12);
    EXPECT_NEAR(run.stage().excursions[0].areaMs, 0.5 * hourMs, 1e-5);
    EXPECT_EQ(run.verdict(), Verdict::left);
    EXPECT_DOUBLE_EQ(*run.settling().clockMs, 2 * hourMs) << "it still arrived at 2 h";
}

TEST(Settling, AllowedHoursAreCountedOnTheClock)
{
    // Nothing is covered before 3 h; of the 4 h allowed only one is covered: 3–4 h.
    Stage stage = hold("Hold", 20);
    stage.settleAllowed = Hours{4};
    const Judged run =
        judge({stage}, 8, series({{3, 24}, {4, 23}, {5, 22}, {6, 21}, {7, 20}, {8, 20}}), 60);
    EXPECT_DOUBLE_EQ(run.stage().settlingMs, hourMs);
    EXPECT_DOUBLE_EQ(run.stage().holdMs, 7 * hourMs);
    // Above from 4 to 6 h, then inside to 8 h.
    EXPECT_DOUBLE_EQ(run.stage().coveredMs, 4 * hourMs);
    EXPECT_DOUBLE_EQ(run.stage().aboveMs, 2 * hourMs);
}

TEST(Settling, UncoveredTimeNeverCountsAsSettling)
{
    // Covered outside 2–3 h, arrives at 3 h: settling 1 h; the first 2 h are hold time without
    // data.
    const Judged run = judge({hold("Hold", 20)}, 4, series({{2, 23}, {3, 21}, {4, 20}}), 60);
    EXPECT_DOUBLE_EQ(run.stage().arrival->ms, 3 * hourMs);
    EXPECT_TRUE(run.stage().arrival->seen);
    EXPECT_DOUBLE_EQ(run.stage().settlingMs, hourMs);
    EXPECT_DOUBLE_EQ(run.stage().holdMs, 3 * hourMs);
    EXPECT_DOUBLE_EQ(run.stage().coveredMs, hourMs);
    // Rate from the first covered instant, not from the stage's start: 2 K in 1 h.
    EXPECT_NEAR(*run.settling().ratePerMs * hourMs, 2.0, 1e-12);
    EXPECT_EQ(run.verdict(), Verdict::notEnoughData);
}

TEST(Settling, AGapFromOneSideToTheOtherIsNoArrival)
{
    const Judged run =
        judge({hold("Hold", 20)}, 6, series({{0, 23}, {1, 22}, {5, 18}, {6, 17}}), 90);
    EXPECT_FALSE(run.stage().arrival);
    EXPECT_TRUE(run.stage().missed);
    EXPECT_DOUBLE_EQ(run.stage().settlingMs, 2 * hourMs);
    EXPECT_DOUBLE_EQ(run.stage().holdMs, 4 * hourMs);
    EXPECT_DOUBLE_EQ(run.stage().coveredMs, 0.0);
    EXPECT_EQ(run.verdict(), Verdict::notEnoughData) << "which comes before missed";
    EXPECT_FALSE(run.settling().clockMs);
}

TEST(Settling, ArrivalBehindAGapIsNotSeen)
{
    const Judged run =
        judge({hold("Hold", 20)}, 5, series({{0, 23}, {1, 22}, {4, 20.5}, {5, 20}}), 90);
    EXPECT_DOUBLE_EQ(run.stage().arrival->ms, 4 * hourMs);
    EXPECT_FALSE(run.stage().arrival->seen);
    EXPECT_DOUBLE_EQ(run.stage().settlingMs, hourMs);
    EXPECT_DOUBLE_EQ(run.stage().holdMs, 4 * hourMs);
    EXPECT_DOUBLE_EQ(run.stage().coveredMs, hourMs);
}

TEST(Settling, CrossingTheWholeBandWithinOnePieceIsAnArrival)
{
    // 23 → 17 in 6 h passes 21 at 2 h and 19 at 4 h, where an excursion begins.
    const Judged run = judge({hold("Hold", 20)}, 6, series({{0, 23}, {6, 17}}), 360);
    EXPECT_DOUBLE_EQ(run.stage().arrival->ms, 2 * hourMs);
    EXPECT_NEAR(run.stage().insideMs, 2 * hourMs, 1e-6);
    EXPECT_NEAR(run.stage().belowMs, 2 * hourMs, 1e-6);
}

TEST(Settling, WithoutCoveredTimeThereIsNoArrivalAndNoSettling)
{
    const Judged run = judge({hold("Hold", 20)}, 6, series({{0, 23}, {3, 22}, {6, 21}}), 90);
    EXPECT_FALSE(run.stage().arrival);
    EXPECT_FALSE(run.stage().settles);
    EXPECT_FALSE(run.stage().missed);
    EXPECT_DOUBLE_EQ(run.stage().settlingMs, 0.0);
    EXPECT_DOUBLE_EQ(run.stage().holdMs, 6 * hourMs);
    EXPECT_EQ(run.verdict(), Verdict::notEnoughData);
}

TEST(Settling, ABeerThatStartsInsideHasArrivedAtTheStart)
{
    const Judged unseen = judge({hold("Hold", 20)}, 2, series({{0, 20.5}, {1, 20}, {2, 20}}), 60);
    EXPECT_EQ(unseen.stage().arrival, (Arrival{0.0, 0.5, false}));
    EXPECT_FALSE(unseen.stage().settles);
    // Readings before pitching are part of the series: the instant before is covered.
    const Judged seen =
        judge({hold("Hold", 20)}, 2, series({{-1, 20.5}, {0, 20.5}, {1, 20}, {2, 20}}), 60);
    EXPECT_EQ(seen.stage().arrival, (Arrival{0.0, 0.5, true}));
}

TEST(Settling, FirstSeenInsideBehindAGapDoesNotSettle)
{
    const Judged run = judge({hold("Hold", 20)}, 4, series({{2, 20.5}, {3, 20}, {4, 20}}), 60);
    EXPECT_FALSE(run.stage().settles);
    EXPECT_EQ(run.stage().arrival, (Arrival{2 * hourMs, 0.5, false}));
    EXPECT_DOUBLE_EQ(run.stage().holdMs, 4 * hourMs);
    EXPECT_DOUBLE_EQ(run.stage().coveredMs, 2 * hourMs);
}

TEST(Settling, ABeerOnTheEdgeStartsInside)
{
    const Judged run = judge({hold("Hold", 20)}, 2, series({{0, 21}, {1, 22}, {2, 21}}), 60);
    EXPECT_FALSE(run.stage().settles);
    EXPECT_DOUBLE_EQ(run.stage().aboveMs, 2 * hourMs);
}

TEST(Settling, AStageWithoutAJumpHasArrivedAtItsStart)
{
    // 22 °C at 5 h, outside; the second stage has the same target.
    const Judged run = judge({hold("One", 20, 5), hold("Two", 20)}, 10,
                             series({{0, 20}, {4, 20}, {5, 22}, {6, 22}, {7, 20}, {10, 20}}), 240);
    EXPECT_FALSE(run.stage(1).settles);
    EXPECT_DOUBLE_EQ(run.stage(1).arrival->ms, 0.0);
    EXPECT_TRUE(run.stage(1).arrival->seen);
    EXPECT_FALSE(run.stage(1).missed);
    EXPECT_DOUBLE_EQ(run.stage(1).holdMs, 5 * hourMs);
    // Outside from the start until 21 °C at 6.5 h.
    EXPECT_DOUBLE_EQ(run.stage(1).aboveMs, 1.5 * hourMs);
}

TEST(Settling, AStageWithoutAJumpIsSeenToArriveWhereTheInstantBeforeIsCovered)
{
    // Covered up to the second stage's start at 2 h, a gap from 2 to 6 h.
    const Judged run = judge({hold("One", 20, 2), hold("Two", 20)}, 8,
                             series({{0, 20}, {1, 20}, {2, 20}, {6, 20}, {7, 20}, {8, 20}}), 60);
    EXPECT_DOUBLE_EQ(run.stage(1).arrival->ms, 0.0);
    EXPECT_TRUE(run.stage(1).arrival->seen);
    // The other way round: a gap before the start, covered from then on.
    const Judged after = judge({hold("One", 20, 5), hold("Two", 20)}, 8,
                               series({{0, 20}, {1, 20}, {5, 20}, {6, 20}, {7, 20}, {8, 20}}), 60);
    EXPECT_FALSE(after.stage(1).arrival->seen);
}

TEST(Settling, ARampDoesNotSettle)
{
    // The beer stays at 20 while the target falls 20 → 10 over 10 h.
    const Judged run = judge({hold("Hold", 20, 2), ramp("Fall", 10, 10)}, 12,
                             series({{0, 20}, {6, 20}, {12, 20}}), 360);
    EXPECT_FALSE(run.stage(1).settles);
    EXPECT_DOUBLE_EQ(run.stage(1).holdMs, 10 * hourMs);
    EXPECT_NEAR(run.stage(1).aboveMs, 9 * hourMs, 1e-6);
}

TEST(Settling, ACrashIsNotJudgedWhileTheBeerSettles)
{
    // 20 °C to 2 °C, 3 K an hour from 10 h on: 3 °C is passed at 10 h + 17/3 h.
    const Judged run = judge({hold("Hold", 20, 10), hold("Crash", 2)}, 20,
                             series({{0, 20}, {5, 20}, {10, 20}, {16, 2}, {20, 2}}), 360);
    EXPECT_TRUE(run.stage(1).settles);
    EXPECT_NEAR(run.stage(1).settlingMs, 17.0 / 3.0 * hourMs, 1e-6);
    EXPECT_NEAR(*run.settling(1).ratePerMs * hourMs, 3.0, 1e-12);
    EXPECT_DOUBLE_EQ(*run.settling(1).overshoot, 0.0);
    EXPECT_EQ(run.verdict(), Verdict::stayed);
}

TEST(Settling, OvershootCountsUntilTheBeerRecrossesTheTarget)
{
    // Past the target: 0.5, 0.8, recrossed on the way to 20.4; the later 18 is no overshoot.
    const Judged run =
        judge({hold("Hold", 20)}, 5,
              series({{0, 22}, {1, 21}, {2, 19.5}, {3, 19.2}, {4, 20.4}, {5, 18}}), 60);
    EXPECT_NEAR(*run.settling().overshoot, 0.8, 1e-12);
}

TEST(Settling, OvershootLastsToTheStagesEndWithoutARecrossing)
{
    const Judged run =
        judge({hold("Hold", 20)}, 3, series({{0, 22}, {1, 21}, {2, 19.5}, {3, 19.1}}), 60);
    EXPECT_NEAR(*run.settling().overshoot, 0.9, 1e-12);
}

TEST(Settling, AWarmingBeerOvershootsUpward)
{
    // 18 → 20.6 in 1 h: 19 is passed after 1/2.6 h, 1 K later than −2: rate −2.6 K/h.
    const Judged run = judge({hold("Hold", 20)}, 2, series({{0, 18}, {1, 20.6}, {2, 20}}), 60);
    EXPECT_NEAR(run.stage().arrival->ms, hourMs / 2.6, 1e-6);
    EXPECT_NEAR(*run.settling().ratePerMs * hourMs, -2.6, 1e-9);
    EXPECT_NEAR(*run.settling().overshoot, 0.6, 1e-12);
}

TEST(Missed, AStageThatEndedWithoutArrival)
{
    const Judged run = judge({hold("Hold", 20)}, 6, series({{0, 25}, {3, 24}, {6, 23}}), 180);
    EXPECT_TRUE(run.stage().missed);
    EXPECT_DOUBLE_EQ(run.stage().settlingMs, 6 * hourMs);
    EXPECT_DOUBLE_EQ(run.stage().holdMs, 0.0);
    EXPECT_EQ(run.batch.asPlanned.missed, (std::vector<std::string>{"Hold"}));
    EXPECT_EQ(run.verdict(), Verdict::missed);
    EXPECT_FALSE(run.batch.asPlanned.totals.coverage());
}

TEST(Missed, NotTheStageInProgressOfAnOpenBatch)
{
    const Judged run =
        judge({hold("Hold", 20)}, std::nullopt, series({{0, 25}, {3, 24}, {6, 23}}), 180);
    EXPECT_FALSE(run.stage().missed);
    EXPECT_DOUBLE_EQ(run.stage().settlingMs, 6 * hourMs) << "still settling";
    EXPECT_EQ(run.verdict(), Verdict::notEnoughData) << "no hold time, nothing missed";
}

TEST(Missed, AnEarlierStageOfAnOpenBatch)
{
    const Judged run = judge({hold("One", 10, 3), hold("Two", 20)}, std::nullopt,
                             series({{0, 20}, {3, 20}, {6, 20}, {9, 20}}), 180);
    EXPECT_TRUE(run.stage(0).missed);
    EXPECT_FALSE(run.stage(1).missed);
    EXPECT_EQ(run.verdict(), Verdict::missed);
    EXPECT_EQ(run.batch.asPlanned.missed, (std::vector<std::string>{"One"}));
}

} // namespace
} // namespace holdband::test
