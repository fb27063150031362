// How the plan, the details and the probes of a batch are changed.
#include "tests/ui/batch_test.h"

#include "core/store/history/undo.h"
#include "tests/ui/form_samples.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/instant_field.h"
#include "ui/forms/quantity_field.h"
#include "ui/plans/batch_fields.h"
#include "ui/plans/plan_editor.h"
#include "ui/plans/schedule_table.h"

#include <QLineEdit>
#include <QRadioButton>
#include <QTabWidget>
#include <gmock/gmock.h>
namespace holdband::ui::test {

TEST_F(NewBatchTest, APlanChangedMidRunLeavesThePastUnchanged)
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
    EXPECT_EQ(dialog->fields()->dwell()->edit()->text(), "1 h");
    EXPECT_EQ(dialog->fields()->returnTime()->edit()->text(), "0.25 h");
    dialog->fields()->dwell()->edit()->setText("0");
    dialog->fields()->returnTime()->edit()->setText("0.5");
    press(*dialog);
    Batch wanted = before;
    wanted.bandTimes = {Milliseconds{0}, std::chrono::minutes{30}};
    wanted.name = "Pale ale 1";
    wanted.finalGravity = Gravity::specific(1.010);
    EXPECT_EQ(batch("Pale ale 1"), wanted);
}

TEST_F(NewBatchTest, AnEmptyTimeInsideIsTheUsualOne)
{
    const auto dialog = openEdit("Pale 1");
    dialog->fields()->dwell()->edit()->setText("2");
    press(*dialog);
    EXPECT_EQ(batch("Pale 1").bandTimes.dwell, std::chrono::hours{2});
    const auto again = openEdit("Pale 1");
    again->fields()->dwell()->edit()->clear();
    again->fields()->returnTime()->edit()->clear();
    press(*again);
    EXPECT_EQ(batch("Pale 1").bandTimes, BandTimes{});
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

TEST_F(NewBatchTest, TypedTextIsNotDiscardedWithoutAsking)
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
