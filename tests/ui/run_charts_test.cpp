// The panels of a run together: the shown part, the pointer, and that new data does not move them.
#include "ui/charts/run_charts.h"

#include "tests/ui/sample_window.h"
#include "ui/charts/chart_tables.h"
#include "ui/charts/energy_panel.h"
#include "ui/charts/overview_strip.h"
#include "ui/charts/temperature_panel.h"
#include "ui/charts/ticks.h"
#include "ui/record/note_dialog.h"
#include "ui/run/run_page.h"
#include "ui/window/pages.h"

#include "core/text/times.h"

#include <QApplication>
#include <QImage>
#include <QLineEdit>
#include <QMouseEvent>
#include <QTest>
#include <cmath>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

class RunChartsTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        m_window = openWindow(makeLogbook());
        m_window->openRun(QStringLiteral("Pale 1"));
        settle(*m_window);
    }

    RunCharts& charts() { return *m_window->pages()->run()->charts(); }
    TimeView& time() { return charts().time(); }
    void showHours(double from, double to)
    {
        const Instant start = time().window().all().start;
        time().show({start + toMilliseconds(Hours{from}), start + toMilliseconds(Hours{to})}, 0.0);
    }

    std::unique_ptr<MainWindow> m_window;
};

} // namespace

TEST_F(RunChartsTest, TheStripFramesTheShownTime)
{
    OverviewStrip* strip = charts().overview();
    const QRectF all = strip->frame();
    const double hours = time().window().all().hours();
    showHours(hours / 4.0, hours / 2.0);
    const QRectF part = strip->frame();
    EXPECT_NEAR(part.width(), all.width() / 4.0, 1.0);
    EXPECT_NEAR(part.left() - all.left(), all.width() / 4.0, 1.0);
}

TEST_F(RunChartsTest, ADragOfTheFrameMovesThePanels)
{
    OverviewStrip* strip = charts().overview();
    showHours(0.0, 12.0);
    const QPoint from = strip->frame().center().toPoint();
    QTest::mousePress(strip, Qt::LeftButton, {}, from);
    QMouseEvent drag(QEvent::MouseMove, from + QPoint(60, 0),
                     strip->mapToGlobal(from + QPoint(60, 0)), Qt::NoButton, Qt::LeftButton, {});
    QApplication::sendEvent(strip, &drag);
    EXPECT_NEAR(strip->frame().center().x(), from.x() + 60.0, 1.5);
    EXPECT_NEAR(time().shown().hours(), 12.0, 0.01);
    QTest::mouseDClick(strip, Qt::LeftButton, {}, from);
    EXPECT_TRUE(time().window().showsAll());
}

TEST_F(RunChartsTest, MoreReadingsDoNotMoveTheView)
{
    showHours(5.0, 9.0);
    const Span seen = time().shown();
    time().setPointer(seen.start + (seen.end - seen.start) / 2);
    const auto pointer = time().pointer();
    m_window->pages()->run()->showBatch(QStringLiteral("Pale 1"));
    settle(*m_window);
    EXPECT_EQ(time().shown(), seen);
    EXPECT_EQ(time().pointer(), pointer);
    m_window->openRun(QStringLiteral("Pale 2"));
    settle(*m_window);
    EXPECT_TRUE(time().window().showsAll()) << "another batch is shown in full";
}

TEST_F(RunChartsTest, CtrlAndArrowsGoFromReadingToReading)
{
    TemperaturePanel* panel = charts().temperature();
    panel->setFocus();
    const Instant start = time().window().all().start;
    time().setPointer(start + std::chrono::minutes{40}); // read every half hour, on the hour
    QTest::keyClick(panel, Qt::Key_Right, Qt::ControlModifier);
    EXPECT_EQ(time().pointer(), start + std::chrono::minutes{60});
    QTest::keyClick(panel, Qt::Key_Left, Qt::ControlModifier);
    QTest::keyClick(panel, Qt::Key_Left, Qt::ControlModifier);
    EXPECT_EQ(time().pointer(), start);
}

TEST_F(RunChartsTest, NearAReadingThePointerSnapsToIt)
{
    const Instant start = time().window().all().start;
    time().pointAt(start + std::chrono::minutes{58}, std::chrono::minutes{3});
    EXPECT_EQ(time().pointer(), start + std::chrono::minutes{60});
    time().pointAt(start + std::chrono::minutes{45}, std::chrono::minutes{3});
    EXPECT_EQ(time().pointer(), start + std::chrono::minutes{45});
}

TEST_F(RunChartsTest, TheEnergyScaleFollowsTheZoom)
{
    const ValueRange whole = charts().energy()->map().range;
    showHours(0.0, 6.0);
    const ValueRange part = charts().energy()->map().range;
    EXPECT_LT(part.high, 0.6 * whole.high);
    EXPECT_GE(part.low, 0.0);
}

TEST_F(RunChartsTest, ANoteHasTheTimeUnderThePointer)
{
    time().setPointer(time().window().all().start + std::chrono::minutes{90});
    m_window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
    QTest::keyClick(m_window.get(), Qt::Key_J, Qt::ControlModifier);
    settle(*m_window);
    const auto* dialog = m_window->findChild<NoteDialog*>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->time()->text(), "2026-03-07 19:30");
}

/// The number of pixels of about that colour in a grab of the widget.
int pixelsOf(QWidget& widget, const QColor& colour)
{
    const QImage image = widget.grab().toImage();
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QColor at = image.pixelColor(x, y);
            count += std::abs(at.red() - colour.red()) + std::abs(at.green() - colour.green()) +
                         std::abs(at.blue() - colour.blue()) <
                     24;
        }
    }
    return count;
}

TEST_F(RunChartsTest, ThePictureHasBeerBandAndRing)
{
    TemperaturePanel* panel = charts().temperature();
    const Colours& colours = coloursOf(*panel);
    const QColor band = mixed(QColor(0x00, 0x9E, 0x73), colours.card, 34.0 / 255.0);
    EXPECT_GT(pixelsOf(*panel, setupLine(0, colours)), 400);
    EXPECT_GT(pixelsOf(*panel, band), 2'000);
    EXPECT_GT(pixelsOf(*panel, colours.excursion), 40) << "the ring about the peak";
    charts().setChart(nullptr);
    EXPECT_EQ(pixelsOf(*panel, setupLine(0, colours)), 0);
}

TEST_F(RunChartsTest, TheTablesGiveWhatThePanelsShow)
{
    const RunChart& chart = *charts().chart();
    const TableText temperature = temperatureTable(chart, chart.span);
    ASSERT_EQ(temperature.rows.size(), 282u) << "47 h in steps of 10 min";
    EXPECT_EQ(temperature.rows[0][1].text, "66.0");
    EXPECT_EQ(temperature.rows[0][4].text, "66.0");
    EXPECT_EQ(temperature.rows[0][5].text, "0.0");
    EXPECT_EQ(temperature.rows[0][6].text, "62.0");
    // Three hours at 71 °F: readings 12 to 18, from six hours after the first.
    EXPECT_EQ(temperature.rows[45][3].text, "71.0");
    EXPECT_EQ(temperature.rows[45][5].text, "+5.0");
    const TableText energy = energyReadingsTable(chart, chart.span);
    ASSERT_EQ(energy.rows.size(), 2u) << "the third was read after the end";
    EXPECT_EQ(energy.rows[1][3].text, "+1.20");
}

TEST(ElapsedTicks, CountRealDaysOverAClockChange)
{
    // Denver's clocks went forward on 8 March 2026 at 02:00.
    const Instant pitched = *parseRfc3339("2026-03-07T18:00:00-07:00");
    const auto ticks = elapsedTicks({pitched, pitched + std::chrono::hours{72}}, pitched, 6);
    std::vector<std::string> labels;
    for (const TimeTick& tick : ticks)
        labels.push_back(tick.label);
    EXPECT_THAT(labels, ::testing::ElementsAre("day 0", "+12 h", "day 1", "+12 h", "day 2", "+12 h",
                                               "day 3"));
    EXPECT_EQ(ticks[2].at, *parseRfc3339("2026-03-08T19:00:00-06:00")) << "24 real hours";
}

TEST(AgeTicks, SayTheDayAndNeverAFractionOfIt)
{
    const auto labels = [](double from, double to, int most) {
        std::vector<std::string> found;
        for (const AgeTick& tick : ageTicks(from, to, most))
            found.push_back(tick.label);
        return found;
    };
    using ::testing::ElementsAre;
    EXPECT_THAT(labels(90.0, 99.0, 4), ElementsAre("+18 h", "+21 h", "day 4", "+3 h"));
    EXPECT_THAT(labels(74.0, 83.0, 4), ElementsAre("day 3 +3 h", "+6 h", "+9 h"));
    EXPECT_THAT(labels(72.0, 72.5, 3), ElementsAre("day 3", "+15 min", "+30 min"));
    EXPECT_THAT(labels(73.25, 73.5, 3),
                ElementsAre("day 3 +1 h 15 min", "+1 h 20 min", "+1 h 25 min", "+1 h 30 min"));
    EXPECT_THAT(labels(0.0, 1000.0, 4), ElementsAre("day 0", "day 20", "day 40"));
    EXPECT_THAT(labels(5.0, 5.0, 4), ElementsAre());
}

} // namespace holdband::ui::test
