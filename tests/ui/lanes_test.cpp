#include "ui/lanes/lanes_layout.h"

#include "core/text/times.h"

#include <gmock/gmock.h>

namespace holdband::ui {

namespace {

Instant day(int days)
{
    return *parseRfc3339("2026-03-01T07:00:00Z") + std::chrono::days{days};
}

review::LaneBar bar(const char* name, int from, int to, int row = 0)
{
    review::LaneBar bar;
    bar.batch = name;
    bar.span = {day(from), day(to)};
    bar.row = row;
    return bar;
}

review::LanesReview lanes()
{
    review::LanesReview lanes;
    lanes.lanes = {{"Loop", {bar("Ale 1", 0, 10), bar("Saison 1", 5, 12, 1)}, 2},
                   {"Cabinet", {bar("Lager 1", 14, 30)}, 1}};
    lanes.rounds = {{day(1), false}, {day(2), true}, {day(3), false}};
    lanes.now = day(31);
    lanes.shown = {day(0), day(30)};
    return lanes;
}

LanesLayout laidOut()
{
    LanesMetrics metrics;
    metrics.width = 130.0 + 14.0 + 600.0; // 20 pixels a day
    return layOut(lanes(), {day(0), day(30)}, *Zone::named("America/Denver"), metrics);
}

} // namespace

TEST(LanesLayout, BarsStandInTimeAndInRows)
{
    const LanesLayout layout = laidOut();
    ASSERT_EQ(layout.bars.size(), 3u);
    EXPECT_NEAR(layout.bars[0].box.left(), 130.0, 1e-6);
    EXPECT_NEAR(layout.bars[0].box.width(), 200.0, 1e-6);
    EXPECT_GT(layout.bars[1].box.top(), layout.bars[0].box.bottom());
    EXPECT_GT(layout.bars[2].box.top(), layout.bars[1].box.bottom());
    EXPECT_EQ(layout.bars[2].setup, 1);
}

TEST(LanesLayout, FindsTheBarUnderThePointer)
{
    const LanesLayout layout = laidOut();
    EXPECT_EQ(layout.barAt(layout.bars[1].box.center()), 1u);
    EXPECT_FALSE(layout.barAt({layout.plot.right(), layout.plot.top() + 1.0}));
}

TEST(LanesLayout, MissedRoundsAreKnown)
{
    const LanesLayout layout = laidOut();
    ASSERT_EQ(layout.rounds.size(), 3u);
    EXPECT_FALSE(layout.rounds[0].missed);
    EXPECT_TRUE(layout.rounds[1].missed);
    EXPECT_NEAR(layout.rounds[1].x - layout.rounds[0].x, 20.0, 1e-6);
}

TEST(LanesLayout, MonthsAreNamedAndNowIsOutside)
{
    const LanesLayout layout = laidOut();
    ASSERT_FALSE(layout.months.empty());
    EXPECT_EQ(layout.months[0].label, "March 2026");
    EXPECT_FALSE(layout.nowX);
}

TEST(LanesLayout, ArrowsLeadToNeighbours)
{
    const LanesLayout layout = laidOut();
    EXPECT_EQ(neighbour(layout, 0, Direction::down), 1u);
    EXPECT_EQ(neighbour(layout, 1, Direction::right), 2u);
    EXPECT_EQ(neighbour(layout, 2, Direction::left), 1u);
    EXPECT_EQ(neighbour(layout, 2, Direction::down), 2u);
}

TEST(LanesSpan, HasRoomAroundAndTakesInANearNow)
{
    const Span span = lanesSpan(lanes());
    EXPECT_LT(span.start, day(0));
    EXPECT_GT(span.end, day(31));
    review::LanesReview old = lanes();
    old.now = day(300);
    EXPECT_LT(lanesSpan(old).end, day(40));
}

} // namespace holdband::ui
