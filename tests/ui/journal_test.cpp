// The journal: notes of a batch listed, edited, deleted, and all of it undone, by keyboard.
#include "tests/ui/dialog_test.h"

#include "core/store/history/history_text.h"
#include "core/store/history/undo.h"
#include "core/store/records/journal.h"
#include "core/text/times.h"
#include "ui/record/journal_dialog.h"
#include "ui/tables/table_model.h"
#include "ui/words/words.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

class Journal : public DialogTest {
protected:
    void SetUp() override
    {
        DialogTest::SetUp();
        addNote("2026-03-08T02:00:00Z", "Pale 1", "lid opened");
        addNote("2026-03-09T02:00:00Z", "Pale 1", "dry hops in");
        addNote("2026-03-11T02:00:00Z", "Pale 2", "moved to the Cabinet");
        addNote("2026-03-12T02:00:00Z", {}, "power cut in the house");
        m_dialog = std::make_unique<JournalDialog>(session, "Pale 1");
        m_dialog->show();
        m_dialog->activateWindow();
        settle();
    }

    void addNote(const char* at, std::optional<std::string> batch, const char* text)
    {
        const JournalNote note{*parseRfc3339(at), std::move(batch), text};
        session.change<void>(
            &session,
            [note](const store::LogbookFile& file) -> Done {
                auto change = store::Change::begin(file, {store::HistoryVerb::noteAdded});
                HOLDBAND_TRY(change);
                HOLDBAND_TRY(store::addNote(*change, note));
                return change->commit();
            },
            [](Done stored) { ASSERT_TRUE(stored); });
        settle();
    }

    std::vector<std::string> texts() const
    {
        const auto file = store::LogbookFile::open(logbook.toStdString(), store::Access::read);
        std::vector<std::string> all;
        const auto journal = store::readJournal(**file);
        for (const JournalNote& note : *journal)
            all.push_back(note.text);
        return all;
    }

    QStringList rows() const
    {
        QStringList all;
        for (int row = 0; row < m_dialog->notes()->rowCount(); ++row)
            all << m_dialog->notes()->index(row, 2).data().toString();
        return all;
    }

    void undo()
    {
        session.change<store::HistoryEntry>(&session, store::undoLast,
                                            [this](const Result<store::HistoryEntry>& undone) {
                                                ASSERT_TRUE(undone);
                                                m_undone = store::historyText(*undone);
                                                session.announceChange();
                                            });
        settle();
    }

    std::unique_ptr<JournalDialog> m_dialog;
    std::string m_undone;
};

} // namespace

TEST_F(Journal, ListsTheNotesOfABatchAndOfAll)
{
    QAbstractItemModelTester tester(m_dialog->notes(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(rows(), (QStringList{"lid opened", "dry hops in"}));
    EXPECT_EQ(m_dialog->notes()->index(0, 0).data().toString(), "7 Mar 2026 19:00");
    m_dialog->batch()->setFocus();
    QTest::keyClick(m_dialog->batch(), Qt::Key_Home);
    settle();
    EXPECT_EQ(rows().size(), 4);
    EXPECT_EQ(m_dialog->notes()->index(3, 1).data().toString(), dash);
}

TEST_F(Journal, ChangesTextAndTimeByKeyboardAndUndoesIt)
{
    EXPECT_TRUE(m_dialog->table()->hasFocus());
    EXPECT_EQ(m_dialog->time()->text(), "2026-03-07 19:00");
    QTest::keyClick(m_dialog->table(), Qt::Key_Return);
    EXPECT_TRUE(m_dialog->text()->hasFocus());
    QTest::keyClick(m_dialog->text(), Qt::Key_End);
    QTest::keyClicks(m_dialog->text(), " for a sample");
    m_dialog->time()->setFocus();
    m_dialog->time()->selectAll();
    QTest::keyClicks(m_dialog->time(), "2026-03-08 21:00");
    QTest::keyClick(m_dialog->time(), Qt::Key_Return);
    settle();
    EXPECT_EQ(rows(), (QStringList{"dry hops in", "lid opened for a sample"}));
    EXPECT_EQ(m_dialog->text()->toPlainText(), "lid opened for a sample");
    EXPECT_EQ(m_dialog->table()->currentIndex().row(), 1);
    EXPECT_THAT(m_dialog->message().toStdString(), testing::StartsWith("Saved."));
    undo();
    EXPECT_EQ(m_undone, "undid: changed a note of Pale 1");
    EXPECT_EQ(rows(), (QStringList{"lid opened", "dry hops in"}));
}

TEST_F(Journal, DeletesWithTheDeleteKeyAndUndoRestoresIt)
{
    QTest::keyClick(m_dialog->table(), Qt::Key_Down);
    QTest::keyClick(m_dialog->table(), Qt::Key_Delete);
    settle();
    EXPECT_EQ(rows(), (QStringList{"lid opened"}));
    EXPECT_EQ(texts().size(), 3u);
    undo();
    EXPECT_EQ(m_undone, "undid: deleted a note of Pale 1");
    EXPECT_THAT(texts(), testing::Contains("dry hops in"));
    EXPECT_EQ(rows(), (QStringList{"lid opened", "dry hops in"}));
}

TEST_F(Journal, ARefusalLosesNothingTyped)
{
    m_dialog->time()->setText("yesterday");
    m_dialog->saveButton()->click();
    EXPECT_TRUE(m_dialog->time()->hasFocus());
    EXPECT_FALSE(m_dialog->message().isEmpty());
    EXPECT_EQ(m_dialog->time()->text(), "yesterday");
    m_dialog->time()->setText("2026-03-07 19:00");
    m_dialog->text()->setPlainText("  ");
    m_dialog->saveButton()->click();
    EXPECT_TRUE(m_dialog->text()->hasFocus());
    EXPECT_THAT(texts(), testing::Contains("lid opened"));
}

TEST_F(Journal, TypedTextStaysWithItsNoteWhileAnotherIsShown)
{
    m_dialog->text()->setPlainText("lid opened twice");
    m_dialog->table()->selectRow(1);
    EXPECT_EQ(m_dialog->text()->toPlainText(), "dry hops in");
    session.announceChange();
    settle();
    m_dialog->table()->selectRow(0);
    EXPECT_EQ(m_dialog->text()->toPlainText(), "lid opened twice");
    EXPECT_THAT(texts(), testing::Contains("lid opened"));
}

TEST_F(WindowTest, TheJournalOpensFromItsMenuEntry)
{
    const auto window = openWindow(makeLogbook());
    QAction* entry = nullptr;
    for (QAction* action : window->findChildren<QAction*>()) {
        if (action->shortcut() == QKeySequence("Ctrl+Shift+J"))
            entry = action;
    }
    ASSERT_TRUE(entry);
    entry->trigger();
    settle(*window);
    EXPECT_TRUE(window->findChild<JournalDialog*>());
}

} // namespace holdband::ui::test
