#include "ui/charts/weather_points.h"

#include "tests/ui/drawn_plots.h"

#include <gmock/gmock.h>

namespace holdband::ui::test {

using ::testing::ElementsAre;

namespace {

constexpr QSizeF weatherSize(720.0, 300.0);

/// Six hours each at a lift of 0, 5, 10 and 15 K, on a line of `base` W and `slope` W/K.
analysis::LiftModel onALine(double base, double slope)
{
    std::vector<analysis::WeatherPair> pairs;
    for (int i = 0; i < 4; ++i) {
        const Instant start = Instant{} + std::chrono::hours(6 * i);
        const double lift = 5.0 * i;
        pairs.push_back({{start, start + std::chrono::hours(6)}, lift, base + slope * lift, {"x"}});
    }
    return analysis::liftModel(pairs);
}

WeatherPicture weatherPicture()
{
    results::SameWeather weather;
    weather.a.model = onALine(10.0, 2.0);
    weather.b.model = onALine(30.0, 1.0);
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
    ASSERT_EQ(dots.size(), 2U);
    EXPECT_EQ(dots[0].shape, DotShape::disc);
    EXPECT_EQ(dots[1].shape, DotShape::square);
    EXPECT_THAT(dots[0].points, ElementsAre(QPointF(0.0, 10.0), QPointF(5.0, 20.0),
                                            QPointF(10.0, 30.0), QPointF(15.0, 40.0)));
    const auto lines = seriesOf<PlotLine>(plot);
    ASSERT_EQ(lines.size(), 3U); // the reference, A, B
    EXPECT_EQ(lines[0].points.front().x(), 8.0);
    EXPECT_NEAR(lines[1].points.back().y(), 40.0, 1e-9);
    EXPECT_NEAR(lines[2].points.back().y(), 45.0, 1e-9);
    EXPECT_EQ(lines[2].pen.style(), Qt::DashLine);
    EXPECT_EQ(seriesOf<PlotArea>(plot).size(), 2U);
    EXPECT_TRUE(labelOf(plot, "compared here"));
    EXPECT_TRUE(labelOf(plot, "● A Loop · ■ B Cabinet"));
}

TEST(WeatherPicture, IsDrawnInsideItsPlot)
{
    expectDrawnInside(weatherPicture(), weatherSize, 4.5); // a dot lies on the edge
}

} // namespace holdband::ui::test
