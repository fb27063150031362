// New batches, what is done to them by one key, and how they are changed.
#include "tests/ui/dialog_test.h"

#include "core/model/plan_in_force.h"
#include "core/store/history/history.h"
#include "core/store/history/history_text.h"
#include "core/store/history/undo.h"
#include "core/store/records/batches.h"
#include "core/text/times.h"
#include "tests/ui/form_samples.h"
#include "tests/ui/spoken.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/instant_field.h"
#include "ui/forms/quantity_field.h"
#include "ui/forms/save_change.h"
#include "ui/forms/save_row.h"
#include "ui/plans/batch_actions.h"
#include "ui/plans/batch_dialog.h"
#include "ui/plans/batch_fields.h"
#include "ui/plans/batch_steps.h"
#include "ui/plans/new_batch_dialog.h"
#include "ui/plans/plan_dialog.h"
#include "ui/plans/plan_editor.h"
#include "ui/plans/schedule_table.h"
#include "ui/plans/step_dialog.h"
#include "ui/words/words.h"

#include <QApplication>
#include <QComboBox>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTableView>
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

/// Types into the focused widget and goes on by Tab.
void typeOn(const QString& text)
{
    QWidget* focused = QApplication::focusWidget();
    ASSERT_TRUE(focused);
    QTest::keyClicks(focused, text);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
}

} // namespace

class NewBatchTest : public DialogTest {
protected:
    std::unique_ptr<NewBatchDialog> openNew(const std::string& splitFrom = {})
    {
        auto dialog = std::make_unique<NewBatchDialog>(session, world(), splitFrom);
        dialog->setAttribute(Qt::WA_DeleteOnClose, false);
        dialog->open();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(dialog.get()));
        dialog->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(dialog.get()));
        return dialog;
    }
    std::unique_ptr<BatchDialog> openEdit(const std::string& name)
    {
        const BatchFormData all = world();
        auto dialog = std::make_unique<BatchDialog>(session, all, *all.batch(name));
        dialog->setAttribute(Qt::WA_DeleteOnClose, false);
        dialog->open();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(dialog.get()));
        return dialog;
    }
    void press(FormDialog& dialog)
    {
        dialog.foot()->saveButton()->click();
        settle();
    }
    void setPlan(const std::string& name, const Schedule& schedule)
    {
        Batch changed = batch(name);
        changed.schedule = schedule;
        keepChange(
            session, &session, {store::HistoryVerb::roundsChanged},
            [=](const store::Change& change) { return store::updateBatch(change, name, changed); },
            [](const Done& done) { EXPECT_TRUE(done); });
        settle();
    }
};

TEST_F(NewBatchTest, AWholeBatchIsTypedByKeyboard)
{
    const auto dialog = openNew();
    EXPECT_EQ(dialog->fields()->name()->text(), "Pale 3");
    EXPECT_EQ(QApplication::focusWidget(), dialog->fields()->name());
    typeOn("Wheat 1"); // over the suggestion
    typeOn("Loop");    // chosen in the list by its first letters
    typeOn("left");
    typeOn({}); // the loop's own beer sensor stands there already
    typeOn("Room");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_A, Qt::ControlModifier);
    typeOn("2026-03-12 17:30");
    typeOn({}); // "Now"
    typeOn("5");
    typeOn("1.052");
    EXPECT_EQ(QApplication::focusWidget(), dialog->planChoice());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_A, Qt::ControlModifier);
    typeOn("2.5"); // the band
    QTableView* view = dialog->editor()->table()->view();
    EXPECT_EQ(QApplication::focusWidget(), view);
    QTest::keyClick(view, Qt::Key_Right);
    QTest::keyClick(view, Qt::Key_Right); // the target of the first stage
    QTest::keyClick(view, Qt::Key_6);
    QTest::keyClicks(QApplication::focusWidget(), "4");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    QCoreApplication::processEvents();
    QTest::keyClick(dialog->fields()->name(), Qt::Key_Return); // the main button
    settle();
    EXPECT_FALSE(dialog->isVisible()) << dialog->foot()->words().toStdString();
    const Batch made = batch("Wheat 1");
    EXPECT_EQ(made.setup, "Loop");
    EXPECT_EQ(made.vessel, "left");
    EXPECT_EQ(made.beerSensor, "Loop beer");
    EXPECT_EQ(made.ambientSensor, "Room");
    EXPECT_EQ(made.pitched, denverTime("2026-03-12 17:30"));
    EXPECT_EQ(made.volume, Volume::usGallons(5));
    EXPECT_EQ(made.originalGravity, Gravity::specific(1.052));
    EXPECT_EQ(made.tolerance, TemperatureDifference::fahrenheitDegrees(2.5));
    ASSERT_EQ(made.schedule.size(), 1u);
    EXPECT_EQ(made.schedule[0].label, "Primary");
    EXPECT_EQ(made.schedule[0].target, Temperature::fahrenheit(64));
}

TEST_F(NewBatchTest, AsksAboutTwoBatchesInOneVesselAndKeepsWhatWasTyped)
{
    const auto dialog = openNew();
    dialog->fields()->name()->setText("Pale 3");
    EXPECT_EQ(dialog->fields()->setup()->currentText(), "Cabinet") << "the last batch's";
    press(*dialog);
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_TRUE(dialog->foot()->words().contains("Cabinet beer reads Pale 2 at that time"))
        << dialog->foot()->words().toStdString();
    EXPECT_EQ(dialog->fields()->name()->text(), "Pale 3");
    EXPECT_EQ(world().batches.size(), 2u);
    press(*dialog);
    EXPECT_FALSE(dialog->isVisible());
    EXPECT_EQ(world().batches.size(), 3u);
}

TEST_F(NewBatchTest, RefusesWithASentenceAtThePlace)
{
    const auto dialog = openNew();
    dialog->fields()->setup()->setCurrentText("Loop");
    dialog->fields()->name()->setText("pale 1");
    press(*dialog);
    EXPECT_TRUE(dialog->foot()->words().contains("differ only in case"))
        << dialog->foot()->words().toStdString();
    dialog->fields()->name()->clear();
    press(*dialog);
    EXPECT_EQ(dialog->foot()->words(), "The batch needs a name.");
    EXPECT_EQ(QApplication::focusWidget(), dialog->fields()->name());
    dialog->fields()->name()->setText("Pale 9");
    dialog->fields()->volume()->edit()->setText("a lot");
    press(*dialog);
    EXPECT_EQ(dialog->fields()->volume()->problem(), "\"a lot\" is not a number.");
    EXPECT_EQ(dialog->fields()->volume()->edit()->text(), "a lot");
    EXPECT_EQ(world().batches.size(), 2u);
}

TEST_F(NewBatchTest, ABatchWithoutASensorIsRefused)
{
    BatchFormData bare = world();
    bare.sensors.clear();
    bare.batches.clear();
    NewBatchDialog dialog(session, bare, {});
    dialog.setAttribute(Qt::WA_DeleteOnClose, false);
    dialog.fields()->name()->setText("Alone");
    press(dialog);
    EXPECT_TRUE(dialog.foot()->words().contains("Without a beer sensor"))
        << dialog.foot()->words().toStdString();
}

TEST_F(NewBatchTest, RetiredThingsAreNotOffered)
{
    BatchFormData all = world();
    all.setups[0].retired = now();
    all.sensors[1].retired = now();
    EXPECT_THAT(offeredSetups(all), testing::ElementsAre("Cabinet"));
    EXPECT_THAT(offeredSetups(all, "Loop"), testing::ElementsAre("Cabinet", "Loop"));
    EXPECT_THAT(offeredSensors(all, SensorKind::beer, "Cabinet"),
                testing::ElementsAre("Loop beer"));
}

TEST_F(NewBatchTest, SuggestsTheNextName)
{
    BatchFormData all = world();
    EXPECT_EQ(suggestedName(all), "Pale 3");
    all.batches.back().name = "Stout";
    EXPECT_EQ(suggestedName(all), "Stout 2");
    all.batches.clear();
    EXPECT_EQ(suggestedName(all), "Batch 1");
}

TEST_F(NewBatchTest, ASplitBatchIsPartOfTheOther)
{
    const auto dialog = openNew("Pale 2");
    EXPECT_EQ(dialog->fields()->name()->text(), "Pale 2 B");
    EXPECT_EQ(dialog->fields()->setup()->currentText(), "Cabinet");
    dialog->fields()->beerSensor()->setCurrentText("Loop beer");
    press(*dialog);
    press(*dialog); // one vessel, two batches: yes
    EXPECT_EQ(batch("Pale 2 B").splitFrom, "Pale 2");
}

TEST_F(NewBatchTest, APlanIsKeptUnderANameAndUsedAgain)
{
    NamedPlan plan;
    plan.name = "Ale";
    plan.schedule = batch("Pale 2").schedule;
    plan.tolerance = TemperatureDifference::fahrenheitDegrees(2);
    auto dialog = std::make_unique<PlanDialog>(session, world(), plan);
    dialog->setAttribute(Qt::WA_DeleteOnClose, false);
    press(*dialog);
    ASSERT_EQ(world().plans.size(), 1u);
    EXPECT_EQ(world().plans[0], plan);
    const auto fresh = openNew();
    fresh->planChoice()->setCurrentText("Ale");
    EXPECT_EQ(*fresh->editor()->plan(), (PlanValue{plan.schedule, plan.tolerance}));
    dialog = std::make_unique<PlanDialog>(session, world(), plan);
    dialog->setAttribute(Qt::WA_DeleteOnClose, false);
    dialog->name()->setText("Ale, slow");
    press(*dialog);
    ASSERT_EQ(world().plans.size(), 1u) << "renamed";
    EXPECT_EQ(world().plans[0].name, "Ale, slow");
}

TEST(BatchSteps, TurningDownSaysWhatBegins)
{
    const Instant now = denverTime("2026-03-12 18:12");
    const auto step = stageEndStep(waitingBatch(), now, now, us());
    ASSERT_TRUE(step) << step.error().sentence();
    EXPECT_EQ(step->words, "Primary ends at 12 Mar 18:12. Crash begins: hold at 34.0 °F.");
    EXPECT_EQ(store::historyText(step->entry), "ended Primary of Pale 2");
    const auto laid = laidInForce(step->batch);
    ASSERT_EQ(laid.size(), 2u);
    EXPECT_EQ(laid[1].start, now);
    EXPECT_EQ(step->batch.schedule, waitingBatch().schedule) << "what was planned stays";
    const auto again = stageEndStep(step->batch, denverTime("2026-03-12 18:13"),
                                    denverTime("2026-03-12 19:00"), us());
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().sentence(), "Crash is the last stage of the plan; add a stage to the "
                                        "plan, or end the batch.");
}

TEST(BatchSteps, RefuseTimesThatCannotBe)
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

TEST(BatchSteps, AChangeOfPlanLeavesThePastAlone)
{
    Batch batch = waitingBatch();
    const Instant change = denverTime("2026-03-12 06:00");
    PlanValue plan = latestPlan(batch);
    plan.schedule[0].target = Temperature::fahrenheit(70);
    plan.tolerance = TemperatureDifference::fahrenheitDegrees(1);
    const Batch later = withPlanFrom(batch, plan, change, "sluggish");
    EXPECT_EQ(targetAt(laidInForce(later), denverTime("2026-03-11 06:00")),
              Temperature::fahrenheit(66));
    EXPECT_EQ(targetAt(laidInForce(later), denverTime("2026-03-12 06:00")),
              Temperature::fahrenheit(70));
    EXPECT_EQ(later.schedule, batch.schedule);
    EXPECT_EQ(later.tolerance, batch.tolerance) << "the band of the past does not move either";
    EXPECT_EQ(laidInForce(later).back().stage.tolerance, plan.tolerance);
    const Batch instead = withPlanInstead(later, plan);
    EXPECT_EQ(targetAt(laidInForce(instead), denverTime("2026-03-11 06:00")),
              Temperature::fahrenheit(70));
    EXPECT_TRUE(instead.planChanges.empty());
}

TEST(BatchSteps, PlannedAndDoneStayApart)
{
    Batch batch = waitingBatch();
    batch.schedule[0].until = StageUntil::hours;
    batch.schedule[0].length = Hours{240};
    batch.stageEnds = {denverTime("2026-03-12 18:12")};
    const auto planned = scheduleTable(firstPlanned(batch), batch, us());
    const auto done = scheduleTable(laidInForce(batch), batch, us());
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
    const QSignalSpy kept(&actions, &BatchActions::kept);
    window.show();
    actions.endStageNow("Pale 2");
    settle();
    auto* dialog = window.findChild<StepDialog*>();
    ASSERT_TRUE(dialog);
    EXPECT_EQ(dialog->words(), "Primary ends at 12 Mar 18:12. Crash begins: hold at 34.0 °F.");
    QTest::keyClick(dialog, Qt::Key_Return);
    settle();
    EXPECT_THAT(batch("Pale 2").stageEnds, testing::ElementsAre(now()));
    ASSERT_EQ(kept.size(), 1);
    EXPECT_EQ(kept[0][0], "ended Primary of Pale 2");
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

TEST_F(NewBatchTest, TheNewBatchIsNamedOnceItIsSaved)
{
    QWidget window;
    BatchActions actions(session, &window);
    const QSignalSpy pitched(&actions, &BatchActions::pitched);
    window.show();
    actions.newBatch();
    settle();
    auto* dialog = window.findChild<NewBatchDialog*>();
    ASSERT_TRUE(dialog);
    dialog->fields()->name()->setText("Wheat 1");
    EXPECT_EQ(pitched.size(), 0);
    press(*dialog);
    if (dialog->isVisible()) // it asks about two batches on one setup
        press(*dialog);
    ASSERT_EQ(pitched.size(), 1) << dialog->foot()->words().toStdString();
    EXPECT_EQ(pitched[0][0], "Wheat 1");
}

TEST_F(NewBatchTest, WhatWasDoneIsSaidInTheReadersLanguageAndKeptInEnglish)
{
    setPlan("Pale 2", waitingBatch().schedule);
    const test::German german;
    ASSERT_TRUE(german.loaded());
    QWidget window;
    BatchActions actions(session, &window);
    const QSignalSpy kept(&actions, &BatchActions::kept);
    window.show();
    actions.endStageNow("Pale 2");
    settle();
    auto* dialog = window.findChild<StepDialog*>();
    ASSERT_TRUE(dialog);
    QTest::keyClick(dialog, Qt::Key_Return);
    settle();
    ASSERT_EQ(kept.size(), 1);
    EXPECT_EQ(kept[0][0], "Primary von Pale 2 beendet");
    const auto file = store::LogbookFile::open(core(session.path()), store::Access::read);
    ASSERT_TRUE(file);
    EXPECT_EQ(store::readHistoryEntries(**file)->back().entry,
              (store::HistoryEntry{store::HistoryVerb::stageEnded, {"Pale 2", "Primary"}}));
}

TEST_F(NewBatchTest, ABatchThatWaitsIsPitchedAndLaterEndedByOneKey)
{
    Batch ahead = batch("Pale 2");
    ahead.pitched = now() + std::chrono::hours{24};
    keepChange(
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

TEST_F(NewBatchTest, APlanChangedMidRunKeepsThePast)
{
    const auto dialog = openEdit("Pale 2");
    EXPECT_TRUE(dialog->fromNowOn()->isChecked());
    dialog->editor()->table()->model()->setCell(0, planTarget, "70");
    dialog->why()->setText("sluggish");
    press(*dialog);
    EXPECT_FALSE(dialog->isVisible()) << dialog->foot()->words().toStdString();
    const Batch changed = batch("Pale 2");
    ASSERT_EQ(changed.planChanges.size(), 1u);
    EXPECT_EQ(changed.planChanges[0].from, now());
    EXPECT_EQ(changed.planChanges[0].why, "sluggish");
    EXPECT_EQ(changed.schedule[0].target, Temperature::fahrenheit(66));
    const auto again = openEdit("Pale 2");
    again->forThePast()->setChecked(true);
    again->editor()->table()->model()->setCell(0, planTarget, "68");
    press(*again);
    EXPECT_EQ(batch("Pale 2").schedule[0].target, Temperature::fahrenheit(68));
    EXPECT_TRUE(batch("Pale 2").planChanges.empty());
    session.change<store::HistoryEntry>(
        &session, [](const store::LogbookFile& file) { return store::undoLast(file); },
        [](const Result<store::HistoryEntry>& undone) { EXPECT_TRUE(undone); });
    settle();
    EXPECT_EQ(batch("Pale 2"), changed) << "with the change of plan that was dropped";
}

TEST_F(NewBatchTest, DetailsAreChangedAndNothingElse)
{
    const Batch before = batch("Pale 1");
    const auto dialog = openEdit("Pale 1");
    EXPECT_TRUE(dialog->forThePast()->isChecked()) << "it has ended";
    dialog->fields()->name()->setText("Pale ale 1");
    dialog->fields()->finalGravity()->edit()->setText("1.010");
    press(*dialog);
    Batch wanted = before;
    wanted.name = "Pale ale 1";
    wanted.finalGravity = Gravity::specific(1.010);
    EXPECT_EQ(batch("Pale ale 1"), wanted);
}

TEST_F(NewBatchTest, ABatchIsReopenedByEmptyingItsEnd)
{
    const auto dialog = openEdit("Pale 1");
    dialog->fields()->ended()->edit()->setText("2026-03-07 10:00");
    press(*dialog);
    EXPECT_EQ(dialog->foot()->words(), "The batch ends before it is pitched; check both times.");
    dialog->fields()->ended()->edit()->clear();
    press(*dialog);
    EXPECT_EQ(batch("Pale 1").ended, std::nullopt);
}

TEST_F(NewBatchTest, AProbeIsReplacedMidBatch)
{
    const auto dialog = openEdit("Pale 2");
    dialog->uses()->addRow();
    dialog->uses()->model()->setCell(0, 0, "2026-03-10 17:00");
    dialog->uses()->model()->setCell(0, 1, "Loop beer");
    press(*dialog);
    EXPECT_TRUE(dialog->isVisible()) << "before pitching";
    EXPECT_EQ(dialog->tabs()->currentIndex(), 2);
    dialog->uses()->model()->setCell(0, 0, "2026-03-11 09:00");
    dialog->uses()->model()->setCell(0, 2, "B");
    press(*dialog);
    EXPECT_THAT(batch("Pale 2").beerUses,
                testing::ElementsAre(BeerUse{denverTime("2026-03-11 09:00"), "Loop beer", "B"}));
}

TEST_F(NewBatchTest, WhatWasTypedIsNotThrownAwayUnasked)
{
    const auto dialog = openEdit("Pale 2");
    dialog->reject();
    EXPECT_FALSE(dialog->isVisible()) << "nothing was typed";
    const auto again = openEdit("Pale 2");
    QTest::keyClicks(again->fields()->name(), "x");
    again->reject();
    EXPECT_TRUE(again->isVisible());
    EXPECT_EQ(again->foot()->words(), "What you typed here has not been saved.");
    again->reject();
    EXPECT_FALSE(again->isVisible());
}

} // namespace holdband::ui::test
