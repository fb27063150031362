#include "tests/ui/lane_days.h"
#include "ui/lanes/lanes_layout.h"

#include "core/text/times.h"

#include <gmock/gmock.h>

namespace holdband::ui {

namespace {

results::LaneBar bar(const char* name, int from, int to, int row = 0)
{
    results::LaneBar bar;
    bar.batch = name;
    bar.span = {day(from), day(to)};
    bar.row = row;
    return bar;
}

results::LanesReview lanes()
{
    results::LanesReview lanes;
    lanes.lanes = {{"Loop", {bar("Ale 1", 0, 10), bar("Saison 1", 5, 12, 1)}, 2},
                   {"Cabinet", {bar("Lager 1", 14, 30)}, 1}};
    lanes.rounds = {{day(1), false}, {day(2), true}, {day(3), false}};
    lanes.now = day(31);
    lanes.shown = {day(0), day(30)};
    return lanes;
}

Result<Zone> denverZone()
{
    return Zone::named("America/Denver");
}

LanesMetrics metricsOf(double plotWidth)
{
    LanesMetrics metrics;
    metrics.width = metrics.nameWidth + metrics.rightMargin + plotWidth;
    return metrics;
}

/// 20 pixels per day.
LanesLayout exampleLayout()
{
    return layOut(lanes(), {day(0), day(30)}, *denverZone(), metricsOf(600.0));
}

} // namespace

TEST(LanesLayout, BarsArePlacedInTimeAndInRows)
{
    const LanesLayout layout = exampleLayout();
    ASSERT_EQ(layout.bars.size(), 3u);
    EXPECT_NEAR(layout.bars[0].box.left(), 130.0, 1e-6);
    EXPECT_NEAR(layout.bars[0].box.width(), 200.0, 1e-6);
    EXPECT_GT(layout.bars[1].box.top(), layout.bars[0].box.bottom());
    EXPECT_GT(layout.bars[2].box.top(), layout.bars[1].box.bottom());
    EXPECT_EQ(layout.bars[2].setup, 1);
}

TEST(LanesLayout, FindsTheBarUnderThePointer)
{
    const LanesLayout layout = exampleLayout();
    EXPECT_EQ(layout.barAt(layout.bars[1].box.center()), 1u);
    EXPECT_FALSE(layout.barAt({layout.plot.right(), layout.plot.top() + 1.0}));
}

TEST(LanesLayout, MissedRoundsAreKnown)
{
    const LanesLayout layout = exampleLayout();
    ASSERT_EQ(layout.rounds.size(), 3u);
    EXPECT_EQ(layout.rounds[0].missed, 0);
    EXPECT_EQ(layout.rounds[1].missed, 1);
    EXPECT_NEAR(layout.rounds[1].x - layout.rounds[0].x, 20.0, 1e-6);
    EXPECT_EQ(layout.roundAt({layout.rounds[1].x, layout.roundsY}), 1u);
}

TEST(LanesLayout, MonthsAreNamedAndNowIsOutside)
{
    const LanesLayout layout = layOut(lanes(), {day(0), day(60)}, *denverZone(), metricsOf(600.0));
    ASSERT_EQ(layout.labels.size(), 2u);
    EXPECT_EQ(layout.labels[0].label, "March 2026");
    EXPECT_EQ(layout.labels[1].label, "April");
    EXPECT_FALSE(exampleLayout().nowX);
    EXPECT_FALSE(exampleLayout().nowWordX);
}

TEST(LanesLayout, TheWordNowIsInTheLineOfRoundsRightOfThem)
{
    const LanesLayout layout = layOut(lanes(), {day(0), day(33)}, *denverZone(), metricsOf(600.0));
    ASSERT_TRUE(layout.nowX);
    ASSERT_TRUE(layout.nowWordX);
    EXPECT_GT(*layout.nowWordX, *layout.nowX);
    for (const PlacedTick& tick : layout.rounds)
        EXPECT_LT(tick.x, *layout.nowWordX);
    EXPECT_LT(layout.roundsY + 8.0, layout.labelsY) << "the months have a line of their own";
}

TEST(LanesLayout, ThinBarsStayAndNoneHidesAnother)
{
    // A year on 300 pixels: twelve batches of two days, five days apart, in one row.
    results::LanesReview review;
    review.lanes = {{"Loop", {}, 1}};
    for (int i = 0; i < 12; ++i)
        review.lanes[0].bars.push_back(bar("B", 5 * i, 5 * i + 2));
    review.lanes[0].bars.push_back(bar("Long", 200, 260));
    const LanesLayout layout = layOut(review, {day(0), day(365)}, *denverZone(), metricsOf(300.0));
    ASSERT_EQ(layout.bars.size(), 13u);
    ASSERT_EQ(layout.groups.size(), 1u);
    EXPECT_EQ(layout.groups[0].bars.size(), 12u);
    EXPECT_EQ(layout.groups[0].span, (Span{day(0), day(57)}));
    EXPECT_EQ(layout.groupAt(layout.groups[0].box.center()), 0u);
    EXPECT_FALSE(layout.barAt(layout.bars[3].box.center())) << "it is drawn with the others";
    EXPECT_EQ(layout.drawnBox(3), layout.groups[0].box);
    EXPECT_FALSE(layout.bars[12].group);
    EXPECT_EQ(layout.barAt(layout.bars[12].box.center()), 12u);
}

TEST(LanesLayout, WhatIsDrawnNeverOverlapsAtAnyScale)
{
    results::LanesReview review;
    review.lanes = {{"Loop", {}, 2}};
    for (int i = 0; i < 300; ++i)
        review.lanes[0].bars.push_back(bar("B", 12 * i, 12 * i + 4 + i % 17, i % 2));
    for (double width = 50.0; width < 20'000.0; width *= 1.7) {
        const LanesLayout layout =
            layOut(review, {day(0), day(3650)}, *denverZone(), metricsOf(width));
        std::vector<QRectF> drawn;
        std::size_t bars = 0;
        for (const PlacedBar& one : layout.bars) {
            if (!one.group)
                drawn.push_back(one.box);
            bars += one.group ? 0 : 1;
        }
        for (const PlacedGroup& group : layout.groups) {
            drawn.push_back(group.box);
            bars += group.bars.size();
        }
        EXPECT_EQ(bars, 300u);
        std::sort(drawn.begin(), drawn.end(), [](const QRectF& a, const QRectF& b) {
            return std::pair(a.top(), a.left()) < std::pair(b.top(), b.left());
        });
        for (std::size_t i = 1; i < drawn.size(); ++i) {
            EXPECT_GE(drawn[i].width(), 5.0);
            const bool sameRow = drawn[i].top() == drawn[i - 1].top();
            EXPECT_TRUE(!sameRow || drawn[i].left() >= drawn[i - 1].right() - 0.6)
                << "on " << width;
        }
    }
}

TEST(LanesLayout, DenseRoundsAreSpacedEvenlyAndShowMissedOnes)
{
    results::LanesReview review = lanes();
    review.rounds.clear();
    int missed = 0;
    for (int i = 0; i < 7300; ++i) {
        const bool miss = i % 97 == 0 || (i > 3000 && i < 3100);
        review.rounds.push_back({day(0) + std::chrono::hours{12} * i, miss});
        missed += miss ? 1 : 0;
    }
    const LanesLayout layout =
        layOut(review, {day(0), day(3650)}, *denverZone(), metricsOf(1000.0));
    EXPECT_LE(layout.rounds.size(), 1000u / 7u + 2u);
    int seen = 0;
    int rounds = 0;
    for (std::size_t i = 0; i < layout.rounds.size(); ++i) {
        seen += layout.rounds[i].missed;
        rounds += layout.rounds[i].rounds;
        if (i > 0) {
            EXPECT_NEAR(layout.rounds[i].x - layout.rounds[i - 1].x, 7.0, 0.01);
        }
    }
    EXPECT_NEAR(rounds, 7300, 60) << "but for those cut off at the edges";
    EXPECT_NEAR(seen, missed, 2);
    EXPECT_TRUE(std::any_of(layout.rounds.begin(), layout.rounds.end(),
                            [](const PlacedTick& tick) { return tick.mostMissed(); }));
}

TEST(LanesLayout, DenseRoundsStayTogetherWhileTheLanesAreMoved)
{
    results::LanesReview review = lanes();
    review.rounds.clear();
    for (int i = 0; i < 2000; ++i)
        review.rounds.push_back({day(0) + std::chrono::hours{12} * i, i % 7 == 0});
    const auto middle = [&](std::chrono::hours by) {
        const LanesLayout layout =
            layOut(review, {day(100) + by, day(900) + by}, *denverZone(), metricsOf(500.0));
        for (const PlacedTick& tick : layout.rounds) {
            if (tick.span.start >= day(500))
                return tick.span;
        }
        return Span{};
    };
    EXPECT_EQ(middle(std::chrono::hours{0}), middle(std::chrono::hours{37}));
}

TEST(LanesLayout, RowsBeyondTheRoomAreScrolledAway)
{
    results::LanesReview review;
    for (int i = 0; i < 10; ++i)
        review.lanes.push_back({"S", {bar("B", 0, 9)}, 1});
    LanesMetrics metrics = metricsOf(600.0);
    metrics.rowsHeight = 100.0;
    metrics.scrolled = 60.0;
    const LanesLayout layout = layOut(review, {day(0), day(30)}, *denverZone(), metrics);
    EXPECT_EQ(layout.rowsHeight, 260.0);
    EXPECT_EQ(layout.plot.height(), 100.0);
    EXPECT_LT(layout.lanes[0].box.bottom(), layout.plot.top());
    EXPECT_FALSE(layout.barAt(layout.bars[0].box.center()));
    EXPECT_EQ(layout.barAt(layout.bars[4].box.center()), 4u);
    EXPECT_GT(layout.roundsY, layout.plot.bottom());
}

TEST(LanesLayout, ArrowsLeadToNeighbours)
{
    const LanesLayout layout = exampleLayout();
    EXPECT_EQ(neighbour(layout, 0, Direction::down), 1u);
    EXPECT_EQ(neighbour(layout, 1, Direction::right), 2u);
    EXPECT_EQ(neighbour(layout, 2, Direction::left), 1u);
    EXPECT_EQ(neighbour(layout, 2, Direction::down), 2u);
}

TEST(LanesSpan, HasAMarginAndIncludesANearNow)
{
    const Span span = lanesSpan(lanes());
    EXPECT_LT(span.start, day(0));
    EXPECT_GT(span.end, day(31));
    results::LanesReview old = lanes();
    old.now = day(300);
    EXPECT_LT(lanesSpan(old).end, day(40));
}

} // namespace holdband::ui
