// What the Rounds page says and draws about the energy that the meters counted.
#include "tests/ui/sample_window.h"

#include "ui/rounds/round_line.h"
#include "ui/rounds/round_time.h"
#include "ui/rounds/rounds_grid.h"
#include "ui/rounds/rounds_page.h"
#include "ui/rounds/running_view.h"
#include "ui/rounds/week_sparkline.h"
#include "ui/window/pages.h"

#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

namespace holdband::ui::test {

namespace {

class RoundUseTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        m_window = openWindow(makeLogbook());
        m_window->activateWindow();
        m_window->setPage(PageId::rounds);
    }

    RoundsPage& page() { return *m_window->pages()->rounds(); }
    RoundLine& line(const char* meter) { return *page().row(QString::fromUtf8(meter)); }

    std::unique_ptr<MainWindow> m_window;
};

} // namespace

TEST_F(RoundUseTest, TheEnergySinceTheLastReadingIsSaidWhileTyping)
{
    RoundLine& cabinet = line("Cabinet meter");
    QTest::mouseClick(cabinet.field(), Qt::LeftButton);
    QTest::keyClicks(cabinet.field(), "41.12");
    // 0.22 kWh in the 11 h 7 min since 07:05.
    EXPECT_EQ(cabinet.message(), "0.22 kWh since 07:05, 20 W");
    QTest::keyClick(cabinet.field(), Qt::Key_Backspace);
    EXPECT_EQ(cabinet.message(), "0.20 kWh since 07:05, 18 W");
    cabinet.field()->selectAll();
    QTest::keyClicks(cabinet.field(), "4");
    EXPECT_EQ(cabinet.message(), "") << "below the last reading";
}

TEST_F(RoundUseTest, TheWordsFollowTheTypedTime)
{
    RoundLine& cabinet = line("Cabinet meter");
    QTest::keyClicks(cabinet.field(), "41.12");
    QTest::mouseClick(page().time()->button(), Qt::LeftButton);
    page().time()->field()->setText("17:05");
    QTest::keyClick(page().time()->field(), Qt::Key_Return);
    settle(*m_window);
    EXPECT_EQ(cabinet.message(), "0.22 kWh since 07:05, 22 W"); // in 10 h
}

TEST_F(RoundUseTest, TheLastWeekIsDrawnInTheSetupsColour)
{
    WeekSparkline& loop = *line("Loop meter").week();
    ASSERT_TRUE(loop.isVisible());
    // 1.2 kWh in 23 h, because the clocks changed, then in 24 h.
    EXPECT_EQ(loop.accessibleDescription(), "Mean power between the readings of the last 7 days: "
                                            "50 – 52 W, lately 50 W");
    EXPECT_EQ(loop.toolTip(), loop.accessibleDescription());
    EXPECT_EQ(loop.accessibleName(), "Loop meter, the last week");
    const auto hasColour = [](WeekSparkline& chart, const QColor& colour) {
        const QImage image = chart.grab().toImage();
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x) {
                if (image.pixelColor(x, y) == colour)
                    return true;
            }
        }
        return false;
    };
    const Colours& colours = coloursOf(loop);
    EXPECT_TRUE(hasColour(loop, mixed(setupLine(0, colours), colours.card, 0.18)));
    EXPECT_TRUE(
        hasColour(*line("Cabinet meter").week(), mixed(setupLine(1, colours), colours.card, 0.18)));
}

TEST_F(RoundUseTest, TheChartGrowsWithTheText)
{
    WeekSparkline& loop = *line("Loop meter").week();
    const QSize before = loop.sizeHint();
    QFont large = loop.font();
    large.setPointSizeF(large.pointSizeF() * 2.0);
    loop.setFont(large);
    EXPECT_GT(loop.sizeHint().height(), 1.7 * before.height());
    EXPECT_GT(loop.sizeHint().width(), 1.7 * before.width());
}

TEST_F(RoundUseTest, ANarrowPageLeavesTheRoomToTheFields)
{
    WeekSparkline& loop = *line("Loop meter").week();
    ASSERT_TRUE(loop.isVisible());
    const QSize before = page().size();
    page().resize(49 * page().fontMetrics().height(), before.height());
    EXPECT_FALSE(loop.isVisible());
    page().resize(51 * page().fontMetrics().height(), before.height());
    EXPECT_TRUE(loop.isVisible());
}

TEST_F(RoundUseTest, FewerThanThreeReadingsAreNotDrawn)
{
    WeekSparkline chart(QStringLiteral("M"));
    chart.setWeek({}, 0);
    EXPECT_TRUE(chart.isHidden());
    EXPECT_EQ(line("Pale 2").week(), nullptr) << "a gravity";
}

TEST_F(RoundUseTest, TheEnergyOfTheRunningBatchesIsDrawnBelowTheGrid)
{
    RunningView& running = *page().running();
    ASSERT_TRUE(running.isVisible());
    EXPECT_GE(running.mapTo(&page(), QPoint()).y(),
              page().grid()->mapTo(&page(), QPoint(0, page().grid()->height())).y());
    EXPECT_EQ(running.accessibleName(), "Energy of the running batches");
    EXPECT_EQ(running.accessibleDescription(), "Pale 2: 0.8 kWh since 10 Mar 18:05");
    line("Cabinet meter").field()->setFocus();
    QTest::keyClicks(line("Cabinet meter").field(), "41.3");
    QTest::keyClick(line("Cabinet meter").field(), Qt::Key_Return, Qt::ControlModifier);
    settle(*m_window);
    settle(*m_window);
    EXPECT_EQ(running.accessibleDescription(), "Pale 2: 1.2 kWh since 10 Mar 18:05");
    page().clear();
    EXPECT_TRUE(running.isHidden());
}

} // namespace holdband::ui::test
