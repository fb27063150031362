#include "ui/charts/pair_energy.h"

#include "tests/ui/drawn_plots.h"

#include <gmock/gmock.h>

namespace holdband::ui::test {

using ::testing::ElementsAre;

namespace {

constexpr QSizeF energySize(720.0, 403.0);

/// A's crash begins at 48 h, B's at 60 h. The upper bound of B's energy is not known.
PairEnergyPicture energyPicture()
{
    results::SideBySide pair;
    const auto ratio = [](double value) {
        return analysis::Bounded{value, value - 0.2, value + 0.5};
    };
    pair.ratioCurve = {{0.0, {0.0, 0.0, 0.0}, {0.0, 0.0, {}}, {}},
                       {24.0, {2.0, 1.5, 2.5}, {1.0, 0.8, {}}, ratio(2.0)},
                       {72.0, {9.0, 8.0, 40.0}, {6.0, 5.0, {}}, ratio(1.5)}};
    pair.deviations.crashA = 48.0;
    pair.deviations.crashB = 60.0;
    pair.text.alignedFrom = "pitching";
    return {pair, {"Ale 2", "Ale 3"}};
}

} // namespace

TEST(PairEnergyPicture, ShowsBothEnergiesTheirBoundsAndCrashes)
{
    const auto plots = energyPicture().plots(energySize, pictureLook());
    ASSERT_EQ(plots.size(), 2U);
    const Plot& energies = plots[0];
    EXPECT_EQ(energies.heading(), "Energy since pitching, kWh");
    EXPECT_EQ(energies.across(), (ValueRange{0.0, 72.0}));
    EXPECT_NEAR(energies.up().high, 1.4 * 9.0 * 1.06, 1e-9); // the bound of 40 is cut off
    const auto lines = seriesOf<PlotLine>(energies);
    ASSERT_EQ(lines.size(), 4U); // the crashes, A, B
    EXPECT_EQ(lines[0].points.front().x(), 48.0);
    EXPECT_EQ(lines[0].points.back().y(), energies.up().high);
    EXPECT_EQ(lines[1].points.front().x(), 60.0);
    EXPECT_LT(lines[1].points.back().y(), energies.up().high); // below the label of A's
    EXPECT_THAT(lines[2].points,
                ElementsAre(QPointF(0.0, 0.0), QPointF(24.0, 2.0), QPointF(72.0, 9.0)));
    EXPECT_EQ(lines[3].pen.style(), Qt::DashLine);
    const auto ribbons = seriesOf<PlotArea>(energies);
    ASSERT_EQ(ribbons.size(), 2U);
    EXPECT_EQ(ribbons[0].outline.size(), 6);
    EXPECT_TRUE(ribbons[1].outline.isEmpty());
    EXPECT_TRUE(labelOf(energies, "A 9.0") && labelOf(energies, "B 6.0"));
    EXPECT_TRUE(labelOf(energies, "A’s crash") && labelOf(energies, "B’s crash"));
}

TEST(PairEnergyPicture, ShowsTheRatioOnTheSameTimes)
{
    const auto plots = energyPicture().plots(energySize, pictureLook());
    const Plot& ratio = plots.at(1);
    EXPECT_EQ(ratio.across(), plots[0].across());
    EXPECT_EQ(ratio.area().left(), plots[0].area().left());
    EXPECT_EQ(ratio.area().right(), plots[0].area().right());
    const auto lines = seriesOf<PlotLine>(ratio);
    ASSERT_EQ(lines.size(), 2U); // 1, and the ratio
    EXPECT_EQ(lines[0].points.front().y(), 1.0);
    EXPECT_THAT(lines[1].points, ElementsAre(QPointF(24.0, 2.0), QPointF(72.0, 1.5)));
    EXPECT_TRUE(labelOf(ratio, "1.50 ×"));
    EXPECT_GE(ratio.upTicks().size(), 3U);
}

TEST(PairEnergyPicture, IsDrawnInsideItsPlots)
{
    expectDrawnInside(energyPicture(), energySize);
}

} // namespace holdband::ui::test
