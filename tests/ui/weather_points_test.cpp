#include "ui/charts/weather_points.h"

#include "tests/ui/drawn_plots.h"

#include <gmock/gmock.h>

namespace holdband::ui::test {

using ::testing::ElementsAre;

namespace {

constexpr QSizeF weatherSize(720.0, 300.0);

/// Six hours each at a lift of 0, 5, 10 and 15 K, on a line of `base` W and `slope` W/K; the first
/// two by one batch, the others by another.
analysis::LiftModel onALine(double base, double slope, const std::string& names)
{
    std::vector<analysis::WeatherPair> pairs;
    for (int i = 0; i < 4; ++i) {
        const Instant start = Instant{} + std::chrono::hours(6 * i);
        const double lift = 5.0 * i;
        pairs.push_back({{start, start + std::chrono::hours(6)},
                         lift,
                         base + slope * lift,
                         {names + (i < 2 ? " 1" : " 2")}});
    }
    return analysis::liftModel(pairs);
}

WeatherPicture weatherPicture()
{
    results::SameWeather weather;
    weather.a.model = onALine(10.0, 2.0, "Ale");
    weather.b.model = onALine(30.0, 1.0, "Lager");
    weather.hold = analysis::ReferenceHold{8.0, 168.0};
    weather.any = true;
    return {weather, TemperatureUnit::celsius, {"Loop", "Cabinet"}};
}

} // namespace

TEST(WeatherPicture, ShowsPointsLinesIntervalsAndTheReference)
{
    const Plot plot = weatherPicture().plots(weatherSize, pictureLook()).at(0);
    EXPECT_EQ(plot.across(), (ValueRange{0.0, 15.75}));
    EXPECT_EQ(plot.up(), (ValueRange{0.0, 1.1 * 45.0}));
    const auto dots = seriesOf<PlotDots>(plot);
    ASSERT_EQ(dots.size(), 4U) << "each batch has a mark of its own";
    EXPECT_EQ(dots[0].shape, DotShape::disc);
    EXPECT_EQ(dots[1].shape, DotShape::square);
    EXPECT_THAT(dots[0].points, ElementsAre(QPointF(0.0, 10.0), QPointF(5.0, 20.0)));
    EXPECT_THAT(dots[1].points, ElementsAre(QPointF(10.0, 30.0), QPointF(15.0, 40.0)));
    EXPECT_EQ(dots[2].shape, DotShape::disc);
    EXPECT_EQ(dots[2].fill, plot.colours().card) << "B's are hollow";
    const auto lines = seriesOf<PlotLine>(plot);
    ASSERT_EQ(lines.size(), 3U); // the reference, A, B
    EXPECT_EQ(lines[0].points.front().x(), 8.0);
    EXPECT_NEAR(lines[1].points.back().y(), 40.0, 1e-9);
    EXPECT_NEAR(lines[2].points.back().y(), 45.0, 1e-9);
    EXPECT_EQ(lines[2].pen.style(), Qt::DashLine);
    EXPECT_EQ(dots[2].edge.color(), lines[2].pen.color());
    EXPECT_EQ(seriesOf<PlotArea>(plot).size(), 2U);
    EXPECT_TRUE(labelOf(plot, "compared here"));
    EXPECT_TRUE(labelOf(plot, "A Loop, filled · B Cabinet, hollow"));
    EXPECT_TRUE(
        labelOf(plot, "A  ●\u00a0Ale 1  ■\u00a0Ale 2  ·  B  ○\u00a0Lager 1  □\u00a0Lager 2"));
}

TEST(WeatherPicture, IsDrawnInsideItsPlot)
{
    expectDrawnInside(weatherPicture(), weatherSize, 4.5); // a dot lies on the edge
}

} // namespace holdband::ui::test
