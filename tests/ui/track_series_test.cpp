// How the tracks of a run become series: rough checks of the pixels, and of the number of points.
#include "ui/charts/track_series.h"

#include "tests/ui/drawn_plots.h"

#include <QImage>
#include <gtest/gtest.h>

namespace holdband::ui::test {

namespace {

constexpr std::size_t readings = 1'000'000;
constexpr int width = 500;
constexpr int height = 200;
const QColor ink(0, 0, 0);

RunChart flatChart(double peakAt)
{
    RunChart chart;
    ChartLine line{LineRole::beer, "beer", {}};
    for (std::size_t i = 0; i < readings; ++i) {
        line.track.ms.push_back(static_cast<double>(i) * 60'000.0);
        line.track.value.push_back(i % 2 == 0 ? 20.0 : 21.0);
    }
    line.track.value[static_cast<std::size_t>(peakAt * readings)] = 80.0;
    line.track.runs = {{0, readings - 1}};
    line.pyramid = TrackPyramid(line.track);
    chart.span = {chart.origin, chart.instantOf(line.track.ms.back())};
    chart.lines.push_back(std::move(line));
    return chart;
}

Plot plotOf(const RunChart& chart, bool moving, double ratio)
{
    PictureLook look = pictureLook();
    look.moving = moving;
    look.columns = ratio;
    Plot plot(QRectF(0, 0, width, height), look);
    plot.setArea(plot.box());
    plot.setRanges({0.0, chart.msOf(chart.span.end)}, {0.0, 100.0});
    addTrack(plot, chart.lines[0].track, chart.lines[0].pyramid, QPen(ink, 1.8));
    return plot;
}

QImage drawn(const RunChart& chart, bool moving, double ratio)
{
    return imageOf(plotOf(chart, moving, ratio), ratio);
}

/// The darkest of the pixels around a point of the plot.
int darkest(const QImage& image, double x, double y)
{
    const double ratio = image.devicePixelRatio();
    int least = 255;
    for (int dx = -2; dx <= 2; ++dx) {
        for (int dy = -1; dy <= 1; ++dy)
            least = std::min(least, qGray(image.pixel(static_cast<int>(x * ratio) + dx,
                                                      static_cast<int>(y * ratio) + dy)));
    }
    return least;
}

} // namespace

TEST(DrawnTrack, OnePeakInAMillionReadingsIsOnThePicture)
{
    const RunChart chart = flatChart(0.4);
    for (const double ratio : {1.0, 2.0}) {
        for (const bool moving : {false, true}) {
            const QImage image = drawn(chart, moving, ratio);
            // 80 of 0 … 100 is 40 px from the top, the flat part between 158 and 160 px.
            EXPECT_LT(darkest(image, 0.4 * width, 42.0), 160) << ratio << moving;
            EXPECT_LT(darkest(image, 0.4 * width, 100.0), 160) << ratio << moving;
            EXPECT_LT(darkest(image, 0.7 * width, 159.0), 100) << ratio << moving;
            EXPECT_EQ(darkest(image, 0.7 * width, 100.0), 255) << ratio << moving;
            EXPECT_EQ(darkest(image, 0.7 * width, 170.0), 255) << ratio << moving;
        }
    }
}

TEST(DrawnTrack, AGapStaysEmptyAlsoWhereReadingsAreDense)
{
    RunChart chart = flatChart(0.1);
    chart.lines[0].track.runs = {{0, readings / 2}, {readings * 6 / 10, readings - 1}};
    const QImage image = drawn(chart, false, 1.0);
    EXPECT_LT(darkest(image, 0.45 * width, 159.0), 100);
    EXPECT_EQ(darkest(image, 0.55 * width, 159.0), 255);
    EXPECT_LT(darkest(image, 0.65 * width, 159.0), 100);
}

TEST(DrawnTrack, HasAFewPointsAColumn)
{
    RunChart chart = flatChart(0.4);
    ChartLine& line = chart.lines[0];
    for (std::size_t i = 0; i < readings; ++i)
        line.track.value[i] = 20.0 + 0.1 * static_cast<double>(i * 7919 % 11);
    line.pyramid = TrackPyramid(line.track);
    const Plot plot = plotOf(chart, false, 1.0);
    const auto areas = seriesOf<PlotArea>(plot);
    EXPECT_GE(areas.size(), width / 24u) << "dense: its columns are filled, some at once";
    qsizetype points = 0;
    for (const PlotArea& area : areas) {
        points += area.outline.size();
        EXPECT_LE(area.outline.size(), 60);
    }
    EXPECT_GE(points, 2 * width);
    EXPECT_LE(points, 2.5 * width);
    EXPECT_TRUE(seriesOf<PlotLine>(plot).empty());
    const Plot moving = plotOf(chart, true, 2.0);
    ASSERT_EQ(seriesOf<PlotLine>(moving).size(), 1u);
    EXPECT_LE(seriesOf<PlotLine>(moving)[0].points.size(), 2 * width + 4) << "a stroke a column";
    EXPECT_EQ(columnsOf(moving), width) << "while moving one column a unit";
    EXPECT_EQ(columnsOf(plotOf(chart, false, 2.0)), 2 * width);
}

TEST(DrawnTrack, OfFewReadingsIsALineThroughAllOfThem)
{
    RunChart chart = flatChart(0.0);
    analysis::Track& track = chart.lines[0].track;
    track.ms = {0.0, 1000.0, 2000.0, 5000.0, 6000.0};
    track.value = {20.0, 21.0, 22.0, 30.0, 31.0};
    track.runs = {{0, 2}, {3, 4}};
    chart.lines[0].pyramid = TrackPyramid(track);
    chart.span = {chart.origin, chart.instantOf(6000.0)};
    const auto lines = seriesOf<PlotLine>(plotOf(chart, false, 1.0));
    ASSERT_EQ(lines.size(), 1u);
    const QPolygonF& points = lines[0].points;
    ASSERT_EQ(points.size(), 7);
    EXPECT_EQ(points[2], QPointF(2000.0, 22.0));
    EXPECT_TRUE(qIsNaN(points[3].y())) << "a gap";
    EXPECT_EQ(points[4], QPointF(5000.0, 30.0));
}

TEST(JoinedAreas, FillNothingBetweenThem)
{
    const QPolygonF left({{0, 0}, {0, 2}, {2, 2}, {2, 0}});
    const QPolygonF right({{6, 0}, {6, 2}, {8, 2}, {8, 0}});
    const QPolygonF joined = joinedAreas({left, right});
    EXPECT_TRUE(joined.containsPoint({1, 1}, Qt::OddEvenFill));
    EXPECT_FALSE(joined.containsPoint({4, 1}, Qt::OddEvenFill));
    EXPECT_TRUE(joined.containsPoint({7, 1}, Qt::OddEvenFill));
}

TEST(ThinnedPoints, AreTheFirstAndTheLastOfEachColumn)
{
    const RunChart chart = flatChart(0.0);
    const Plot plot = plotOf(chart, false, 1.0);
    QPolygonF points;
    for (int i = 0; i < 100'000; ++i)
        points << QPointF(i * 600'000.0, i);
    const QPolygonF chosen = thinned(plot, points);
    EXPECT_LE(chosen.size(), 2 * width + 2);
    EXPECT_EQ(chosen.front(), points.front());
    EXPECT_EQ(chosen.back(), points.back());
    const double column = plot.acrossOf(1.0);
    for (qsizetype i = 1; i < chosen.size(); ++i)
        EXPECT_LE(chosen[i].x() - chosen[i - 1].x(), column + 600'000.0) << i;
}

} // namespace holdband::ui::test
