// The pictures of a forecast as plain values: bars by stage with their range, past batches, the
// crash's fan.
#include "tests/ui/drawn_plots.h"
#include "ui/charts/forecast_crash.h"
#include "ui/charts/forecast_energy.h"
#include "ui/charts/forecast_past.h"

#include <gtest/gtest.h>

namespace holdband::ui::test {

namespace {

constexpr QSizeF forecastSize(600.0, 300.0);

analysis::EnergyForecast energyOf(double kwh, double halfWidth)
{
    analysis::EnergyForecast made;
    made.kwh = kwh;
    made.halfWidth = halfWidth;
    return made;
}

results::SetupForecast setupOf(const char* name, std::size_t place, double kwh)
{
    results::SetupForecast setup;
    setup.setup.name = name;
    setup.place = place;
    setup.energy.lack = analysis::ForecastLack::none;
    setup.energy.total = energyOf(kwh, std::log(1.25));
    for (const double share : {0.75, 0.25}) {
        analysis::StageForecast stage;
        stage.label = share > 0.5 ? "Primary" : "Crash";
        stage.energy = energyOf(share * kwh, 0.1);
        setup.stages.push_back(stage);
    }
    setup.crash = analysis::CrashDuration{8.0, 6.0, 12.0, {}, 2};
    setup.crashShape = {0.0, 0.5, 1.0};
    analysis::BacktestedBatch past;
    past.batch = std::string(name) + " 1";
    past.cameKwh = 1.1 * kwh;
    past.forecast.lack = analysis::ForecastLack::none;
    past.forecast.total = energyOf(kwh, std::log(1.2));
    setup.backtest.batches.push_back(past);
    return setup;
}

results::NextBatch twoSetups()
{
    results::NextBatch review;
    review.settings.units = UnitSystem::metric;
    analysis::PlacedStage hold;
    hold.span = {Instant{}, Instant{} + std::chrono::hours{96}};
    hold.startTarget = Temperature::celsius(18.0);
    hold.tolerance = TemperatureDifference::kelvins(1.0);
    analysis::PlacedStage crash = hold;
    crash.span = {hold.span.end, hold.span.end + std::chrono::hours{48}};
    crash.startTarget = Temperature::celsius(2.0);
    review.placed.stages = {hold, crash};
    review.crashPlan = analysis::CrashPlan{18.0, 3.0, 20.0};
    review.setups = {setupOf("Loop", 0, 8.0), setupOf("Cabinet", 1, 12.0)};
    return review;
}

std::vector<QRectF> areasOf(const Plot& plot)
{
    std::vector<QRectF> areas;
    for (const PlotArea& area : seriesOf<PlotArea>(plot))
        areas.push_back(area.outline.boundingRect());
    return areas;
}

Plot plotOf(const PlotPicture& picture)
{
    return picture.plots(forecastSize, pictureLook()).at(0);
}

bool hasLabel(const Plot& plot, const QString& text)
{
    return std::any_of(plot.labels().begin(), plot.labels().end(),
                       [&](const PlotLabel& label) { return label.text == text; });
}

} // namespace

TEST(ForecastEnergyPicture, StacksTheStagesAndDrawsTheRange)
{
    const ForecastEnergyPicture picture(twoSetups());
    ASSERT_FALSE(picture.empty());
    const Plot plot = plotOf(picture);
    const std::vector<QRectF> bars = areasOf(plot);
    ASSERT_EQ(bars.size(), 4u);
    EXPECT_NEAR(bars[0].left(), 0.0, 1e-9);
    EXPECT_NEAR(bars[1].left(), 6.0, 1e-9) << "three quarters of 8 kWh";
    EXPECT_NEAR(bars[3].left(), 9.0, 1e-9);
    EXPECT_NEAR(bars[3].right(), 12.0, plot.acrossOf(1.5));
    const PlotLine whisker = seriesOf<PlotLine>(plot).at(0);
    EXPECT_NEAR(whisker.points[0].x(), 8.0 / 1.25, 1e-9);
    EXPECT_NEAR(whisker.points[1].x(), 8.0 * 1.25, 1e-9);
    EXPECT_GE(plot.across().high, 12.0 * 1.25);
    for (const char* text : {"Loop", "Cabinet", "Primary", "Crash", "6.0", "8.0", "12.0"})
        EXPECT_TRUE(hasLabel(plot, QString::fromLatin1(text))) << text;
}

TEST(ForecastEnergyPicture, LeavesOutASetupWithoutAForecast)
{
    results::NextBatch review = twoSetups();
    review.setups[0].energy.lack = analysis::ForecastLack::tooLittle;
    EXPECT_EQ(areasOf(plotOf(ForecastEnergyPicture(review))).size(), 2u);
    review.setups[1].energy.total.reset();
    EXPECT_TRUE(ForecastEnergyPicture(review).empty());
}

TEST(ForecastPastPicture, HasARowForEachBatchThatCouldBeJudged)
{
    results::NextBatch review = twoSetups();
    review.setups[1].backtest.batches[0].forecast.total.reset();
    const ForecastPastPicture picture(review);
    const Plot plot = plotOf(picture);
    const std::vector<QRectF> ranges = areasOf(plot);
    ASSERT_EQ(ranges.size(), 1u);
    EXPECT_NEAR(ranges[0].left(), 8.0 / 1.2, 1e-9);
    EXPECT_NEAR(ranges[0].right(), 8.0 * 1.2, 1e-9);
    EXPECT_NEAR(seriesOf<PlotDots>(plot).at(0).points[0].x(), 8.8, 1e-9) << "what came";
    EXPECT_NEAR(seriesOf<PlotLine>(plot).at(0).points[0].x(), 8.0, 1e-9);
    EXPECT_TRUE(hasLabel(plot, QStringLiteral("Loop 1")));
}

TEST(ForecastCrashPicture, IsAFanFromTurningDownToTheBand)
{
    const ForecastCrashPicture picture(twoSetups());
    const Plot plot = plotOf(picture);
    const PlotLine middle = seriesOf<PlotLine>(plot).at(0);
    EXPECT_EQ(middle.points.front(), QPointF(0.0, 18.0));
    EXPECT_EQ(middle.points.back(), QPointF(8.0, 3.0));
    EXPECT_EQ(middle.points[1], QPointF(4.0, 10.5));
    const std::vector<QRectF> areas = areasOf(plot);
    ASSERT_EQ(areas.size(), 3u) << "the band and two fans";
    EXPECT_NEAR(areas[0].top(), 1.0, 1e-9);
    EXPECT_NEAR(areas[0].bottom(), 3.0, 1e-9);
    EXPECT_NEAR(areas[1].right(), 12.0, 1e-9) << "the latest";
    results::NextBatch none = twoSetups();
    none.crashPlan.reset();
    EXPECT_TRUE(ForecastCrashPicture(none).empty());
}

TEST(ForecastPictures, AreDrawnInsideTheirPlots)
{
    const results::NextBatch review = twoSetups();
    expectDrawnInside(ForecastEnergyPicture(review), forecastSize);
    expectDrawnInside(ForecastPastPicture(review), forecastSize);
    expectDrawnInside(ForecastCrashPicture(review), forecastSize);
}

} // namespace holdband::ui::test
