// Reopening a batch: its end is removed, after a question if another batch has its vessel.
#include "tests/ui/dialog_test.h"

#include "core/store/history/undo.h"
#include "core/store/records/batches.h"
#include "ui/forms/save_change.h"
#include "ui/forms/save_row.h"
#include "ui/plans/batch_actions.h"
#include "ui/plans/step_dialog.h"

#include <QPushButton>
#include <QSignalSpy>

namespace holdband::ui::test {

class ReopenTest : public DialogTest {};

TEST_F(ReopenTest, ABatchIsReopenedByOneKeyAndUndoRestoresTheEnd)
{
    const Instant ended = *batch("Pale 1").ended;
    QWidget window;
    BatchActions actions(session, &window);
    const QSignalSpy stored(&actions, &BatchActions::saved);
    window.show();
    actions.reopen("Pale 1");
    settle();
    auto* dialog = window.findChild<StepDialog*>();
    ASSERT_TRUE(dialog);
    EXPECT_EQ(dialog->words(), "Pale 1 is open again: its end at 9 Mar 18:00 was removed.");
    QTest::keyClick(dialog, Qt::Key_Return);
    settle();
    EXPECT_EQ(batch("Pale 1").ended, std::nullopt);
    ASSERT_EQ(stored.size(), 1);
    EXPECT_EQ(stored[0][0], "reopened batch Pale 1");
    const QSignalSpy failed(&actions, &BatchActions::failed);
    actions.reopen("Pale 1");
    settle();
    ASSERT_EQ(failed.size(), 1);
    EXPECT_EQ(failed[0][0], "Pale 1 has not ended: it runs.");
    session.change<void>(
        &session,
        [](const store::LogbookFile& file) -> Done {
            const auto undone = store::undoLast(file);
            return undone ? Done{} : Done(failure(undone.error()));
        },
        [](const Done& done) { EXPECT_TRUE(done); });
    settle();
    EXPECT_EQ(batch("Pale 1").ended, ended);
}

TEST_F(ReopenTest, ReopeningAsksIfTheVesselIsInUseMeanwhile)
{
    Batch next = batch("Pale 2");
    next.beerSensor = "Loop beer";
    saveChange(
        session, &session, {store::HistoryVerb::roundsChanged},
        [=](const store::Change& change) { return store::updateBatch(change, "Pale 2", next); },
        [](const Done& done) { EXPECT_TRUE(done); });
    settle();
    QWidget window;
    BatchActions actions(session, &window);
    actions.reopen("Pale 1");
    settle();
    auto* dialog = window.findChild<StepDialog*>();
    ASSERT_TRUE(dialog);
    dialog->foot()->saveButton()->click();
    settle();
    EXPECT_TRUE(dialog->foot()->words().contains("Loop beer reads Pale 2 at that time"))
        << dialog->foot()->words().toStdString();
    EXPECT_TRUE(batch("Pale 1").ended.has_value()) << "asked first";
    dialog->foot()->saveButton()->click();
    settle();
    EXPECT_EQ(batch("Pale 1").ended, std::nullopt);
}

} // namespace holdband::ui::test
