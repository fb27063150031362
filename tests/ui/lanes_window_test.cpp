// The lanes in the window: what their menu opens, and that a change does not move them.
#include "core/store/records/journal.h"
#include "tests/ui/sample_window.h"
#include "ui/lanes/lanes_view.h"
#include "ui/plans/batch_dialog.h"
#include "ui/record/note_dialog.h"

#include <QComboBox>
#include <QMenu>
#include <QTest>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

class LanesWindowTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        m_window = openWindow(makeLogbook());
    }

    void choose(const QString& batch, const QString& text)
    {
        const auto menu = m_window->lanes()->menuFor(batch);
        for (QAction* action : menu->actions()) {
            if (action->text() == text) {
                EXPECT_TRUE(action->isEnabled());
                action->trigger();
                return settle(*m_window);
            }
        }
        FAIL() << "no " << text.toStdString();
    }

    void saveANote()
    {
        m_window->session().change<bool>(
            m_window.get(),
            [](const store::LogbookFile& file) -> Result<bool> {
                auto change = store::Change::begin(file, {store::HistoryVerb::noteAdded});
                HOLDBAND_TRY(change);
                HOLDBAND_TRY(store::addNote(*change, {now(), "Pale 1", "clear"}));
                HOLDBAND_TRY(change->commit());
                return true;
            },
            [this](const Result<bool>& stored) {
                EXPECT_TRUE(stored);
                m_window->session().announceChange();
            });
        settle(*m_window);
    }

    std::unique_ptr<MainWindow> m_window;
};

} // namespace

TEST_F(LanesWindowTest, TheMenuChangesTheBatchUnderThePointerNotTheShownOne)
{
    choose("Pale 1", "&Change this batch…");
    const auto* dialog = m_window->findChild<BatchDialog*>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->windowTitle().contains("Pale 1")) << dialog->windowTitle().toStdString();
}

TEST_F(LanesWindowTest, TheMenuAddsANoteToTheBatchUnderThePointer)
{
    choose("Pale 1", "Add a journal &note…");
    const auto* dialog = m_window->findChild<NoteDialog*>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->batch()->currentText(), "Pale 1");
}

TEST_F(LanesWindowTest, AChangeLeavesTheShownTimeAndTheSelectedPair)
{
    QTest::mouseClick(m_window->lanes(), Qt::LeftButton, Qt::ControlModifier,
                      *m_window->lanes()->placeOf("Pale 1"));
    settle(*m_window);
    const QStringList pair{"Pale 2", "Pale 1"};
    ASSERT_EQ(m_window->lanes()->chosen(), pair);
    choose("Pale 1", "Show only its &time");
    const Span before = m_window->lanes()->shownSpan();
    saveANote();
    EXPECT_EQ(m_window->lanes()->shownSpan(), before);
    EXPECT_EQ(m_window->lanes()->chosen(), pair);
    EXPECT_EQ(m_window->lanes()->current(), "Pale 1");
}

TEST_F(LanesWindowTest, AnotherLogbookHasSeparateLanes)
{
    choose("Pale 1", "Show only its &time");
    const Span before = m_window->lanes()->shownSpan();
    m_window->openLogbook(makeLogbook("second.holdband"));
    settle(*m_window);
    EXPECT_NE(m_window->lanes()->shownSpan(), before);
    EXPECT_EQ(m_window->lanes()->barCount(), 2u);
    EXPECT_EQ(m_window->lanes()->chosen(), QStringList("Pale 2"));
}

TEST_F(LanesWindowTest, NoChangesAreOfferedIfTheLogbookIsOpenElsewhere)
{
    const QString path = makeLogbook("held.holdband");
    const auto holder = store::LogbookFile::open(path.toStdString(), store::Access::write, now);
    ASSERT_TRUE(holder);
    m_window->openLogbook(path);
    settle(*m_window);
    ASSERT_TRUE(m_window->session().readOnly());
    const auto menu = m_window->lanes()->menuFor("Pale 1");
    for (const QAction* action : menu->actions()) {
        if (action->text() == "&Change this batch…" || action->text() == "Add a journal &note…") {
            EXPECT_FALSE(action->isEnabled()) << action->text().toStdString();
        }
    }
}

} // namespace holdband::ui::test
