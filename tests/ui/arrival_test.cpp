// When the beer will be cold, in the window: the line under the verdict, and the fan in the plot.
#include "tests/analysis/builders.h"
#include "tests/ui/drawn_plots.h"
#include "tests/ui/sample_window.h"

#include "core/exchange/load.h"
#include "core/text/numbers.h"
#include "core/text/times.h"
#include "ui/charts/pointer_text.h"
#include "ui/charts/run_charts.h"
#include "ui/charts/run_picture.h"
#include "ui/charts/temperature_plot.h"
#include "ui/report/compose/run_document.h"
#include "ui/run/explained_label.h"
#include "ui/run/run_page.h"
#include "ui/run/verdict_header.h"
#include "ui/window/pages.h"
#include "ui/words/words.h"

#include <QTest>
#include <QToolTip>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

using holdband::test::hour;

constexpr double h = 3.6e6;

/// 18 °C for 10 h, then down to 2 ± 1 °C; 6 °C after 8 h, and cold after another `low` to `high` h.
results::RunReview crashReview(std::optional<double> low, std::optional<double> middle,
                               std::optional<double> high)
{
    results::RunReview review;
    review.settings.units = UnitSystem::metric;
    review.input = holdband::test::runInput(
        holdband::test::batchOf(
            {holdband::test::hold("Primary", 18.0, 10.0), holdband::test::hold("Crash", 2.0)}, {}),
        holdband::test::series({{0, 18}, {5, 18}, {10, 18}, {14, 10}, {18, 6}}), 600.0);
    review.figures = analysis::analyseRun(review.input);
    results::ArrivalReview arrival;
    arrival.now = hour(18);
    arrival.beer = Temperature::celsius(6.0);
    arrival.target = Temperature::celsius(2.0);
    arrival.edge = Temperature::celsius(3.0);
    const auto at = [](const std::optional<double>& hours) {
        return hours ? std::optional(hour(18 + *hours)) : std::nullopt;
    };
    arrival.low = at(low);
    arrival.middle = at(middle);
    arrival.high = at(high);
    review.arrival = arrival;
    return review;
}

Plot plotOf(const RunChart& chart)
{
    TemperaturePlot kind;
    kind.setChart(&chart);
    return kind.plot({{860.0, 300.0}, chart.wholeSpan(), chart.wholeSpan()}, pictureLook());
}

} // namespace

TEST(ArrivalFan, ReachesFromTheLastReadingToTheEdgeOfTheBand)
{
    const RunChart chart = chartOf(crashReview(3.0, 6.0, 10.0));
    ASSERT_TRUE(chart.fan);
    EXPECT_EQ(outlineOf(*chart.fan),
              QPolygonF(QList<QPointF>{QPointF(18 * h, 6.0), QPointF(21 * h, 3.0),
                                       QPointF(28 * h, 3.0)}));
    EXPECT_EQ(chart.wholeSpan().end, hour(28)) << "the chart goes on to the latest arrival";
    EXPECT_EQ(chart.span.end, hour(18));
    EXPECT_TRUE(chart.gaps.empty()) << "what has not come yet is no gap";
    const Plot plot = plotOf(chart);
    EXPECT_NEAR(plot.across().high, 28 * h, 1.0);
    const auto areas = seriesOf<PlotArea>(plot);
    ASSERT_EQ(areas.size(), 2u) << "the band, and the fan over it";
    EXPECT_TRUE(areas[0].outline.containsPoint({25 * h, 2.0}, Qt::OddEvenFill))
        << "the band goes on";
    EXPECT_EQ(areas[1].outline, outlineOf(*chart.fan));
    EXPECT_LT(areas[1].fill.alpha(), 80) << "pale";
    const auto lines = seriesOf<PlotLine>(plot);
    ASSERT_EQ(lines.size(), 3u) << "the middle, the target and the beer";
    EXPECT_EQ(lines[0].points,
              QPolygonF(QList<QPointF>{QPointF(18 * h, 6.0), QPointF(24 * h, 3.0)}));
    EXPECT_EQ(lines[0].pen.style(), Qt::DashLine);
    EXPECT_EQ(lines[1].points.back(), QPointF(28 * h, 2.0));
}

TEST(ArrivalFan, EndsAfterTwoDays)
{
    const RunChart chart = chartOf(crashReview(10.0, 40.0, 160.0));
    EXPECT_EQ(chart.wholeSpan().end, hour(18 + 48));
    EXPECT_EQ(outlineOf(*chart.fan).back(), QPointF(178 * h, 3.0)) << "its shape stays true";
}

TEST(ArrivalFan, WithAnOpenTopStaysAtTheTemperatureOfNow)
{
    const RunChart chart = chartOf(crashReview(5.0, {}, {}));
    ASSERT_TRUE(chart.fan);
    EXPECT_EQ(outlineOf(*chart.fan),
              QPolygonF(QList<QPointF>{QPointF(18 * h, 6.0), QPointF(23 * h, 3.0),
                                       QPointF(28 * h, 3.0), QPointF(28 * h, 6.0)}));
    EXPECT_EQ(seriesOf<PlotLine>(plotOf(chart)).size(), 2u) << "no middle";
}

TEST(ArrivalFan, IsAbsentWithoutATime)
{
    const RunChart chart = chartOf(crashReview({}, {}, {}));
    EXPECT_FALSE(chart.fan);
    EXPECT_EQ(chart.wholeSpan(), chart.span);
}

TEST(ArrivalFan, IsDrawnInsideItsPlotAlsoOnPaper)
{
    expectDrawnInside(RunPicture(chartOf(crashReview(3.0, 6.0, 160.0))), {900.0, 700.0});
}

TEST(ArrivalReport, HasTheDatedSentenceAndNamesTheFan)
{
    results::RunReview review = crashReview(3.0, 6.0, 10.0);
    review.arrival->datedSentence = "Cold at about 9 Mar 03:00.";
    const report::Document document = report::runDocument(review, {}, {});
    QStringList said;
    QString caption;
    for (const report::Block& block : document.blocks) {
        if (const auto* paragraph = std::get_if<report::Paragraph>(&block))
            said << paragraph->text;
        else if (const auto* figure = std::get_if<report::Figure>(&block))
            caption = figure->caption;
    }
    EXPECT_TRUE(said.contains("Cold at about 9 Mar 03:00."));
    EXPECT_TRUE(caption.contains("Pale fan"));
}

TEST(ArrivalFan, IsNotReadYetUnderThePointer)
{
    const RunChart chart = chartOf(crashReview(3.0, 6.0, 10.0));
    EXPECT_THAT(wordsAt(chart, hour(20)).join("|").toStdString(),
                ::testing::HasSubstr("not read yet"));
    EXPECT_THAT(wordsAt(chart, hour(17)).join("|").toStdString(),
                ::testing::Not(::testing::HasSubstr("not read yet")));
}

/// "Cold 1": turned down on 12 March at 7:00 in Denver, read until 16:00. "Done" ended before.
class ArrivalWindowTest : public WindowTest {
protected:
    std::unique_ptr<MainWindow> openCrash()
    {
        std::string rows = "time,Beer (C)\n2026-03-10T13:00:00Z,18\n";
        for (int i = 0; i <= 36; ++i) // method, section 8.3
            rows +=
                rfc3339Utc(*parseRfc3339("2026-03-12T13:00:00Z") + std::chrono::minutes{15 * i}) +
                "," + shortestText(2.0 + 16.0 * std::exp(-0.05 * i)) + "\n";
        write("crash.csv", rows);
        write("crash.json", R"json({"holdband":1,"zone":"America/Denver",
            "setups":[{"name":"Loop"}],"sensors":[{"name":"Beer","reads":"beer"}],
            "batches":[{"name":"Done","setup":"Loop","pitched":"2026-03-10 04:00",
            "ended":"2026-03-11 04:00","beer_sensor":"Beer","tolerance_c":1,
            "schedule":[{"stage":"Primary","target_c":18}]},
            {"name":"Cold 1","setup":"Loop","pitched":"2026-03-12 04:00",
            "beer_sensor":"Beer","tolerance_c":1,"schedule":[
            {"stage":"Primary","target_c":18,"hours":3},{"stage":"Crash","target_c":2}]}],
            "files":[{"file":"crash.csv","time":"time","columns":{"Beer":"Beer (C)"}}]})json");
        const auto loaded =
            exchange::loadDescription(core(path("crash.holdband")), core(path("crash.json")), now);
        EXPECT_TRUE(loaded) << loaded.error().sentence();
        return openWindow(path("crash.holdband"));
    }
};

TEST_F(ArrivalWindowTest, IsALineUnderTheVerdictThatExplainsItself)
{
    const auto window = openCrash();
    RunPage* run = window->pages()->run();
    ASSERT_EQ(run->batch(), "Cold 1");
    ExplainedLabel* line = run->verdict()->arrival();
    ASSERT_TRUE(line->isVisible());
    // It is 18:12 and the gap limit is 45 min, so the log is silent.
    EXPECT_EQ(line->accessibleName(), "Cold at about 12 Mar 22:00 (12 Mar 19:30 – 13 Mar 02:20). "
                                      "Last reading 12 Mar 16:00.");
    EXPECT_EQ(run->charts()->time().shown().end, run->charts()->chart()->wholeSpan().end);
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    line->setFocus();
    QTest::keyClick(line, Qt::Key_F1);
    EXPECT_TRUE(QToolTip::isVisible());
    EXPECT_THAT(QToolTip::text().toStdString(), ::testing::HasSubstr("curves of cooling"));
    QToolTip::hideText();
    window->openRun("Done");
    settle(*window);
    EXPECT_FALSE(line->isVisible()) << "that batch has ended";
}

} // namespace holdband::ui::test
