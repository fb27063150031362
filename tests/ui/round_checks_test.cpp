// The check of a typed reading: the same in the round, in the grid of earlier rounds and in its
// corrections. A meter "Box" rated 750 W whose batch was pitched three weeks ago and is read by
// eye.
#include "tests/ui/sample_window.h"

#include "core/exchange/load.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/meter_readings.h"
#include "ui/rounds/correction_bar.h"
#include "ui/rounds/round_line.h"
#include "ui/rounds/rounds_grid.h"
#include "ui/rounds/rounds_page.h"
#include "ui/window/pages.h"
#include "ui/words/words.h"

#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

using State = RoundLine::State;

class RoundChecksTest : public WindowTest {
protected:
    void open(const std::string& units = "us")
    {
        write("box.json", R"json({
  "holdband": 1, "zone": "America/Denver", "units": ")json" +
                              units + R"json(",
  "setups": [ { "name": "Box", "rated_power_w": 750 } ],
  "sensors": [ { "name": "Dial", "reads": "beer", "setup": "Box", "read_by_hand": true } ],
  "meters": [ { "name": "Box meter", "setup": "Box", "resolution_kwh": 0.01 } ],
  "batches": [ { "name": "Old 1", "setup": "Box", "pitched": "2026-02-20 18:00",
                 "beer_sensor": "Dial", "tolerance_c": 1,
                 "schedule": [ { "stage": "Primary", "target_c": 18 } ] } ],
  "meter_readings": [ { "meter": "Box meter", "at": "2026-03-10 18:05", "kwh": 122.90 },
                      { "meter": "Box meter", "at": "2026-03-11 07:05", "kwh": 123.50 } ]
})json");
        m_logbook = path("box.holdband");
        const auto loaded =
            exchange::loadDescription(m_logbook.toStdString(), path("box.json").toStdString(), now);
        ASSERT_TRUE(loaded) << loaded.error().sentence();
        m_window = openWindow(m_logbook);
        m_window->activateWindow();
        m_window->setPage(PageId::rounds);
    }

    RoundsPage& page() { return *m_window->pages()->rounds(); }
    RoundLine& line(const char* name) { return *page().row(QString::fromLatin1(name)); }
    CorrectionBar& bar() { return *page().grid()->correction(); }
    void type(const char* text) { QTest::keyClicks(QApplication::focusWidget(), text); }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {})
    {
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
        settle(*m_window);
        settle(*m_window);
    }
    void typeInto(const char* row, const char* text)
    {
        line(row).field()->setFocus();
        type(text);
        press(Qt::Key_Return);
    }
    /// Opens the round `back` columns before the last one, in the row of that name.
    void openRound(const std::string& row, int back)
    {
        const RoundsGridModel& model = *page().grid()->model();
        int at = 0;
        while (model.sheet().rows[static_cast<std::size_t>(at)].name != row)
            ++at;
        page().grid()->table()->setFocus();
        page().grid()->table()->setCurrentIndex(model.index(at, model.columnCount() - 1 - back));
        press(Qt::Key_Return);
        ASSERT_TRUE(bar().isVisible());
    }
    std::vector<double> kwh() const { return kwhOf(m_logbook, "Box meter"); }
    std::optional<MeterEvent> lastEvent() const
    {
        const auto file =
            store::LogbookFile::open(m_logbook.toStdString(), store::Access::read, now);
        return store::readMeterReadings(**file, "Box meter")->back().inForce.event;
    }
    std::size_t handReadings() const
    {
        const auto file =
            store::LogbookFile::open(m_logbook.toStdString(), store::Access::read, now);
        return store::readHandReadings(**file, {store::HandOwner::Kind::sensor, "Dial"})->size();
    }

    QString m_logbook;
    std::unique_ptr<MainWindow> m_window;
};

constexpr int eveningBefore = 2; ///< columns before the last, which is 12 March in the evening

} // namespace

TEST_F(RoundChecksTest, ATemperatureIsComparedInTheUnitOfItsRow)
{
    open("metric");
    typeInto("Dial", "65 F");
    EXPECT_EQ(line("Dial").state(), State::fine) << core(line("Dial").message());
}

TEST_F(RoundChecksTest, CelsiusInARowOfFahrenheitAsksOnce)
{
    open("us");
    typeInto("Dial", "66 C");
    ASSERT_EQ(line("Dial").state(), State::unusual);
    EXPECT_TRUE(line("Dial").message().contains("66 C")) << core(line("Dial").message());
    line("Dial").field()->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(line("Dial").state(), State::fine);
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(handReadings(), 1u);
}

TEST_F(RoundChecksTest, TheGridComparesTemperaturesToo)
{
    open("metric");
    openRound("Dial", eveningBefore);
    type("66");
    press(Qt::Key_Return);
    EXPECT_TRUE(bar().message().contains("far from")) << core(bar().message());
    EXPECT_EQ(handReadings(), 0u);
    bar().value()->setFocus();
    bar().value()->selectAll();
    type("65 F");
    press(Qt::Key_Return);
    EXPECT_EQ(handReadings(), 1u) << core(bar().message());
}

TEST_F(RoundChecksTest, ALateRoundBeyondTheRatedPowerAsksOnce)
{
    open();
    openRound("Box meter", eveningBefore);
    type("142.05"); // 124.05 with its digits swapped: 18.55 kWh in 10 h 55 min
    press(Qt::Key_Return);
    EXPECT_TRUE(bar().isVisible());
    EXPECT_TRUE(bar().message().contains("1699 W")) << core(bar().message());
    EXPECT_TRUE(bar().message().contains("750 W")) << core(bar().message());
    EXPECT_EQ(kwh().size(), 2u);
    press(Qt::Key_Return);
    EXPECT_FALSE(bar().isVisible());
    EXPECT_THAT(kwh(), ::testing::ElementsAre(122.9, 123.5, 142.05));
}

TEST_F(RoundChecksTest, AnotherNumberIsAskedAboutAgain)
{
    open();
    openRound("Box meter", eveningBefore);
    type("142.05");
    press(Qt::Key_Return);
    ASSERT_FALSE(bar().message().isEmpty());
    bar().value()->setFocus();
    bar().value()->selectAll();
    type("143.05");
    press(Qt::Key_Return);
    EXPECT_EQ(kwh().size(), 2u);
    bar().value()->setFocus();
    bar().value()->selectAll();
    type("124.05");
    press(Qt::Key_Return);
    EXPECT_THAT(kwh(), ::testing::ElementsAre(122.9, 123.5, 124.05));
}

TEST_F(RoundChecksTest, ACorrectionBeyondTheRatedPowerAsksOnce)
{
    open();
    openRound("Box meter", eveningBefore + 1);
    ASSERT_EQ(bar().value()->text(), "123.5") << "as stored";
    type("153.20");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    EXPECT_TRUE(bar().message().contains("2331 W")) << core(bar().message());
    EXPECT_THAT(kwh(), ::testing::ElementsAre(122.9, 123.5));
    press(Qt::Key_Return);
    EXPECT_THAT(kwh(), ::testing::ElementsAre(122.9, 153.2));
}

TEST_F(RoundChecksTest, TheGridAsksWhatHappenedToARegisterThatFell)
{
    open();
    openRound("Box meter", eveningBefore);
    type("0.30");
    press(Qt::Key_Return);
    ASSERT_TRUE(bar().question()->isVisible()) << core(bar().message());
    EXPECT_EQ(kwh().size(), 2u);
    press(Qt::Key_M);
    EXPECT_FALSE(bar().question()->isVisible());
    EXPECT_EQ(QApplication::focusWidget(), bar().value());
    press(Qt::Key_Return);
    ASSERT_TRUE(bar().question()->isVisible());
    press(Qt::Key_R);
    EXPECT_FALSE(bar().isVisible()) << core(bar().message());
    EXPECT_THAT(kwh(), ::testing::ElementsAre(122.9, 123.5, 0.3));
    EXPECT_EQ(lastEvent(), MeterEvent::reset);
}

TEST_F(RoundChecksTest, AnotherMeterCanBeginInTheGrid)
{
    open();
    openRound("Box meter", eveningBefore);
    type("0.30");
    press(Qt::Key_Return);
    ASSERT_TRUE(bar().question()->isVisible());
    press(Qt::Key_O);
    EXPECT_THAT(kwhOf(m_logbook, "Box meter 2"), ::testing::ElementsAre(0.3));
    EXPECT_EQ(kwh().size(), 2u);
}

TEST_F(RoundChecksTest, AfterAResetTheRatedPowerStillApplies)
{
    open();
    typeInto("Box meter", "71.00"); // 35 h since the last reading: 2 kW
    ASSERT_EQ(line("Box meter").state(), State::question);
    press(Qt::Key_R);
    ASSERT_EQ(line("Box meter").state(), State::unusual);
    EXPECT_TRUE(line("Box meter").message().contains("W in the mean"))
        << core(line("Box meter").message());
    press(Qt::Key_Return);
    EXPECT_EQ(line("Box meter").state(), State::fine);
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_THAT(kwh(), ::testing::ElementsAre(122.9, 123.5, 71.0));
    EXPECT_EQ(lastEvent(), MeterEvent::reset);
}

TEST_F(RoundChecksTest, EarlierRoundsGoBackToThePitch)
{
    open();
    RoundsGrid& grid = *page().grid();
    ASSERT_TRUE(grid.earlier()->isEnabled()) << "the batch was pitched before the rounds shown";
    int sheets = 0;
    while (grid.earlier()->isEnabled() && sheets < 10) {
        grid.earlier()->click();
        settle(*m_window);
        ++sheets;
    }
    EXPECT_EQ(sheets, 2) << "20 February is 20 days back, and a sheet holds 7";
    openRound("Box meter", 0);
    type("90.00");
    press(Qt::Key_Return);
    EXPECT_THAT(kwh(), ::testing::ElementsAre(90.0, 122.9, 123.5)) << core(bar().message());
}

} // namespace holdband::ui::test
