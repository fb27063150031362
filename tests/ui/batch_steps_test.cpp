// What is done to a batch by one key: pitched, a stage ended, the batch ended.
#include "tests/ui/batch_test.h"

#include "core/model/plan_in_force.h"
#include "core/store/history/history.h"
#include "core/store/history/history_text.h"
#include "tests/ui/form_samples.h"
#include "tests/ui/spoken.h"
#include "ui/plans/batch_actions.h"
#include "ui/plans/batch_steps.h"
#include "ui/plans/schedule_table.h"
#include "ui/plans/step_dialog.h"
#include "ui/words/words.h"

#include <QSignalSpy>
#include <gmock/gmock.h>
namespace holdband::ui::test {

namespace {

/// Primary until it is turned down, then a crash.
Batch waitingBatch()
{
    Batch batch;
    batch.name = "Pale 2";
    batch.setup = "Cabinet";
    batch.beerSensor = "Cabinet beer";
    batch.pitched = denverTime("2026-03-10 18:00");
    batch.tolerance = TemperatureDifference::fahrenheitDegrees(3);
    batch.schedule = {stage("Primary", 66, {}), stage("Crash", 34, {})};
    batch.schedule[0].until = StageUntil::turnedDown;
    return batch;
}

} // namespace

TEST(BatchSteps, TurningDownNamesTheStageThatBegins)
{
    const Instant now = denverTime("2026-03-12 18:12");
    const auto step = stageEndStep(waitingBatch(), now, now, us());
    ASSERT_TRUE(step) << step.error().sentence();
    EXPECT_EQ(step->words, "Primary ends at 12 Mar 18:12. Crash begins: hold at 34.0 °F.");
    EXPECT_EQ(store::historyText(step->entry), "ended Primary of Pale 2");
    const auto stages = stagesInForce(step->batch);
    ASSERT_EQ(stages.size(), 2u);
    EXPECT_EQ(stages[1].start, now);
    EXPECT_EQ(step->batch.schedule, waitingBatch().schedule) << "what was planned stays";
    const auto again = stageEndStep(step->batch, denverTime("2026-03-12 18:13"),
                                    denverTime("2026-03-12 19:00"), us());
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().sentence(), "Crash is the last stage of the plan; add a stage to the "
                                        "plan, or end the batch.");
}

TEST(BatchSteps, RefuseImpossibleTimes)
{
    const Instant now = denverTime("2026-03-12 18:12");
    const Batch batch = waitingBatch();
    EXPECT_FALSE(stageEndStep(batch, now + std::chrono::minutes{1}, now, us()));
    EXPECT_FALSE(stageEndStep(batch, batch.pitched, now, us()));
    EXPECT_FALSE(batchEndStep(batch, batch.pitched, now, us()));
    EXPECT_FALSE(pitchStep(batch, now + std::chrono::minutes{1}, now, us()));
    const auto ended = batchEndStep(batch, now, now, us());
    ASSERT_TRUE(ended);
    EXPECT_EQ(ended->words, "Pale 2 ends at 12 Mar 18:12. Primary is its last stage.");
    EXPECT_FALSE(batchEndStep(ended->batch, now, now, us()));
    EXPECT_FALSE(stageEndStep(ended->batch, now, now, us()));
}

TEST(BatchSteps, AChangeOfPlanLeavesThePastUnchanged)
{
    Batch batch = waitingBatch();
    const Instant change = denverTime("2026-03-12 06:00");
    PlanValue plan = latestPlan(batch);
    plan.schedule[0].target = Temperature::fahrenheit(70);
    plan.tolerance = TemperatureDifference::fahrenheitDegrees(1);
    const Batch later = withPlanFrom(batch, plan, change, "sluggish");
    EXPECT_EQ(targetAt(stagesInForce(later), denverTime("2026-03-11 06:00")),
              Temperature::fahrenheit(66));
    EXPECT_EQ(targetAt(stagesInForce(later), denverTime("2026-03-12 06:00")),
              Temperature::fahrenheit(70));
    EXPECT_EQ(later.schedule, batch.schedule);
    EXPECT_EQ(later.tolerance, batch.tolerance) << "the band of the past does not move either";
    EXPECT_EQ(stagesInForce(later).back().stage.tolerance, plan.tolerance);
    const Batch instead = withPlanInstead(later, plan);
    EXPECT_EQ(targetAt(stagesInForce(instead), denverTime("2026-03-11 06:00")),
              Temperature::fahrenheit(70));
    EXPECT_TRUE(instead.planChanges.empty());
}

TEST(BatchSteps, PlannedAndDoneStaySeparate)
{
    Batch batch = waitingBatch();
    batch.schedule[0].until = StageUntil::hours;
    batch.schedule[0].length = Hours{240};
    batch.stageEnds = {denverTime("2026-03-12 18:12")};
    const auto planned = scheduleTable(firstPlanned(batch), batch, us());
    const auto done = scheduleTable(stagesInForce(batch), batch, us());
    EXPECT_EQ(planned.rows[0][3].text, "20 Mar 18:00");
    EXPECT_EQ(done.rows[0][3].text, "12 Mar 18:12");
    EXPECT_THAT(planHistory(batch, us()),
                testing::ElementsAre("Primary was ended by hand at 12 Mar 18:12."));
}

TEST_F(NewBatchTest, TurnDownNowIsOneKeyAndEnter)
{
    setPlan("Pale 2", waitingBatch().schedule);
    QWidget window;
    BatchActions actions(session, &window);
    const QSignalSpy stored(&actions, &BatchActions::saved);
    window.show();
    actions.endStageNow("Pale 2");
    settle();
    auto* dialog = window.findChild<StepDialog*>();
    ASSERT_TRUE(dialog);
    EXPECT_EQ(dialog->words(), "Primary ends at 12 Mar 18:12. Crash begins: hold at 34.0 °F.");
    QTest::keyClick(dialog, Qt::Key_Return);
    settle();
    EXPECT_THAT(batch("Pale 2").stageEnds, testing::ElementsAre(now()));
    ASSERT_EQ(stored.size(), 1);
    EXPECT_EQ(stored[0][0], "ended Primary of Pale 2");
}

TEST_F(NewBatchTest, ABatchThatEndedIsNotOfferedToBeEndedAgain)
{
    QWidget window;
    BatchActions actions(session, &window);
    const QSignalSpy failed(&actions, &BatchActions::failed);
    window.show();
    actions.endBatchNow("Pale 1");
    settle();
    EXPECT_FALSE(window.findChild<StepDialog*>());
    ASSERT_EQ(failed.size(), 1);
    EXPECT_TRUE(failed[0][0].toString().startsWith("Pale 1 ended "))
        << failed[0][0].toString().toStdString();
}

TEST_F(NewBatchTest, StepsAreShownInTheReadersLanguageAndStoredInEnglish)
{
    setPlan("Pale 2", waitingBatch().schedule);
    const test::German german;
    ASSERT_TRUE(german.loaded());
    QWidget window;
    BatchActions actions(session, &window);
    const QSignalSpy stored(&actions, &BatchActions::saved);
    window.show();
    actions.endStageNow("Pale 2");
    settle();
    auto* dialog = window.findChild<StepDialog*>();
    ASSERT_TRUE(dialog);
    QTest::keyClick(dialog, Qt::Key_Return);
    settle();
    ASSERT_EQ(stored.size(), 1);
    EXPECT_EQ(stored[0][0], "Primary von Pale 2 beendet");
    const auto file = store::LogbookFile::open(core(session.path()), store::Access::read);
    ASSERT_TRUE(file);
    EXPECT_EQ(store::readHistoryEntries(**file)->back().entry,
              (store::HistoryEntry{store::HistoryVerb::stageEnded, {"Pale 2", "Primary"}}));
}

TEST_F(NewBatchTest, ABatchThatWaitsIsPitchedAndLaterEndedByOneKey)
{
    Batch ahead = batch("Pale 2");
    ahead.pitched = now() + std::chrono::hours{24};
    saveChange(
        session, &session, {store::HistoryVerb::roundsChanged},
        [&](const store::Change& change) { return store::updateBatch(change, "Pale 2", ahead); },
        [](const Done& done) { EXPECT_TRUE(done); });
    settle();
    QWidget window;
    BatchActions actions(session, &window);
    actions.pitchNow("Pale 2");
    settle();
    auto* dialog = window.findChild<StepDialog*>();
    ASSERT_TRUE(dialog);
    press(*dialog);
    EXPECT_EQ(batch("Pale 2").pitched, now());
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    m_clock += std::chrono::hours{2};
    actions.endBatchNow("Pale 2");
    settle();
    dialog = window.findChild<StepDialog*>();
    ASSERT_TRUE(dialog);
    press(*dialog);
    EXPECT_EQ(batch("Pale 2").ended, now() + std::chrono::hours{2});
    const QSignalSpy failed(&actions, &BatchActions::failed);
    actions.endStageNow("no such batch");
    settle();
    EXPECT_EQ(failed.size(), 1);
}

} // namespace holdband::ui::test
