#include "ui/charts/pair_deviation.h"

#include "tests/ui/drawn_plots.h"

#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

constexpr QSizeF deviationSize(720.0, 173.0);
constexpr double msOfAnHour = 3'600'000.0;

/// Readings each hour, 0.2 K above the target; the first three settle from 8 K on.
results::DeviationLine deviationLine(std::size_t hours)
{
    results::DeviationLine line;
    for (std::size_t i = 0; i <= hours; ++i) {
        line.track.ms.push_back(static_cast<double>(i) * msOfAnHour);
        line.track.value.push_back(i < 3 ? 8.0 - static_cast<double>(i) : 0.2);
    }
    line.track.runs = {{0, hours}};
    line.settling = {{0.0, 3.0 * msOfAnHour}};
    return line;
}

PairDeviationPicture deviationPicture(double excursion = 0.2)
{
    results::DeviationCharts charts;
    charts.a = deviationLine(48);
    charts.b = deviationLine(72);
    charts.a->track.value[20] = excursion;
    charts.toleranceA = 1.0;
    charts.toleranceB = 0.5;
    return {charts, TemperatureUnit::celsius, {"Ale 2", "Ale 3"}};
}

QPolygonF withoutGaps(const QPolygonF& points)
{
    QPolygonF values;
    for (const QPointF& point : points) {
        if (!qIsNaN(point.y()))
            values << point;
    }
    return values;
}

} // namespace

TEST(PairDeviationPicture, ShowsBothLinesWithoutSettlingAndTheNarrowerBand)
{
    const Plot plot = deviationPicture().plots(deviationSize, pictureLook()).at(0);
    EXPECT_EQ(plot.across(), (ValueRange{0.0, 72.0}));
    EXPECT_EQ(plot.up(), (ValueRange{-1.35, 1.35})); // settling does not widen it
    const auto lines = seriesOf<PlotLine>(plot);
    ASSERT_EQ(lines.size(), 2U); // B behind A
    const QPolygonF b = withoutGaps(lines[0].points);
    EXPECT_EQ(b.front(), QPointF(3.0, 0.2));
    EXPECT_EQ(b.back(), QPointF(72.0, 0.2));
    EXPECT_EQ(withoutGaps(lines[1].points).back(), QPointF(48.0, 0.2));
    const QRectF band = seriesOf<PlotArea>(plot).at(0).outline.boundingRect();
    EXPECT_EQ(band.top(), -0.5);
    EXPECT_EQ(band.bottom(), 0.5);
    EXPECT_TRUE(labelOf(plot, "bands: A ± 1.0, B ± 0.5"));
    EXPECT_GE(plot.upTicks().size(), 3U);
    EXPECT_EQ(plot.acrossTicks().front().label, "day 0");
}

TEST(PairDeviationPicture, CutsOffWhatIsFarBeyondTheBand)
{
    const Plot plot = deviationPicture(30.0).plots(deviationSize, pictureLook()).at(0);
    EXPECT_EQ(plot.up(), (ValueRange{-2.5, 2.5}));
}

TEST(PairDeviationPicture, IsDrawnInsideItsPlot)
{
    expectDrawnInside(deviationPicture(30.0), deviationSize);
}

} // namespace holdband::ui::test
