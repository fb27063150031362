// The Rounds page, by keyboard alone.
#include "tests/ui/sample_window.h"

#include "core/store/readings/hand_readings.h"
#include "core/store/readings/meter_readings.h"
#include "ui/imports/imports_page.h"
#include "ui/rounds/correction_bar.h"
#include "ui/rounds/round_line.h"
#include "ui/rounds/round_time.h"
#include "ui/rounds/rounds_grid.h"
#include "ui/rounds/rounds_page.h"
#include "ui/session/session.h"
#include "ui/window/pages.h"
#include "ui/words/words.h"

#include <QApplication>
#include <QClipboard>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

class RoundsTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        m_logbook = makeLogbook();
        m_window = openWindow(m_logbook);
        m_window->activateWindow();
        m_window->setPage(PageId::rounds);
    }

    RoundsPage& page() { return *m_window->pages()->rounds(); }
    RoundLine& loop() { return *page().row("Loop meter"); }
    RoundLine& cabinet() { return *page().row("Cabinet meter"); }
    void type(const char* text) { QTest::keyClicks(QApplication::focusWidget(), text); }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {})
    {
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
        settle(*m_window);
    }

    QString m_logbook;
    std::unique_ptr<MainWindow> m_window;
};

using State = RoundLine::State;

} // namespace

TEST_F(RoundsTest, TypingEnterTypingCtrlEnterSavesTheRound)
{
    ASSERT_EQ(QApplication::focusWidget(), loop().field());
    type("15.10");
    press(Qt::Key_Return);
    EXPECT_EQ(loop().state(), State::fine);
    ASSERT_EQ(QApplication::focusWidget(), cabinet().field());
    type("41.20");
    press(Qt::Key_Return, Qt::ControlModifier);
    settle(*m_window);
    EXPECT_EQ(page().message(), "Saved 2 readings.");
    EXPECT_THAT(kwhOf(m_logbook, "Loop meter"), ::testing::ElementsAre(12.4, 13.6, 14.8, 15.1));
    EXPECT_THAT(kwhOf(m_logbook, "Cabinet meter"), ::testing::ElementsAre(40.1, 40.6, 40.9, 41.2));
    EXPECT_TRUE(loop().field()->text().isEmpty());
}

TEST_F(RoundsTest, CtrlEnterTwiceSavesTheRoundOnceAndLeavesWhatIsTypedMeanwhile)
{
    type("15.10");
    press(Qt::Key_Return);
    ASSERT_EQ(loop().state(), State::fine);
    QSignalSpy changes(&m_window->session(), &Session::changed);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(loop().state(), State::waiting); // it is checked again, and then saved
    ASSERT_TRUE(QTest::qWaitFor([&] { return loop().state() != State::waiting; }));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    QTest::keyClicks(cabinet().field(), "41.2");
    settle(*m_window);
    settle(*m_window);
    EXPECT_EQ(changes.count(), 1);
    EXPECT_THAT(kwhOf(m_logbook, "Loop meter"), ::testing::ElementsAre(12.4, 13.6, 14.8, 15.1));
    EXPECT_TRUE(loop().field()->text().isEmpty());
    EXPECT_EQ(cabinet().field()->text(), "41.2");
    EXPECT_EQ(kwhOf(m_logbook, "Cabinet meter").size(), 3u);
}

TEST_F(RoundsTest, AnEditDuringTheCheckIsNotSavedUnasked)
{
    type("15.1");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(loop().state(), State::waiting);
    QTest::keyClicks(loop().field(), "5");
    settle(*m_window);
    EXPECT_EQ(loop().state(), State::unchecked);
    loop().field()->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(loop().state(), State::fine);
    settle(*m_window);
    EXPECT_EQ(kwhOf(m_logbook, "Loop meter").size(), 3u);
    EXPECT_EQ(loop().field()->text(), "15.15");
}

TEST_F(RoundsTest, LettersAreRefusedBesideTheFieldAndStay)
{
    type("15.1o");
    press(Qt::Key_Return);
    EXPECT_EQ(loop().state(), State::refused);
    EXPECT_FALSE(loop().message().isEmpty());
    EXPECT_EQ(loop().field()->text(), "15.1o");
    EXPECT_EQ(QApplication::focusWidget(), loop().field());
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(kwhOf(m_logbook, "Loop meter").size(), 3u);
    EXPECT_EQ(loop().field()->text(), "15.1o");
}

TEST_F(RoundsTest, ANegativeReadingIsRefused)
{
    type("-1");
    press(Qt::Key_Return);
    EXPECT_EQ(loop().state(), State::refused);
    EXPECT_TRUE(loop().message().contains("below 0"));
}

TEST_F(RoundsTest, BelowTheLastAsksAndMistypedReturnsToTheField)
{
    type("1.48");
    press(Qt::Key_Return);
    ASSERT_EQ(loop().state(), State::question);
    EXPECT_TRUE(loop().question()->question().contains("1.48 is below the 14.8"));
    press(Qt::Key_M);
    EXPECT_EQ(QApplication::focusWidget(), loop().field());
    EXPECT_EQ(loop().field()->selectedText(), "1.48");
    EXPECT_FALSE(loop().question()->isVisible());
}

TEST_F(RoundsTest, AResetIsSavedAsOne)
{
    type("0.12");
    press(Qt::Key_Return);
    ASSERT_EQ(loop().state(), State::question);
    press(Qt::Key_R);
    settle(*m_window);
    ASSERT_EQ(loop().state(), State::fine);
    press(Qt::Key_Return, Qt::ControlModifier);
    settle(*m_window);
    EXPECT_THAT(kwhOf(m_logbook, "Loop meter"), ::testing::ElementsAre(12.4, 13.6, 14.8, 0.12));
}

TEST_F(RoundsTest, ARolloverIsNotOfferedWithoutAKnownTop)
{
    type("0.12");
    press(Qt::Key_Return);
    press(Qt::Key_T);
    settle(*m_window);
    EXPECT_EQ(loop().state(), State::question);
    EXPECT_EQ(loop().field()->text(), "0.12");
    press(Qt::Key_Escape);
    EXPECT_EQ(QApplication::focusWidget(), loop().field());
}

TEST_F(RoundsTest, AnotherMeterReplacesItAndTheRestOfTheRoundStays)
{
    cabinet().field()->setText("41.2");
    type("0.12");
    press(Qt::Key_Return);
    press(Qt::Key_O);
    settle(*m_window);
    EXPECT_THAT(kwhOf(m_logbook, "Loop meter 2"), ::testing::ElementsAre(0.12));
    EXPECT_EQ(kwhOf(m_logbook, "Loop meter").size(), 3u);
    EXPECT_EQ(page().row("Loop meter"), nullptr);
    ASSERT_NE(page().row("Loop meter 2"), nullptr);
    EXPECT_EQ(cabinet().field()->text(), "41.2");
}

TEST_F(RoundsTest, ACorrectionInTheGridPreservesTheOldValue)
{
    QTableView* table = page().grid()->table();
    const RoundsGridModel& model = *page().grid()->model();
    int column = model.columnCount() - 1;
    while (column > 0 && model.index(0, column).data().toString() != "14.80")
        --column;
    ASSERT_GT(column, 0);
    table->setFocus();
    table->setCurrentIndex(model.index(0, column));
    press(Qt::Key_Return);
    CorrectionBar& bar = *page().grid()->correction();
    ASSERT_TRUE(bar.isVisible());
    EXPECT_EQ(QApplication::focusWidget(), bar.value());
    type("1o");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    EXPECT_FALSE(bar.message().isEmpty());
    EXPECT_EQ(bar.value()->text(), "1o");
    bar.value()->selectAll();
    type("14.70");
    press(Qt::Key_Return);
    type("digits swapped");
    press(Qt::Key_Return);
    settle(*m_window);
    EXPECT_FALSE(bar.isVisible());
    EXPECT_THAT(kwhOf(m_logbook, "Loop meter"), ::testing::ElementsAre(12.4, 13.6, 14.7));
    EXPECT_EQ(model.index(0, column).data().toString(), "14.70");
    const QString was = model.index(0, column).data(Qt::ToolTipRole).toString();
    EXPECT_TRUE(was.startsWith("was 14.8,")) << was.toStdString();
    EXPECT_TRUE(was.endsWith("digits swapped")) << was.toStdString();
}

TEST_F(RoundsTest, ANoteIsCorrectedInTheGrid)
{
    type("15.10");
    loop().note()->setFocus();
    type("fan of");
    press(Qt::Key_Return, Qt::ControlModifier);
    settle(*m_window);
    const RoundsGridModel& model = *page().grid()->model();
    page().grid()->table()->setFocus();
    page().grid()->table()->setCurrentIndex(model.index(0, model.columnCount() - 1));
    press(Qt::Key_Return);
    CorrectionBar& bar = *page().grid()->correction();
    EXPECT_EQ(bar.note()->text(), "fan of");
    bar.note()->setText("fan off");
    bar.note()->setFocus();
    press(Qt::Key_Return);
    settle(*m_window);
    EXPECT_FALSE(bar.isVisible());
    EXPECT_EQ(page().grid()->model()->sheet().cells[0].back().note, "fan off");
    EXPECT_THAT(kwhOf(m_logbook, "Loop meter"), ::testing::ElementsAre(12.4, 13.6, 14.8, 15.1));
    press(Qt::Key_Z, Qt::ControlModifier);
    settle(*m_window);
    EXPECT_EQ(page().grid()->model()->sheet().cells[0].back().note, "fan of");
}

TEST_F(RoundsTest, EarlierRoundsAreShownAndCorrected)
{
    RoundsGrid& grid = *page().grid();
    EXPECT_FALSE(grid.earlier()->isEnabled()) << "there are no rounds before the most recent ones";
    page().time()->button()->click();
    page().time()->field()->selectAll();
    type("2026-03-04 07:10");
    press(Qt::Key_Return);
    cabinet().field()->setFocus();
    type("39.10");
    press(Qt::Key_Return, Qt::ControlModifier);
    settle(*m_window);
    ASSERT_TRUE(grid.earlier()->isEnabled()) << page().message().toStdString();
    EXPECT_FALSE(grid.later()->isEnabled());
    grid.earlier()->setFocus();
    press(Qt::Key_Space);
    settle(*m_window);
    EXPECT_TRUE(grid.later()->isEnabled());
    const RoundsGridModel& model = *grid.model();
    int column = model.columnCount() - 1;
    while (column >= 0 && model.index(1, column).data().toString() != "39.10")
        --column;
    ASSERT_GE(column, 0);
    grid.table()->setFocus();
    grid.table()->setCurrentIndex(model.index(1, column));
    press(Qt::Key_Return);
    type("39.20");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    settle(*m_window);
    EXPECT_THAT(kwhOf(m_logbook, "Cabinet meter"), ::testing::ElementsAre(39.2, 40.1, 40.6, 40.9));
    grid.later()->setFocus();
    press(Qt::Key_Space);
    settle(*m_window);
    EXPECT_FALSE(grid.later()->isEnabled());
}

TEST_F(RoundsTest, ADeletedReadingLeavesAnOpenCircle)
{
    QTableView* table = page().grid()->table();
    const RoundsGridModel& model = *page().grid()->model();
    int column = model.columnCount() - 1;
    while (column > 0 && model.index(0, column).data().toString() != "13.60")
        --column;
    ASSERT_GT(column, 0);
    table->setFocus();
    table->setCurrentIndex(model.index(0, column));
    press(Qt::Key_Return);
    for (int i = 0; i < 4; ++i)
        press(Qt::Key_Tab); // why, note, save, delete
    press(Qt::Key_Space);
    settle(*m_window);
    EXPECT_THAT(kwhOf(m_logbook, "Loop meter"), ::testing::ElementsAre(12.4, 14.8));
}

TEST_F(RoundsTest, APastedTableOfReadingsIsShownBeforeItIsSaved)
{
    QGuiApplication::clipboard()->setText("Time\tLoop meter (kWh)\n"
                                          "2026-03-10 07:00\t15.10\n2026-03-10 18:00\t15.40\n");
    press(Qt::Key_V, Qt::ControlModifier);
    settle(*m_window);
    EXPECT_EQ(m_window->pages()->page(), PageId::imports);
    EXPECT_TRUE(loop().field()->text().isEmpty());
    EXPECT_EQ(kwhOf(m_logbook, "Loop meter").size(), 3u) << "nothing is saved yet";
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_window->pages()->imports()->isAtWork(); }));
    m_window->pages()->imports()->save();
    settle(*m_window);
    ASSERT_TRUE(QTest::qWaitFor([&] { return kwhOf(m_logbook, "Loop meter").size() == 5; }));
}

TEST_F(RoundsTest, FarMoreThanExpectedAsksOnce)
{
    type("148.0");
    press(Qt::Key_Return);
    ASSERT_EQ(loop().state(), State::unusual);
    EXPECT_TRUE(loop().message().contains("far more"));
    press(Qt::Key_Return);
    EXPECT_EQ(loop().state(), State::fine);
}

TEST_F(RoundsTest, ATimeInTheFutureIsRefused)
{
    page().time()->button()->click();
    page().time()->field()->setText("2026-03-13 09:00");
    loop().field()->setFocus();
    type("15.1");
    press(Qt::Key_Return);
    EXPECT_EQ(loop().state(), State::refused);
    EXPECT_TRUE(loop().message().contains("future"));
    EXPECT_EQ(loop().field()->text(), "15.1");
}

TEST_F(RoundsTest, ATypedTimeHasTheLogbooksDoubtAndNowHasNone)
{
    type("15.10");
    press(Qt::Key_Return, Qt::ControlModifier);
    settle(*m_window);
    page().time()->button()->click(); // its field is filled in with the present time
    cabinet().field()->setFocus();
    type("41.0");
    press(Qt::Key_Return, Qt::ControlModifier);
    settle(*m_window);
    const auto lastOf = [&](const char* meter) {
        const auto file = store::LogbookFile::open(core(m_logbook), store::Access::read);
        const auto readings = store::readMeterReadings(**file, meter);
        return readings->back().inForce;
    };
    EXPECT_EQ(lastOf("Loop meter").timeDoubt, Milliseconds{0});
    EXPECT_EQ(lastOf("Cabinet meter").registerReading.kilowattHours(), 41.0);
    EXPECT_EQ(lastOf("Cabinet meter").timeDoubt, std::nullopt);
}

TEST_F(RoundsTest, AnInvalidTimeIsReportedAndNothingIsLost)
{
    page().time()->button()->click();
    page().time()->field()->setText("half past six");
    loop().field()->setFocus();
    type("15.1");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(page().message().isEmpty());
    EXPECT_EQ(loop().field()->text(), "15.1");
    EXPECT_EQ(kwhOf(m_logbook, "Loop meter").size(), 3u);
}

TEST_F(RoundsTest, NothingTypedSavesNothing)
{
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(page().message(), "Nothing was typed.");
}

TEST_F(RoundsTest, AGravityIsSavedWithTheTemperatureOfItsSample)
{
    RoundLine& gravity = *page().row("Pale 2");
    ASSERT_TRUE(gravity.sample());
    EXPECT_EQ(gravity.sample()->placeholderText(), "sample at °F");
    EXPECT_EQ(loop().sample(), nullptr);
    gravity.field()->setFocus();
    type("1.050");
    press(Qt::Key_Tab);
    ASSERT_EQ(QApplication::focusWidget(), gravity.sample());
    type("82");
    // Water at 82 °F (27.8 °C) has 0.99631 kg/L, at 20 °C 0.99821 (the CRC Handbook's table): 1.050
    // × 0.99821 / 0.99631 = 1.0520.
    EXPECT_TRUE(gravity.message().contains("the gravity is 1.052")) << core(gravity.message());
    press(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), gravity.note());
    press(Qt::Key_Return, Qt::ControlModifier);
    settle(*m_window);
    EXPECT_EQ(page().message(), "Saved 1 reading.");
    const auto file = store::LogbookFile::open(m_logbook.toStdString(), store::Access::read, now);
    const auto stored = store::readHandReadings(**file, {store::HandOwner::Kind::batch, "Pale 2"});
    ASSERT_EQ(stored->size(), 1u);
    EXPECT_DOUBLE_EQ(stored->front().inForce.value, 1.05);
    ASSERT_TRUE(stored->front().inForce.sample);
    EXPECT_NEAR(stored->front().inForce.sample->fahrenheit(), 82.0, 1e-9);
    EXPECT_TRUE(gravity.sample()->text().isEmpty());
}

TEST_F(RoundsTest, AnImpossibleSampleIsRefusedInItsOwnField)
{
    RoundLine& gravity = *page().row("Pale 2");
    gravity.field()->setFocus();
    type("1.050");
    press(Qt::Key_Tab);
    type("820");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(gravity.state(), State::refused);
    EXPECT_EQ(QApplication::focusWidget(), gravity.sample());
    EXPECT_EQ(gravity.sample()->text(), "820");
    EXPECT_TRUE(gravity.message().contains("820 °F")) << core(gravity.message());
    press(Qt::Key_Backspace);
    press(Qt::Key_Return, Qt::ControlModifier);
    settle(*m_window);
    EXPECT_EQ(page().message(), "Saved 1 reading.");
}

TEST_F(RoundsTest, ASampleWithoutItsGravityIsAskedFor)
{
    RoundLine& gravity = *page().row("Pale 2");
    gravity.sample()->setFocus();
    type("68");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(gravity.state(), State::refused);
    EXPECT_EQ(QApplication::focusWidget(), gravity.field());
    EXPECT_EQ(gravity.sample()->text(), "68");
}

TEST_F(RoundsTest, TheTitleNamesTheRound)
{
    EXPECT_EQ(page().subtitle(), "Evening round, due now · Thursday 12 March, 18:12");
}

} // namespace holdband::ui::test
