#include "ui/charts/season_picture.h"

#include "tests/ui/drawn_plots.h"

#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

constexpr QSizeF seasonSize(720.0, 302.0);

results::SeasonLine seasonLine(const char* batch, const char* mark, double kwh, double low,
                               double high)
{
    results::SeasonLine line;
    line.batch = batch;
    line.mark = mark;
    line.energy.kwh = kwh;
    line.energy.low = low;
    line.energy.high = high;
    if (kwh > 0.0)
        line.energy.metered = {{Instant{}, Instant{} + std::chrono::hours(1)}};
    return line;
}

/// The second batch was not metered; the bound of the third is far above the others.
SeasonPicture seasonPicture()
{
    results::Season season;
    season.batches = {seasonLine("Lager 1", "✓", 16.0, 15.0, 17.0),
                      seasonLine("Ale 1", "?", 0, 0, 0),
                      seasonLine("Ale 2", "1", 20.0, 18.0, 90.0)};
    return SeasonPicture(season);
}

} // namespace

TEST(SeasonPicture, ShowsABarForEachMeteredBatchWithItsBounds)
{
    const Plot plot = seasonPicture().plots(seasonSize, pictureLook()).at(0);
    EXPECT_NEAR(plot.up().high, 1.5 * 20.0 * 1.14, 1e-9);
    const auto bars = seriesOf<PlotBars>(plot).at(0).bars;
    ASSERT_EQ(bars.size(), 2U);
    EXPECT_EQ(bars[0].value, 16.0);
    EXPECT_EQ(bars[1].value, 20.0);
    EXPECT_NEAR((bars[1].left + bars[1].right) / 2.0, 2.5, 1e-9);
    EXPECT_NEAR(plot.x(bars[0].right) - plot.x(bars[0].left), 64.0, 1e-6);
    const auto whiskers = seriesOf<PlotLine>(plot);
    ASSERT_EQ(whiskers.size(), 6U); // a line and two ends each
    EXPECT_EQ(whiskers[0].points.front(), QPointF(0.5, 15.0));
    EXPECT_EQ(whiskers[0].points.back(), QPointF(0.5, 17.0));
    EXPECT_LT(whiskers[3].points.back().y(), plot.up().high); // below the figure
    for (const char* text : {"16.0", "–", "20.0", "Lager 1", "Ale 1", "Ale 2", "✓", "?", "1"})
        EXPECT_TRUE(labelOf(plot, text)) << text;
}

TEST(SeasonPicture, IsDrawnInsideItsPlot)
{
    expectDrawnInside(seasonPicture(), seasonSize);
}

} // namespace holdband::ui::test
