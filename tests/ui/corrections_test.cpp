// Undo and redo from the menu, the history, the readings of a sensor and the journal, by keyboard.
#include "tests/ui/sample_window.h"

#include "core/editing/rounds.h"
#include "core/exchange/load.h"
#include "core/store/history/undo.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/records/journal.h"
#include "ui/record/history_dialog.h"
#include "ui/record/history_text.h"
#include "ui/record/note_dialog.h"
#include "ui/record/readings_dialog.h"
#include "ui/record/undo_actions.h"
#include "ui/rounds/round_line.h"
#include "ui/rounds/rounds_page.h"
#include "ui/run/run_page.h"
#include "ui/session/session.h"
#include "ui/tables/table_model.h"
#include "ui/window/pages.h"
#include "ui/words/words.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

class CorrectionsTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        m_logbook = makeLogbook();
        m_window = openWindow(m_logbook);
        m_window->activateWindow();
    }

    void typeARound()
    {
        m_window->setPage(PageId::rounds);
        RoundLine& loop = *m_window->pages()->rounds()->row("Loop meter");
        loop.field()->setFocus();
        QTest::keyClicks(loop.field(), "15.10");
        QTest::keyClick(loop.field(), Qt::Key_Return, Qt::ControlModifier);
        settle(*m_window);
        settle(*m_window);
    }

    QString m_logbook;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace

TEST_F(CorrectionsTest, UndoAndRedoNameWhatTheyDoAndDoIt)
{
    UndoActions& actions = *m_window->undoActions();
    typeARound();
    ASSERT_TRUE(actions.undo()->isEnabled());
    EXPECT_EQ(actions.undo()->text(), "&Undo: saved a round of 1 reading");
    EXPECT_FALSE(actions.redo()->isEnabled());
    actions.undo()->trigger();
    settle(*m_window);
    EXPECT_EQ(kwhOf(m_logbook, "Loop meter").size(), 3u);
    EXPECT_EQ(actions.redo()->text(), "&Redo: saved a round of 1 reading");
    actions.redo()->trigger();
    settle(*m_window);
    EXPECT_EQ(kwhOf(m_logbook, "Loop meter").size(), 4u);
}

TEST_F(CorrectionsTest, TheHistoryShowsWhatWasChangedAndHow)
{
    typeARound();
    HistoryDialog dialog(m_window->session());
    QAbstractItemModelTester entries(dialog.entryModel(),
                                     QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester rows(dialog.rows(),
                                  QAbstractItemModelTester::FailureReportingMode::Fatal);
    settle(*m_window);
    settle(*m_window);
    ASSERT_GE(dialog.entryModel()->rowCount(), 2);
    EXPECT_EQ(dialog.entryModel()->index(0, 1).data().toString(), "saved a round of 1 reading");
    QStringList values;
    for (int row = 0; row < dialog.rows()->rowCount(); ++row)
        values << dialog.rows()->index(row, 0).data().toString() + " " +
                      dialog.rows()->index(row, 1).data().toString() + " " +
                      dialog.rows()->index(row, 3).data().toString();
    EXPECT_TRUE(values.contains("register reading kwh 15.1")) << values.join(", ").toStdString();
}

TEST_F(CorrectionsTest, AStretchIsLeftOutWithItsReasonAndRestored)
{
    ReadingsDialog dialog(m_window->session());
    QAbstractItemModelTester tester(dialog.readings(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    dialog.show();
    settle(*m_window);
    TableModel& readings = *dialog.readings();
    ASSERT_GT(readings.rowCount(), 2);
    dialog.table()->selectRow(1);
    dialog.leaveOutButton()->click();
    EXPECT_TRUE(dialog.message().startsWith("Say why")) << dialog.message().toStdString();
    dialog.why()->setText("probe lifted");
    dialog.leaveOutButton()->click();
    settle(*m_window);
    EXPECT_EQ(readings.index(1, 5).data().toString(), "left out: probe lifted");
    EXPECT_EQ(readings.index(1, 2).data().toString(), dash);
    EXPECT_EQ(readings.index(0, 5).data().toString(), "");
    dialog.table()->selectRow(1);
    dialog.restoreButton()->click();
    settle(*m_window);
    EXPECT_EQ(readings.index(1, 5).data().toString(), "");
}

TEST_F(CorrectionsTest, TheReadingsBeginWithTheShownBatchsBeer)
{
    m_window->openRun(QStringLiteral("Pale 2"));
    settle(*m_window);
    QTest::keyClick(m_window.get(), Qt::Key_R, Qt::ControlModifier);
    settle(*m_window);
    auto* dialog = m_window->findChild<ReadingsDialog*>();
    ASSERT_TRUE(dialog);
    EXPECT_EQ(dialog->subject()->currentText(), "Cabinet beer");
}

TEST_F(CorrectionsTest, OneReadingIsCorrectedAndTheLoggedOneIsUnchanged)
{
    ReadingsDialog dialog(m_window->session());
    dialog.show();
    settle(*m_window);
    TableModel& readings = *dialog.readings();
    ASSERT_GT(readings.rowCount(), 0);
    const QString logged = readings.index(0, 1).data().toString();
    dialog.table()->selectRow(0);
    dialog.value()->setText("6o");
    dialog.correctButton()->click();
    EXPECT_FALSE(dialog.message().isEmpty());
    EXPECT_EQ(dialog.value()->text(), "6o");
    dialog.value()->setText("61.5");
    dialog.why()->setText("battery low");
    dialog.correctButton()->click();
    settle(*m_window);
    EXPECT_EQ(readings.index(0, 1).data().toString(), logged);
    EXPECT_EQ(readings.index(0, 2).data().toString(), "61.5");
    EXPECT_EQ(readings.index(0, 5).data().toString(), "corrected: battery low");
}

TEST_F(CorrectionsTest, ANoteIsSavedWithItsTimeAndBatch)
{
    NoteDialog dialog(m_window->session(), m_window->pages()->run()->batch());
    dialog.show();
    settle(*m_window);
    dialog.save();
    EXPECT_TRUE(dialog.message().startsWith("Type a reason")) << dialog.message().toStdString();
    EXPECT_TRUE(dialog.text()->hasFocus());
    QTest::keyClicks(dialog.text(), "lid opened");
    dialog.time()->setText("2026-03-09 18:30");
    dialog.save();
    settle(*m_window);
    EXPECT_FALSE(dialog.isVisible());
    auto file = store::LogbookFile::open(m_logbook.toStdString(), store::Access::read);
    ASSERT_TRUE(file);
    const auto notes = *store::readJournal(**file);
    ASSERT_FALSE(notes.empty());
    EXPECT_EQ(notes.back().text, "lid opened");
    EXPECT_EQ(notes.back().batch, m_window->pages()->run()->batch().toStdString());
}

TEST(HistoryValues, LeaveOutRowIdsAndShowInstantsAsTimes)
{
    store::ChangedRow row;
    row.table = "batches";
    row.values = {{"id", "1", "1"},
                  {"name", "Ale", "Ale 2"},
                  {"ended", "", "1772900000000"},
                  {"act", "3", "4"}};
    const TableText words = rowText({row}, UnitFormat{});
    ASSERT_EQ(words.rows.size(), 2u);
    EXPECT_EQ(words.rows[0][0].text, "batch");
    EXPECT_EQ(words.rows[0][3].text, "Ale 2");
    EXPECT_EQ(words.rows[1][1].text, "ended");
    EXPECT_EQ(words.rows[1][3].text, "7 Mar 2026 16:13");
}

TEST(HistoryValues, AreInTheUnitsOfTheLogbook)
{
    store::ChangedRow row;
    row.table = "stages";
    row.values = {{"target_c", "18", "20"},
                  {"tolerance_k", "1", "1.6666666666666667"},
                  {"volume_l", "", "18.92705892"},
                  {"rated_power_w", "", "750"},
                  {"gap_limit_ms", "1800000", "5400000"}};
    UnitFormat us;
    us.units = UnitSystem::us;
    const TableText words = rowText({row}, us);
    ASSERT_EQ(words.rows.size(), 5u);
    EXPECT_EQ(words.rows[0][1].text, "target");
    EXPECT_EQ(words.rows[0][2].text, "64.4 °F"); // 18 × 1.8 + 32
    EXPECT_EQ(words.rows[0][3].text, "68.0 °F");
    EXPECT_EQ(words.rows[1][2].text, "1.8 °F");
    EXPECT_EQ(words.rows[1][3].text, "3 °F");
    EXPECT_EQ(words.rows[2][3].text, "5 gal"); // 5 × 3.785411784 L
    EXPECT_EQ(words.rows[3][3].text, "750 W");
    EXPECT_EQ(words.rows[4][2].text, "30 min");
    EXPECT_EQ(words.rows[4][3].text, "1 h 30 min");
    EXPECT_EQ(rowText({row}, UnitFormat{}).rows[0][2].text, "18.0 °C");
}

TEST(HistoryValues, ShowATemperatureAsItWasTypedInTheUnitOfTheLogbook)
{
    store::ChangedRow row;
    row.table = "value_corrections";
    row.values = {{"value", "", "18.3"}, {"unit", "", "C"}, {"why", "", "battery low"}};
    UnitFormat us;
    us.units = UnitSystem::us;
    const TableText fahrenheit = rowText({row}, us);
    ASSERT_EQ(fahrenheit.rows.size(), 2u) << "the unit is beside the value";
    EXPECT_EQ(fahrenheit.rows[0][1].text, "value");
    EXPECT_EQ(fahrenheit.rows[0][2].text, "");
    EXPECT_EQ(fahrenheit.rows[0][3].text, "64.9 °F"); // 18.3 × 1.8 + 32 = 64.94
    EXPECT_EQ(rowText({row}, UnitFormat{}).rows[0][3].text, "18.3 °C");
    row.values[1].after = "SG";
    const TableText gravity = rowText({row}, us);
    ASSERT_EQ(gravity.rows.size(), 3u);
    EXPECT_EQ(gravity.rows[0][3].text, "18.3");
    EXPECT_EQ(gravity.rows[1][3].text, "SG");
}

TEST(HistoryValues, ShowAForecastAsTimeLengthAndTemperature)
{
    store::ChangedRow row;
    row.table = "batches";
    row.values = {{"forecast_at", "", "1772900000000"},
                  {"forecast_crash_h", "", "12.5"},
                  {"forecast_room_c", "", "20"}};
    UnitFormat us;
    us.units = UnitSystem::us;
    const TableText words = rowText({row}, us);
    ASSERT_EQ(words.rows.size(), 3u);
    EXPECT_EQ(words.rows[0][3].text, "7 Mar 2026 16:13");
    EXPECT_EQ(words.rows[1][1].text, "forecast crash");
    EXPECT_EQ(words.rows[1][3].text, "12 h 30 min");
    EXPECT_EQ(words.rows[2][3].text, "68.0 °F");
}

TEST_F(CorrectionsTest, TheHistoryOfACorrectionIsInTheUnitOfTheLogbook)
{
    write("dial.json", R"({"holdband":1,"zone":"UTC","units":"us","setups":[{"name":"S"}],
        "sensors":[{"name":"Dial","reads":"ambient","read_by_hand":true}],
        "hand_readings":[{"sensor":"Dial","at":"2026-03-12 07:00","value":18,"unit":"C",
                          "decimals":0}]})");
    const std::string file = path("dial.holdband").toStdString();
    ASSERT_TRUE(exchange::loadDescription(file, path("dial.json").toStdString(), now));
    Session session([] { return now(); });
    ASSERT_TRUE(session.open(path("dial.holdband")));
    const auto stored = [&] {
        const auto logbook = store::LogbookFile::open(file, store::Access::read, now);
        return store::readHandReadings(**logbook, {store::HandOwner::Kind::sensor, "Dial"})->at(0);
    };
    bool saved = false;
    session.change<bool>(
        &session,
        [id = stored().id](const store::LogbookFile& logbook) -> Result<bool> {
            HOLDBAND_TRY(intake::correctHand(logbook, {store::HandOwner::Kind::sensor, "Dial"}, id,
                                             66.2, 1, ReadingUnit::fahrenheit, "misread"));
            return true;
        },
        [&](const Result<bool>& done) { saved = done.has_value(); });
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.idle(); }));
    ASSERT_TRUE(saved);
    HistoryDialog dialog(session);
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog.rows()->rowCount() > 0; }));
    QStringList values;
    for (int row = 0; row < dialog.rows()->rowCount(); ++row)
        values << dialog.rows()->index(row, 1).data().toString() + " " +
                      dialog.rows()->index(row, 3).data().toString();
    EXPECT_TRUE(values.contains("value 66.2 °F")) << values.join(", ").toStdString(); // 19 °C
    EXPECT_FALSE(values.join(", ").contains("°C"));
}

} // namespace holdband::ui::test
