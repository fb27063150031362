// New batches and the plans that they begin with.
#include "tests/ui/batch_test.h"

#include "tests/ui/form_samples.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/quantity_field.h"
#include "ui/plans/batch_actions.h"
#include "ui/plans/batch_fields.h"
#include "ui/plans/plan_dialog.h"
#include "ui/plans/plan_editor.h"

#include <QApplication>
#include <QComboBox>
#include <QSignalSpy>
#include <QTableView>
#include <gmock/gmock.h>
namespace holdband::ui::test {

namespace {

/// Types into the focused widget and presses Tab.
void typeOn(const QString& text)
{
    QWidget* focused = QApplication::focusWidget();
    ASSERT_TRUE(focused);
    QTest::keyClicks(focused, text);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
}

} // namespace

TEST_F(NewBatchTest, AWholeBatchIsTypedByKeyboard)
{
    const auto dialog = openNew();
    EXPECT_EQ(dialog->fields()->name()->text(), "Pale 3");
    EXPECT_EQ(QApplication::focusWidget(), dialog->fields()->name());
    typeOn("Wheat 1"); // replaces the suggestion
    typeOn("Loop");    // chosen in the list by its first letters
    typeOn("left");
    typeOn({}); // the loop's own beer sensor is already chosen
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

TEST_F(NewBatchTest, AsksAboutTwoBatchesInOneVesselAndLeavesTheTypedText)
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

TEST_F(NewBatchTest, RetiredEquipmentIsNotOffered)
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
    press(*dialog); // asked about two batches in one vessel: yes
    EXPECT_EQ(batch("Pale 2 B").splitFrom, "Pale 2");
}

TEST_F(NewBatchTest, APlanIsSavedUnderANameAndUsedAgain)
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

TEST_F(NewBatchTest, TheNewBatchIsNamedAfterItIsSaved)
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

} // namespace holdband::ui::test
