// Problems that first-time users of the window had, so that they don't return.
#include "tests/ui/sample_window.h"

#include "core/store/records/equipment.h"
#include "ui/equipment/units_dialog.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/save_row.h"
#include "ui/imports/column_heads.h"
#include "ui/imports/imports_page.h"
#include "ui/imports/log_view.h"
#include "ui/imports/name_choices.h"
#include "ui/imports/target_box.h"
#include "ui/rounds/round_line.h"
#include "ui/rounds/round_time.h"
#include "ui/rounds/rounds_page.h"
#include "ui/window/pages.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace holdband::ui::test {

namespace {

class HesitationsTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        m_logbook = makeLogbook();
        m_window = openWindow(m_logbook);
        m_window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
    }

    void toRounds()
    {
        m_window->setPage(PageId::rounds);
        settle(*m_window);
    }
    RoundsPage& rounds() { return *m_window->pages()->rounds(); }
    void type(const char* text) { QTest::keyClicks(QApplication::focusWidget(), text); }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {})
    {
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
        settle(*m_window);
        settle(*m_window);
    }

    QString m_logbook;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace

TEST_F(HesitationsTest, UndoAfterASavedRoundUndoesTheRound)
{
    toRounds();
    type("15.10");
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(kwhOf(m_logbook, "Loop meter").size(), 4u);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(kwhOf(m_logbook, "Loop meter").size(), 3u);
    EXPECT_EQ(rounds().row("Loop meter")->field()->text(), "");
}

TEST_F(HesitationsTest, UndoWhileTypingUndoesTheTyping)
{
    toRounds();
    type("15.10");
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(rounds().row("Loop meter")->field()->text(), "");
    EXPECT_EQ(kwhOf(m_logbook, "Loop meter").size(), 3u);
}

TEST_F(HesitationsTest, AKeyOfTheMenuWorksFromWithinAField)
{
    toRounds();
    press(Qt::Key_K, Qt::ControlModifier); // a line edit's own key for "delete to the end"
    type("15");
    press(Qt::Key_Home);
    press(Qt::Key_K, Qt::ControlModifier);
    EXPECT_EQ(rounds().row("Loop meter")->field()->text(), "15");
}

TEST_F(HesitationsTest, ArrowsWalkBetweenTheFieldsOfARound)
{
    toRounds();
    ASSERT_EQ(QApplication::focusWidget(), rounds().row("Loop meter")->field());
    press(Qt::Key_Down);
    EXPECT_EQ(QApplication::focusWidget(), rounds().row("Cabinet meter")->field());
    press(Qt::Key_Up);
    EXPECT_EQ(QApplication::focusWidget(), rounds().row("Loop meter")->field());
}

TEST_F(HesitationsTest, ATimeIsTypedAsAPersonWouldAndEnterGoesToTheFirstMeter)
{
    toRounds();
    rounds().time()->button()->click();
    rounds().time()->field()->setText("7:20");
    rounds().time()->field()->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget(), rounds().row("Loop meter")->field());
    const auto at = rounds().time()->typed();
    ASSERT_TRUE(at);
    EXPECT_EQ(*at, now() - std::chrono::hours{10} - std::chrono::minutes{52});
    rounds().time()->field()->setText("25:99");
    rounds().time()->field()->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget(), rounds().time()->field());
    EXPECT_TRUE(rounds().message().contains("not a time")) << rounds().message().toStdString();
}

TEST_F(HesitationsTest, AnotherMeterLeavesTheRestOfTheRoundTyped)
{
    toRounds();
    type("15.1");
    press(Qt::Key_Return);
    type("0.12");
    press(Qt::Key_Return);
    press(Qt::Key_O);
    settle(*m_window);
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    EXPECT_TRUE(rounds().isAncestorOf(QApplication::focusWidget()));
    EXPECT_EQ(rounds().row("Loop meter")->field()->text(), "15.1");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(kwhOf(m_logbook, "Loop meter").back(), 15.1);
}

TEST_F(HesitationsTest, EnterOnCancelCancels)
{
    QDialog dialog;
    SaveRow& row = *new SaveRow(QStringLiteral("Keep"), &dialog);
    QSignalSpy stored(&row, &SaveRow::saveWanted);
    QSignalSpy cancelled(&row, &SaveRow::cancelWanted);
    dialog.show();
    row.cancelButton()->setFocus();
    QTest::keyClick(row.cancelButton(), Qt::Key_Return);
    EXPECT_EQ(stored.count(), 0);
    EXPECT_EQ(cancelled.count(), 1);
}

TEST_F(HesitationsTest, ANewRowShowsNoErrorBeforeAnythingIsTyped)
{
    const auto needed = [](const QStringList& cells) {
        return cells[0].isEmpty() ? QStringLiteral("it needs a name") : QString();
    };
    EditColumn name;
    name.title = QStringLiteral("Name");
    name.refusal = needed;
    EditTable table(QStringLiteral("part"), {name}, 0);
    table.addButton()->click();
    EXPECT_EQ(table.problem(), "");
    EXPECT_FALSE(table.check());
    EXPECT_TRUE(table.problem().contains("it needs a name"));
}

TEST_F(HesitationsTest, ANameOfALongLogIsChosenByKeyboardWithoutHarm)
{
    write("long.csv", "time,sensor,value\n2026-03-12T19:00:00Z,tank_b,18.8\n"
                      "2026-03-12T19:00:00Z,room,20.5\n2026-03-12T19:10:00Z,tank_b,18.7\n");
    m_window->importFile(path("long.csv"));
    settle(*m_window);
    settle(*m_window);
    NameChoices* names = m_window->pages()->imports()->view()->names();
    TargetBox* box = names->box("tank_b");
    ASSERT_NE(box, nullptr);
    box->setFocus();
    box->showPopup();
    box->view()->setCurrentIndex(
        box->model()->index(box->findText(QStringLiteral("Cabinet beer")), 0));
    QTest::keyClick(box->view(), Qt::Key_Return);
    settle(*m_window);
    settle(*m_window);
    EXPECT_EQ(names->box("tank_b")->of(), "Cabinet beer");
}

TEST_F(HesitationsTest, UnitsAreChosenInTheLogbookMenu)
{
    LogbookSettings settings;
    settings.units = UnitSystem::us;
    settings.zone = "America/Denver";
    auto* dialog = new UnitsDialog(m_window->session(), settings, m_window.get());
    dialog->open();
    dialog->units()->setCurrentIndex(1);
    dialog->currency()->setText("dollars");
    QTest::keyClick(dialog, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(dialog->foot()->words().contains("Three letters"));
    dialog->currency()->setText("eur");
    QTest::keyClick(dialog, Qt::Key_Return, Qt::ControlModifier);
    settle(*m_window);
    const auto file = store::LogbookFile::open(m_logbook.toStdString(), store::Access::read, now);
    ASSERT_TRUE(file);
    const auto stored = store::readSettings(**file);
    ASSERT_TRUE(stored);
    EXPECT_EQ(stored->units, UnitSystem::metric);
    EXPECT_EQ(stored->currency, "EUR");
    EXPECT_EQ(stored->tariff.pricePerKwh, 0.15) << "what the dialog does not show stays";
}

} // namespace holdband::ui::test
