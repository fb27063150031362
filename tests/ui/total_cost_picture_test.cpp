#include "ui/charts/total_cost.h"

#include "tests/ui/drawn_plots.h"

#include <gmock/gmock.h>

namespace holdband::ui::test {

using ::testing::ElementsAre;

namespace {

constexpr QSizeF costSize(720.0, 360.0);

/// A costs 400 and 1 for each batch, B 300 and 2: equal after 100 batches.
TotalCostPicture costPicture()
{
    results::CostScenario scenario;
    scenario.a = {400.0, {1.0, 0.5, 4.0}};
    scenario.b = {300.0, {2.0, {}, {}}};
    scenario.crossing.kind = analysis::CrossingKind::crosses;
    scenario.crossing.batches = 100.0;
    results::Money money;
    money.scenarios = {scenario};
    money.lastBatch = 200;
    return {money, 0, "at our price", "USD", {"Loop", "Cabinet"}};
}

} // namespace

TEST(TotalCostPicture, ShowsBothLinesTheirBoundsAndWhereTheyCross)
{
    const Plot plot = costPicture().plots(costSize, pictureLook()).at(0);
    EXPECT_EQ(plot.heading(), "Total cost, USD");
    EXPECT_EQ(plot.across(), (ValueRange{0.0, 200.0}));
    EXPECT_EQ(plot.up(), (ValueRange{300.0 - 0.08 * 400.0, 700.0 + 0.08 * 400.0}));
    const auto lines = seriesOf<PlotLine>(plot);
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_THAT(lines[0].points, ElementsAre(QPointF(0.0, 400.0), QPointF(200.0, 600.0)));
    EXPECT_THAT(lines[1].points, ElementsAre(QPointF(0.0, 300.0), QPointF(200.0, 700.0)));
    EXPECT_EQ(lines[1].pen.style(), Qt::DashLine);
    const auto areas = seriesOf<PlotArea>(plot); // B's bounds are not known
    ASSERT_EQ(areas.size(), 1U);
    EXPECT_THAT(areas[0].outline,
                ElementsAre(QPointF(0.0, 400.0), QPointF(200.0, 1200.0), QPointF(200.0, 500.0)));
    const auto dots = seriesOf<PlotDots>(plot);
    ASSERT_EQ(dots.size(), 1U);
    EXPECT_THAT(dots[0].points, ElementsAre(QPointF(100.0, 500.0)));
    EXPECT_TRUE(labelOf(plot, "equal after 100 batches"));
    ASSERT_TRUE(labelOf(plot, "A") && labelOf(plot, "B"));
    EXPECT_GT(labelOf(plot, "A")->at.x(), plot.area().right());
}

TEST(TotalCostPicture, IsDrawnInsideItsPlot)
{
    expectDrawnInside(costPicture(), costSize);
}

} // namespace holdband::ui::test
