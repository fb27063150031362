// The schedule on the time line: section 2 of the method, and which stage is the crash.
#include "tests/analysis/builders.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

std::vector<PlacedStage> placed(Schedule schedule, double endHour, bool open = false)
{
    const std::optional<double> ended = open ? std::nullopt : std::optional(endHour);
    return placeStages(batchOf(std::move(schedule), ended), hour(endHour));
}

TEST(Schedule, StagesFollowEachOtherAndTheLastLastsToTheEnd)
{
    const auto stages = placed({hold("One", 20, 5), hold("Two", 18, 3), hold("Three", 2)}, 20);
    ASSERT_EQ(stages.size(), 3u);
    EXPECT_EQ(stages[0].span, (Span{hour(0), hour(5)}));
    EXPECT_EQ(stages[1].span, (Span{hour(5), hour(8)}));
    EXPECT_EQ(stages[2].span, (Span{hour(8), hour(20)}));
}

TEST(Schedule, AStageThatBeginsAtTheEndIsLeftOut)
{
    EXPECT_EQ(placed({hold("One", 20, 5), hold("Two", 18)}, 5).size(), 1u);
    EXPECT_EQ(placed({hold("One", 20, 5), hold("Two", 18)}, 5.001).size(), 2u);
}

TEST(Schedule, TheBatchsEndCutsAStageAndARampHasTheSameSlope)
{
    const auto stages = placed({hold("Hold", 20, 5), ramp("Rise", 22, 10)}, 10);
    EXPECT_EQ(stages.at(1).span, (Span{hour(5), hour(10)}));
    // 2 K in 10 h: 21 after 5 h.
    EXPECT_DOUBLE_EQ(stages[1].targetCelsiusAt(5 * hourMs), 21.0);
}

TEST(Schedule, TimeAfterTheScheduleIsNoStage)
{
    const auto stages = placed({hold("One", 20, 5)}, 20);
    ASSERT_EQ(stages.size(), 1u);
    EXPECT_EQ(stages[0].span, (Span{hour(0), hour(5)}));
}

TEST(Schedule, OnlyAHoldWhoseTargetDiffersJumpsAndEveryFirstStage)
{
    const auto stages = placed({hold("First", 20, 5), hold("Same", 20, 5), ramp("Rise", 22, 5),
                                hold("Rest", 22, 5), ramp("Fall", 18, 5), hold("Off", 17, 5)},
                               100);
    std::vector<bool> jumps;
    for (const PlacedStage& stage : stages)
        jumps.push_back(stage.jumps);
    EXPECT_EQ(jumps, (std::vector{true, false, false, false, false, true}));
}

TEST(Schedule, TheSameTargetInTheOtherUnitIsNoJump)
{
    Stage fahrenheit = hold("Same", 0, 5);
    fahrenheit.target = Temperature::fahrenheit(68.0);
    EXPECT_FALSE(placed({hold("First", 20, 5), fahrenheit}, 100).at(1).jumps);
}

TEST(Schedule, TolerancesAndSettlingHaveDefaults)
{
    Stage own = hold("Own", 20, 5);
    own.tolerance = TemperatureDifference::kelvins(0.25);
    own.settleAllowed = Hours{36};
    const auto stages = placed({own, hold("Batch's", 18)}, 20);
    EXPECT_DOUBLE_EQ(stages.at(0).tolerance.kelvins(), 0.25);
    EXPECT_EQ(stages[0].settleAllowed, std::chrono::hours{36});
    EXPECT_DOUBLE_EQ(stages.at(1).tolerance.kelvins(), 1.0);
    EXPECT_EQ(stages[1].settleAllowed, std::chrono::hours{48});
}

TEST(Schedule, AStageHasEndedWhenALaterOneBeganOrTheBatchEnded)
{
    const auto closed = placed({hold("One", 20, 5), hold("Two", 18)}, 10);
    EXPECT_TRUE(closed.at(0).ended);
    EXPECT_TRUE(closed.at(1).ended);
    const auto open = placed({hold("One", 20, 5), hold("Two", 18)}, 10, true);
    EXPECT_TRUE(open.at(0).ended);
    EXPECT_FALSE(open.at(1).ended);
}

TEST(TargetTurns, AreTheJumpsAfterTheFirstStage)
{
    using Turns = std::vector<TargetTurn>;
    EXPECT_EQ(targetTurns(placed({hold("A", 20, 5), hold("B", 2)}, 10)),
              (Turns{{1, Turned::down}}));
    EXPECT_EQ(targetTurns(placed({hold("A", 20, 5), hold("B", 21, 5), hold("C", 20.5)}, 20)),
              (Turns{{1, Turned::up}, {2, Turned::down}}));
    EXPECT_EQ(targetTurns(placed({hold("A", 20, 5), hold("B", 20, 5), ramp("C", 22, 5)}, 20)),
              Turns())
        << "the same target, and a ramp";
    EXPECT_EQ(targetTurns(placed({hold("A", 20, 5), ramp("R", 22, 5), hold("C", 2)}, 20)),
              (Turns{{2, Turned::down}}));
    EXPECT_EQ(targetTurns(placed({hold("A", 20, 5), hold("B", 2)}, 5)), Turns()) << "not begun";
}

TEST(Crash, IsTheFirstHoldFiveDegreesBelowTheStageBefore)
{
    EXPECT_EQ(crashStage(placed({hold("A", 20, 5), hold("B", 15)}, 10)), 1u);
    EXPECT_EQ(crashStage(placed({hold("A", 20, 5), hold("B", 15.01)}, 10)), std::nullopt);
    EXPECT_EQ(crashStage(placed({hold("A", 20, 5), hold("B", 10, 5), hold("C", 2)}, 20)), 1u);
    EXPECT_EQ(crashStage(placed({hold("A", 20, 5), ramp("R", 22, 5), hold("C", 2)}, 20)), 2u);
    EXPECT_EQ(crashStage(placed({hold("A", 2, 5), hold("B", 20)}, 20)), std::nullopt);
}

TEST(Crash, IsNotAHoldAfterARamp)
{
    // The hold's target equals that of the stage before it.
    EXPECT_EQ(crashStage(placed({hold("A", 20, 5), ramp("Fall", 2, 10), hold("Cold", 2)}, 40)),
              std::nullopt);
}

TEST(Crash, OfNineFahrenheitDegreesCounts)
{
    // 9 °F are exactly 5 K, though not in binary for many pairs of targets.
    for (int fahrenheit = 40; fahrenheit <= 80; ++fahrenheit) {
        Stage warm = hold("Warm", 0, 5);
        warm.target = Temperature::fahrenheit(fahrenheit);
        Stage cold = hold("Cold", 0);
        cold.target = Temperature::fahrenheit(fahrenheit - 9);
        EXPECT_EQ(crashStage(placed({warm, cold}, 10)), 1u) << fahrenheit;
    }
}

} // namespace
} // namespace holdband::test
