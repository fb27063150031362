// The chart of a run as data: what the panels draw.
#include "core/results/run/limits_trial.h"
#include "ui/charts/run_chart.h"

#include "ui/charts/deviation_plot.h"
#include "ui/charts/pointer_text.h"
#include "ui/charts/temperature_plot.h"
#include "ui/run/run_tables.h"

#include "tests/analysis/builders.h"

#include <gmock/gmock.h>

namespace holdband::ui {

namespace {

using holdband::test::hour;

constexpr double h = 3.6e6;

results::RunReview reviewOf(analysis::RunInput input)
{
    results::RunReview review;
    review.settings.units = UnitSystem::metric;
    review.figures = analysis::analyseRun(input);
    review.input = std::move(input);
    return review;
}

/// The worked example of the method.
results::RunReview workedReview()
{
    return reviewOf(holdband::test::runInput(
        holdband::test::batchOf({holdband::test::hold("Primary", 20.0)}, 10.0),
        holdband::test::workedSeries(), 90.0));
}

/// 25 °C at pitching, target 20 °C: settles for 4 h.
results::RunReview settlingReview()
{
    return reviewOf(holdband::test::runInput(
        holdband::test::batchOf(
            {holdband::test::hold("Primary", 20.0, 8.0), holdband::test::ramp("Rise", 22.0, 2.0)},
            10.0),
        holdband::test::series({{0, 25.0}, {4, 21.0}, {8, 20.0}, {10, 22.0}}), 600.0));
}

} // namespace

TEST(RunChart, GapsAreWhereNothingIsCovered)
{
    const RunChart chart = chartOf(workedReview());
    EXPECT_THAT(chart.gaps, ::testing::ElementsAre(Stretch{7 * h, 9 * h}));
}

TEST(RunChart, ExcursionsAreMarkedAtTheirPeak)
{
    const RunChart chart = chartOf(workedReview());
    ASSERT_EQ(chart.excursions.size(), 2u);
    const ExcursionMark& above = chart.excursions[0];
    EXPECT_TRUE(above.above);
    EXPECT_NEAR(above.time.fromMs, 1.5 * h, 1.0);
    EXPECT_NEAR(above.time.toMs, 3.5 * h, 1.0);
    EXPECT_NEAR(above.peakMs, 3 * h, 1.0);
    EXPECT_NEAR(above.peakTemperature, 22.0, 1e-9);
    EXPECT_NEAR(above.peakDeviation, 2.0, 1e-9);
    const ExcursionMark& below = chart.excursions[1];
    EXPECT_FALSE(below.above);
    EXPECT_NEAR(below.peakTemperature, 18.5, 1e-9);
    EXPECT_NEAR(below.edgeDeviation, -1.0, 1e-9);
}

TEST(RunChart, ACauseIsShownWithItsExcursionAlsoWithOtherLimits)
{
    results::RunReview review = workedReview();
    const auto at = [&](int minutes) {
        return review.input.span.start + std::chrono::minutes{minutes};
    };
    review.causes.push_back({{}, {{at(90), at(210)}, Side::above, Cause::lidOpen, {}}});
    RunChart chart = chartOf(review);
    ASSERT_EQ(chart.excursions.size(), 2u);
    EXPECT_EQ(chart.excursions[0].cause, "lid open");
    EXPECT_EQ(chart.excursions[1].cause, "");
    EXPECT_TRUE(
        excursionText(chart, chart.excursions[0]).endsWith("1.0 °C above the band · lid open"))
        << excursionText(chart, chart.excursions[0]).toStdString();
    results::Limits wider = results::limitsOf(review);
    wider.tolerance = TemperatureDifference::kelvins(1.5);
    setJudged(chart, results::tryLimits(review, wider).judged);
    ASSERT_EQ(chart.excursions.size(), 1u);
    EXPECT_EQ(chart.excursions[0].cause, "lid open");
}

TEST(RunChart, TheDeviationPanelShowsEveryExcursion)
{
    const RunChart chart = chartOf(workedReview());
    const ValueRange range = deviationRange(chart, chart.span);
    EXPECT_GT(range.high, 2.0);
    EXPECT_LT(range.low, -1.5);
}

TEST(RunChart, BandsFollowTheStages)
{
    const RunChart chart = chartOf(settlingReview());
    ASSERT_EQ(chart.bands.size(), 2u);
    EXPECT_EQ(chart.bands[0].time, (Stretch{0.0, 8 * h}));
    EXPECT_NEAR(chart.bands[0].startTarget, 20.0, 1e-9);
    EXPECT_NEAR(chart.bands[0].endTarget, 20.0, 1e-9);
    EXPECT_NEAR(chart.bands[1].startTarget, 20.0, 1e-9);
    EXPECT_NEAR(chart.bands[1].targetAt(9 * h), 21.0, 1e-9);
    EXPECT_NEAR(chart.bands[1].tolerance, 1.0, 1e-9);
    EXPECT_EQ(chart.stages[1].label, "Rise");
}

TEST(RunChart, SettlingIsHatchedUntilTheArrival)
{
    const RunChart chart = chartOf(settlingReview());
    ASSERT_EQ(chart.settling.size(), 1u);
    EXPECT_NEAR(chart.settling[0].fromMs, 0.0, 1.0);
    EXPECT_NEAR(chart.settling[0].toMs, 4 * h, 1.0);
    EXPECT_TRUE(chart.excursions.empty());
}

TEST(RunChart, FahrenheitConvertsTemperaturesAndDifferences)
{
    results::RunReview review = workedReview();
    review.settings.units = UnitSystem::us;
    const RunChart chart = chartOf(review);
    EXPECT_NEAR(chart.bands[0].startTarget, 68.0, 1e-9);
    EXPECT_NEAR(chart.bands[0].tolerance, 1.8, 1e-9); // a difference of 1 K (NIST SP 811)
    EXPECT_NEAR(chart.excursions[0].peakTemperature, 71.6, 1e-9);
}

TEST(RunChart, TheRibbonIsWiderBetweenReadingsThanAtThem)
{
    analysis::RunInput input = holdband::test::runInput(
        holdband::test::batchOf({holdband::test::hold("Primary", 20.0)}, 10.0),
        holdband::test::workedSeries(), 90.0);
    input.setup = holdband::test::oneMeter({holdband::test::meterReading(0, 5.00),
                                            holdband::test::meterReading(8, 5.80),
                                            holdband::test::meterReading(20, 6.40)},
                                           0.01);
    results::RunReview review = reviewOf(std::move(input));
    review.energyCurve = {{hour(0), 0.0, {}, {}, true, false, false},
                          {hour(8), 0.8, {}, {}, true, false, false},
                          {hour(10), 0.9, {}, {}, false, false, false}};
    review.energyRange =
        results::energyRangeOf(review.input, review.figures.energy, review.energyCurve);
    const RunChart chart = chartOf(review);
    EXPECT_FALSE(chart.energyUnbounded);
    const auto atReading = boundsAt(chart, 8 * h - 1.0);
    const auto between = boundsAt(chart, 4 * h);
    const auto end = boundsAt(chart, 10 * h);
    ASSERT_TRUE(atReading && between && end);
    EXPECT_GT(between->high - between->low, 0.5);
    EXPECT_NEAR(end->low, 0.79, 1e-6); // the worked example of the method
    EXPECT_NEAR(end->high, 1.41, 1e-6);
    EXPECT_NEAR(*energyAt(chart, 9 * h), 0.85, 1e-9);
}

TEST(PointerText, GivesValuesAsText)
{
    const RunChart chart = chartOf(workedReview());
    const QStringList words = wordsAt(chart, hour(3));
    ASSERT_GE(words.size(), 3);
    EXPECT_TRUE(words[0].endsWith("day 0.1")) << words[0].toStdString();
    EXPECT_EQ(words[1], "beer 22.0 · target 20.0 °C");
    EXPECT_EQ(words[2], "+2.0 from target, outside the band");
}

TEST(PointerText, NamesWhatIsUnknown)
{
    const QStringList words = wordsAt(chartOf(workedReview()), hour(8));
    EXPECT_TRUE(words[1].startsWith("beer not known")) << words[1].toStdString();
}

TEST(PointerText, NamesSettling)
{
    const QStringList words = wordsAt(chartOf(settlingReview()), hour(2));
    EXPECT_TRUE(words.contains("settling, not judged"));
}

TEST(RunTables, StagesShowSettlingInsideAndWorst)
{
    const TableText stages = stageTable(settlingReview());
    ASSERT_EQ(stages.rows.size(), 2u);
    EXPECT_EQ(stages.rows[0][1].text, "4 h");
    EXPECT_EQ(stages.rows[0][2].text, "100.0 %");
    EXPECT_EQ(stages.rows[0][4].text, "–");
    const TableText worked = stageTable(workedReview());
    EXPECT_EQ(worked.rows[0][3].text, "+1.00");
}

TEST(RunTables, ExcursionsShowSideLengthAndPeak)
{
    const TableText excursions = excursionTable(workedReview());
    ASSERT_EQ(excursions.rows.size(), 2u);
    EXPECT_EQ(excursions.rows[0][0].text, "▲");
    EXPECT_EQ(excursions.rows[0][2].text, "2 h");
    EXPECT_EQ(excursions.rows[0][3].text, "+1.00 °C");
    EXPECT_EQ(excursions.rows[1][0].text, "▼");
    EXPECT_EQ(excursions.rows[1][3].text, "−0.50 °C");
    const auto spans = excursionSpans(workedReview());
    ASSERT_EQ(spans.size(), 2u);
    EXPECT_EQ(spans[0], (Span{hour(1.5), hour(3.5)}));
}

} // namespace holdband::ui
