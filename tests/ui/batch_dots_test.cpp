#include "ui/charts/batch_dots.h"

#include "tests/ui/drawn_plots.h"

#include <gmock/gmock.h>

namespace holdband::ui::test {

using ::testing::ElementsAre;

namespace {

constexpr QSizeF dotsSize(720.0, 172.0);

/// In Wh, shown in kWh. The interval of B is far wider than its dots.
BatchDotsPicture dotsPicture()
{
    results::MeasureBatches figures;
    figures.a.batches = {{"one", 8000.0}, {"two", 10000.0}, {"three", 9000.0}};
    figures.a.mean = 9000.0;
    figures.a.low = 7000.0;
    figures.a.high = 11000.0;
    figures.b.batches = {{"four", 12000.0}};
    figures.b.mean = 12000.0;
    figures.b.low = -40000.0;
    figures.b.high = 60000.0;
    return {"Energy, kWh", figures, 0.001, {"Loop", "Cabinet"}};
}

} // namespace

TEST(BatchDotsPicture, ShowsEveryBatchTheMeanAndItsInterval)
{
    const Plot plot = dotsPicture().plots(dotsSize, pictureLook()).at(0);
    EXPECT_EQ(plot.heading(), "Every batch: Energy, kWh");
    EXPECT_EQ(plot.across().low, 0.0);
    EXPECT_NEAR(plot.across().high, 1.6 * 12.0 * 1.06, 1e-9); // the interval is cut off
    const auto dots = seriesOf<PlotDots>(plot);
    ASSERT_EQ(dots.size(), 2U);
    EXPECT_THAT(dots[0].points,
                ElementsAre(QPointF(8.0, 1.0), QPointF(10.0, 1.0), QPointF(9.0, 1.0)));
    EXPECT_THAT(dots[1].points, ElementsAre(QPointF(12.0, 0.0)));
    const auto intervals = seriesOf<PlotArea>(plot);
    ASSERT_EQ(intervals.size(), 2U);
    EXPECT_EQ(intervals[0].outline.boundingRect().left(), 7.0);
    EXPECT_EQ(intervals[0].outline.boundingRect().right(), 11.0);
    EXPECT_EQ(intervals[1].outline.boundingRect().left(), 0.0);
    EXPECT_EQ(intervals[1].outline.boundingRect().right(), plot.across().high);
    const auto lines = seriesOf<PlotLine>(plot); // the row and the mean of each side
    ASSERT_EQ(lines.size(), 4U);
    EXPECT_EQ(lines[1].points.front().x(), 9.0);
    EXPECT_EQ(lines[3].points.front().x(), 12.0);
    EXPECT_TRUE(labelOf(plot, "line: mean · pale: 95 % interval"));
    EXPECT_LT(labelOf(plot, "A")->at.y(), labelOf(plot, "B")->at.y());
}

TEST(BatchDotsPicture, IsDrawnInsideItsPlot)
{
    expectDrawnInside(dotsPicture(), dotsSize);
}

} // namespace holdband::ui::test
