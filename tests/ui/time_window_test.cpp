#include "ui/charts/time_window.h"

#include "ui/charts/time_view.h"

#include <QKeyEvent>
#include <gtest/gtest.h>

namespace holdband::ui {

namespace {

Instant hour(int hours)
{
    return instantFromMs(0) + std::chrono::hours{hours};
}

TimeWindow tenDays()
{
    return TimeWindow({hour(0), hour(240)});
}

bool press(TimeView& view, int key)
{
    return view.takeKey(QKeyEvent(QEvent::KeyPress, key, Qt::NoModifier));
}

} // namespace

TEST(TimeWindow, ZoomLeavesThePivotInItsPlace)
{
    TimeWindow window = tenDays();
    window.zoomAbout(hour(60), 0.5); // a quarter of the way from the left
    EXPECT_EQ(window.shown(), (Span{hour(30), hour(150)}));
}

TEST(TimeWindow, ZoomingOutStopsAtAll)
{
    TimeWindow window = tenDays();
    window.zoomAbout(hour(10), 0.1);
    window.zoomAbout(hour(10), 1000.0);
    EXPECT_TRUE(window.showsAll());
}

TEST(TimeWindow, ZoomingInStopsAtTenMinutes)
{
    TimeWindow window = tenDays();
    window.zoomAbout(hour(100), 1e-9);
    EXPECT_EQ(window.shown().end - window.shown().start, TimeWindow::shortest);
}

TEST(TimeWindow, PanningStopsAtTheEnds)
{
    TimeWindow window = tenDays();
    window.show({hour(100), hour(120)});
    window.moveBy(std::chrono::hours{500});
    EXPECT_EQ(window.shown(), (Span{hour(220), hour(240)}));
    window.moveBy(-std::chrono::hours{500});
    EXPECT_EQ(window.shown(), (Span{hour(0), hour(20)}));
}

TEST(TimeWindow, ShowsASpanWithAMargin)
{
    TimeWindow window = tenDays();
    window.show({hour(100), hour(104)}, 0.5);
    EXPECT_EQ(window.shown(), (Span{hour(98), hour(106)}));
}

TEST(TimeView, KeysZoomPanAndShowAll)
{
    TimeView view;
    view.reset({hour(0), hour(240)});
    EXPECT_TRUE(press(view, Qt::Key_Plus));
    const Span zoomed = view.shown();
    EXPECT_LT(zoomed.hours(), 240.0);
    EXPECT_TRUE(press(view, Qt::Key_Right));
    EXPECT_GT(view.shown().start, zoomed.start);
    EXPECT_TRUE(press(view, Qt::Key_Home));
    EXPECT_TRUE(view.window().showsAll());
    EXPECT_FALSE(press(view, Qt::Key_A));
}

} // namespace holdband::ui
