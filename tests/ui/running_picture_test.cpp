#include "ui/charts/running_picture.h"

#include "core/text/times.h"
#include "tests/ui/drawn_plots.h"

#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

constexpr QSizeF runningSize(900.0, 220.0);

/// Two batches of one setup whose lines end close together, and one of another.
RunningPicture runningPicture()
{
    const Instant start = *parseRfc3339("2026-03-07T18:00:00Z");
    const auto point = [&](int hours, double kwh, bool read, bool hole = false) {
        results::EnergyPoint made;
        made.at = start + std::chrono::hours{hours};
        made.kwh = kwh;
        made.read = read;
        made.afterHole = hole;
        return made;
    };
    results::RunningEnergy energy;
    energy.now = start + std::chrono::hours{60};
    energy.batches = {{"Ale 1", 0, {point(0, 0.0, true), point(24, 5.0, true)}},
                      {"Ale 2",
                       0,
                       {point(12, 0.0, false), point(24, 2.0, true), point(30, 2.0, true, true),
                        point(48, 5.01, false)}},
                      {"Stout 1", 1, {point(0, 0.0, true), point(48, 1.0, true)}}};
    return RunningPicture(std::move(energy));
}

} // namespace

TEST(RunningPicture, DrawsALineForEachBatchInItsSetupsColour)
{
    const Plot plot = runningPicture().plots(runningSize, pictureLook()).at(0);
    const auto lines = seriesOf<PlotLine>(plot);
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(lines[0].pen.color(), setupLine(0, plot.colours()));
    EXPECT_EQ(lines[1].pen.color(), setupLine(0, plot.colours()));
    EXPECT_EQ(lines[2].pen.color(), setupLine(1, plot.colours()));
    EXPECT_EQ(lines[0].points.back(), QPointF(24.0 * 3'600'000.0, 5.0));
    ASSERT_EQ(lines[1].points.size(), 5) << "with a break where nothing was metered";
    EXPECT_TRUE(qIsNaN(lines[1].points[2].x()));
    const auto dots = seriesOf<PlotDots>(plot);
    ASSERT_EQ(dots.size(), 3U);
    EXPECT_EQ(dots[1].points.size(), 2) << "the readings";
    EXPECT_EQ(plot.across().high, 60.0 * 3'600'000.0) << "up to now";
    EXPECT_NEAR(plot.up().high, 5.01 * 1.08, 1e-9);
    ASSERT_FALSE(plot.acrossTicks().empty());
    EXPECT_EQ(plot.acrossTicks()[0].label, "8 Mar");
    EXPECT_TRUE(plot.acrossTicks()[0].strong);
}

TEST(RunningPicture, NamesTheBatchesAtTheEndsOfTheirLines)
{
    const Plot plot = runningPicture().plots(runningSize, pictureLook()).at(0);
    const PlotLabel* first = labelOf(plot, "Ale 1, 5.0 kWh");
    const PlotLabel* second = labelOf(plot, "Ale 2, 5.0 kWh");
    const PlotLabel* third = labelOf(plot, "Stout 1, 1.0 kWh");
    ASSERT_TRUE(first && second && third);
    const double line = QFontMetrics(plot.bold()).height();
    EXPECT_GE(first->at.y() - second->at.y(), line - 1e-9) << "the one with more energy is above";
    EXPECT_LE(third->at.y(), plot.area().bottom());
    for (const PlotLabel* label : {first, second, third}) {
        EXPECT_GT(label->at.x(), plot.area().right());
        EXPECT_LE(label->at.x() + QFontMetrics(plot.bold()).horizontalAdvance(label->text),
                  runningSize.width());
    }
    EXPECT_EQ(third->colour, setupText(1, plot.colours()));
}

TEST(RunningPicture, SaysItsFiguresInWords)
{
    EXPECT_EQ(runningPicture().summary(), "Ale 1: 5.0 kWh since 7 Mar 18:00 · Ale 2: 5.0 kWh since "
                                          "8 Mar 06:00 · Stout 1: 1.0 kWh since 7 Mar 18:00");
}

TEST(RunningPicture, IsDrawnInsideItsPlot)
{
    expectDrawnInside(runningPicture(), runningSize, 4.0); // dots may be on the axes
}

TEST(SpreadLabels, LeavesThemInOrderAndAboveTheBottom)
{
    std::vector<double> heights{100.0, 30.0, 98.0, 99.0};
    spreadLabels(heights, 10.0, 105.0);
    EXPECT_THAT(heights, testing::ElementsAre(105.0, 30.0, 85.0, 95.0));
    std::vector<double> apart{10.0, 50.0};
    spreadLabels(apart, 10.0, 105.0);
    EXPECT_THAT(apart, testing::ElementsAre(10.0, 50.0));
}

} // namespace holdband::ui::test
