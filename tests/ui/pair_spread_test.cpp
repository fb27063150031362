#include "ui/charts/pair_spread.h"

#include "tests/ui/drawn_plots.h"

#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

constexpr QSizeF spreadSize(720.0, 216.0);

/// Bins of 0.5 K from −1 to 1 K. A spent a quarter of its time in the second, the rest in the third
/// one; B all of it in the last, beyond its tolerance of 0.4 K.
PairSpreadPicture spreadPicture()
{
    results::DeviationCharts charts;
    charts.spreadA = analysis::Distribution{{-1.0, -0.5, 0.0, 0.5, 1.0}, {0.0, 1.0, 3.0, 0.0}};
    charts.spreadB = analysis::Distribution{{-1.0, -0.5, 0.0, 0.5, 1.0}, {0.0, 0.0, 0.0, 7.0}};
    charts.toleranceA = 0.5;
    charts.toleranceB = 0.4;
    return {charts, TemperatureUnit::fahrenheit, {"Ale 2", "Ale 3"}};
}

} // namespace

TEST(PairSpreadPicture, ShowsTheShareOfTimeAtEachDeviationAndTheBand)
{
    const auto plots = spreadPicture().plots(spreadSize, pictureLook());
    ASSERT_EQ(plots.size(), 2U);
    for (const Plot& plot : plots) {
        EXPECT_NEAR(plot.across().low, 1.8 * -1.15 * 0.5, 1e-9);
        EXPECT_NEAR(plot.across().high, 1.8 * 1.0, 1e-9); // B's last bin
        EXPECT_NEAR(plot.up().high, 1.06, 1e-9);          // of B's bar, in both
    }
    const auto a = seriesOf<PlotBars>(plots[0]).at(0).bars;
    ASSERT_EQ(a.size(), 2U);
    EXPECT_DOUBLE_EQ(a[0].value, 0.25);
    EXPECT_DOUBLE_EQ(a[1].value, 0.75);
    const double gap = plots[0].acrossOf(0.5);
    EXPECT_NEAR(a[0].left, -0.9 + gap, 1e-9); // −0.5 K are −0.9 °F
    EXPECT_NEAR(a[0].right, 0.0 - gap, 1e-9);
    const auto b = seriesOf<PlotBars>(plots[1]).at(0).bars;
    ASSERT_EQ(b.size(), 1U);
    EXPECT_DOUBLE_EQ(b[0].value, 1.0);
    const QRectF band = seriesOf<PlotArea>(plots[1]).at(0).outline.boundingRect();
    EXPECT_NEAR(band.left(), -0.72, 1e-9);
    EXPECT_NEAR(band.right(), 0.72, 1e-9);
    EXPECT_EQ(seriesOf<PlotLine>(plots[0]).size(), 4U); // the band's edges, the target, the foot
    EXPECT_LT(plots[0].area().bottom(), plots[1].area().top());
    EXPECT_TRUE(labelOf(plots[0], "A") && labelOf(plots[1], "B"));
    EXPECT_TRUE(labelOf(plots[0], "A Ale 2") && labelOf(plots[0], "B Ale 3"));
}

TEST(PairSpreadPicture, NamesTheTargetOnItsAxis)
{
    const auto plots = spreadPicture().plots(spreadSize, pictureLook());
    std::vector<std::string> labels;
    for (const PlotTick& tick : plots[1].acrossTicks())
        labels.push_back(tick.label.toStdString());
    EXPECT_THAT(labels, ::testing::Contains("target"));
    EXPECT_TRUE(plots[0].acrossTicks().empty());
}

TEST(PairSpreadPicture, IsDrawnInsideItsPlots)
{
    expectDrawnInside(spreadPicture(), spreadSize);
}

} // namespace holdband::ui::test
