// The target in force at each time: plans that wait for the brewer, and plans that change while a
// batch runs.
#include "core/model/plan_in_force.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using std::chrono::hours;

const Instant pitched = instantFromMs(1'772'900'000'000);

Stage hold(const char* label, double celsius, std::optional<double> length = {})
{
    Stage stage;
    stage.label = label;
    stage.target = Temperature::celsius(celsius);
    if (length)
        stage.length = Hours{*length};
    return stage;
}

Stage ramp(const char* label, double celsius, double length)
{
    Stage stage = hold(label, celsius, length);
    stage.kind = StageKind::ramp;
    return stage;
}

Stage untilTurnedDown(const char* label, double celsius)
{
    Stage stage = hold(label, celsius);
    stage.until = StageUntil::turnedDown;
    return stage;
}

Batch batchOf(Schedule schedule)
{
    Batch batch;
    batch.pitched = pitched;
    batch.schedule = std::move(schedule);
    return batch;
}

double celsiusAt(const Batch& batch, double hour)
{
    const auto target = targetAt(stagesInForce(batch), pitched + toMilliseconds(Hours{hour}));
    return target ? target->celsius() : -99.0;
}

TEST(PlanInForce, AnUnchangedPlanIsInForceAsItIs)
{
    const Batch batch = batchOf({hold("Primary", 19, 100), ramp("Rise", 21, 24), hold("Crash", 2)});
    EXPECT_EQ(scheduleInForce(batch), batch.schedule);
    EXPECT_DOUBLE_EQ(celsiusAt(batch, 112), 20.0);
}

TEST(PlanInForce, AStageThatWaitsIsTheLastUntilItIsEnded)
{
    Batch batch = batchOf({untilTurnedDown("Primary", 19), hold("Crash", 2)});
    EXPECT_EQ(scheduleInForce(batch).size(), 1u);
    EXPECT_FALSE(scheduleInForce(batch).front().length);
    batch.stageEnds = {pitched + hours{150}};
    const Schedule done = scheduleInForce(batch);
    ASSERT_EQ(done.size(), 2u);
    EXPECT_DOUBLE_EQ(done[0].length->count(), 150.0);
    EXPECT_EQ(done[1].label, "Crash");
    EXPECT_EQ(batch.schedule.front().length, std::nullopt) << "the plan stays as it was";
}

TEST(PlanInForce, AStageEndedEarlyEndsThereAndARampStopsWhereItWas)
{
    Batch batch = batchOf({hold("Primary", 18, 100), ramp("Rise", 22, 40), hold("Rest", 22, 48)});
    batch.stageEnds = {pitched + hours{110}};
    const Schedule done = scheduleInForce(batch);
    ASSERT_EQ(done.size(), 3u);
    EXPECT_DOUBLE_EQ(done[0].length->count(), 100.0);
    EXPECT_DOUBLE_EQ(done[1].length->count(), 10.0);
    EXPECT_DOUBLE_EQ(done[1].target.celsius(), 19.0); // a quarter of the way
    EXPECT_DOUBLE_EQ(celsiusAt(batch, 111), 22.0);
}

TEST(PlanInForce, AChangedPlanLeavesThePastUnchanged)
{
    Batch batch = batchOf({hold("Primary", 19, 200), hold("Crash", 2)});
    batch.planChanges = {
        {pitched + hours{120}, "warmer", {hold("Primary", 21, 240), hold("Crash", 1)}}};
    EXPECT_DOUBLE_EQ(celsiusAt(batch, 119), 19.0);
    EXPECT_DOUBLE_EQ(celsiusAt(batch, 121), 21.0);
    EXPECT_DOUBLE_EQ(celsiusAt(batch, 239), 21.0);
    EXPECT_DOUBLE_EQ(celsiusAt(batch, 241), 1.0);
    const Schedule done = scheduleInForce(batch);
    ASSERT_EQ(done.size(), 3u);
    EXPECT_DOUBLE_EQ(done[0].length->count(), 120.0);
    EXPECT_DOUBLE_EQ(done[1].length->count(), 120.0);
}

TEST(PlanInForce, AStageThatOnlyGetsLongerStaysOneStage)
{
    Batch batch = batchOf({hold("Primary", 19, 200), hold("Crash", 2)});
    batch.planChanges = {
        {pitched + hours{120}, "slow", {hold("Primary", 19, 300), hold("Crash", 2)}}};
    const Schedule done = scheduleInForce(batch);
    ASSERT_EQ(done.size(), 2u);
    EXPECT_DOUBLE_EQ(done[0].length->count(), 300.0);
}

TEST(PlanInForce, AChangeInsideARampContinuesFromItsCurrentTarget)
{
    Batch batch = batchOf({hold("Primary", 18, 100), ramp("Rise", 22, 40), hold("Rest", 22)});
    batch.planChanges = {{pitched + hours{110},
                          "slower",
                          {hold("Primary", 18, 100), ramp("Rise", 21, 50), hold("Rest", 21)}}};
    const Schedule done = scheduleInForce(batch);
    ASSERT_EQ(done.size(), 4u);
    EXPECT_DOUBLE_EQ(done[1].target.celsius(), 19.0);
    EXPECT_DOUBLE_EQ(done[2].length->count(), 40.0);
    EXPECT_DOUBLE_EQ(celsiusAt(batch, 130), 20.0); // half way from 19 to 21
}

TEST(PlanInForce, AChangeFromPitchingOnReplacesThePast)
{
    Batch batch = batchOf({hold("Primary", 19, 200), hold("Crash", 2)});
    batch.planChanges = {{pitched, "planned wrong", {hold("Primary", 12, 200), hold("Crash", 2)}}};
    EXPECT_EQ(scheduleInForce(batch), batch.planChanges.front().schedule);
}

} // namespace
} // namespace holdband::test
