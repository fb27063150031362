// What stands in a report: the figures of the review, and every part of the screen.
#include "ui/report/report.h"

#include "core/exchange/load.h"
#include "core/results/comparison/side_by_side.h"
#include "core/results/run/run_review.h"
#include "core/text/times.h"
#include "tests/ui/report_test.h"
#include "ui/report/compose/cells.h"
#include "ui/report/compose/plain_text.h"
#include "ui/report/render/csv_renderer.h"
#include "ui/report/render/html_renderer.h"
#include "ui/words/words.h"

#include <QFile>
#include <QFontDatabase>
#include <gmock/gmock.h>

namespace holdband::report::test {

using ::testing::HasSubstr;

TEST_F(ReportTest, ThereIsAFont)
{
    EXPECT_FALSE(QFontDatabase::families().isEmpty());
    EXPECT_TRUE(QFontMetrics(QFont()).inFont(u'A'));
}

TEST_F(ReportTest, TheFiguresAreThoseOfTheReview)
{
    const auto review = results::reviewRun(*m_logbook, "Pale 1");
    ASSERT_TRUE(review);
    const Rows rows = parsed(asCsv(of({"Pale 1"})));
    for (const QStringList& row : rows)
        EXPECT_EQ(row.size(), 6);
    EXPECT_EQ(value(rows, "sentence", "", "verdict"), ui::shown(review->words.headline) + u'.');
    EXPECT_EQ(value(rows, "Energy", "Total metered", "kWh"),
              rawNumber(review->figures.energy.whole.kwh));
    EXPECT_EQ(value(rows, "Stages", "Primary", "inside").toDouble(),
              *review->figures.judged.asPlanned.totals.insideShare());
    const analysis::PlacedStage& stage = review->figures.judged.stages[0];
    const analysis::Excursion& excursion =
        review->figures.judged.asPlanned.stages[0].excursions.at(0);
    const Instant start = stage.span.start + Milliseconds{std::llround(excursion.startMs)};
    const QString name = ui::shown(localIso(start, review->zone));
    EXPECT_EQ(value(rows, "Excursions", name, "side"), "above");
    EXPECT_EQ(value(rows, "Excursions", name, "outside").toDouble(),
              excursion.outsideMs / 3'600'000.0);
    EXPECT_EQ(value(rows, "Computed from", "", "Logbook"), "small.holdband");
    EXPECT_THAT(value(rows, "Computed from", "", "Beer sensor").toStdString(),
                HasSubstr("Loop beer, accurate to ± 0.36 °F"));
}

namespace {

QStringList headingsOf(const Document& document)
{
    QStringList headings;
    for (const Block& block : document.blocks) {
        if (const auto* heading = std::get_if<Heading>(&block))
            headings << heading->text;
    }
    return headings;
}

QStringList figuresOf(const Document& document)
{
    QStringList figures;
    for (const Block& block : document.blocks) {
        if (const auto* figure = std::get_if<Figure>(&block))
            figures << figure->title;
    }
    return figures;
}

} // namespace

TEST_F(ReportTest, TwoBatchesSideBySideHaveEveryPartOfTheScreen)
{
    const Document document = of({"Pale 1", "Pale 2"});
    ASSERT_TRUE(document.glance) << "beside the picture's chart";
    EXPECT_THAT(figuresOf(document),
                ::testing::IsSupersetOf<QString>({"Energy of both over the same elapsed time",
                                                  "Deviation of both from target",
                                                  "Time spent at each deviation"}));
    EXPECT_THAT(headingsOf(document),
                ::testing::IsSupersetOf<QString>({"Measures", "In the same weather", "Money",
                                                  "Judgement sheet", "Computed from"}));
}

TEST_F(ReportTest, TheBasisOfEachOfSeveralBatchesIsListed)
{
    const char* const table = "What each batch rests on";
    const auto review = results::reviewRun(*m_logbook, "Pale 1");
    ASSERT_TRUE(review);
    const double coverage = *review->figures.judged.asPlanned.totals.coverage();
    const Rows season = parsed(asCsv(of({"Loop"})));
    EXPECT_EQ(value(season, table, "Pale 1", "covered").toDouble(), coverage);
    EXPECT_THAT(value(season, table, "Pale 1", "sensors").toStdString(),
                HasSubstr("Loop beer, accurate to ± 0.36 °F"));
    EXPECT_EQ(value(season, table, "Pale 1", "limits"),
              "band ± 3 °F; gap limit 1 h 30 min (3 × the median interval); ignored "
              "excursions: none; settled after 1 h inside the band; an excursion ends after 15 min "
              "back inside; coverage needed 90 %");
    const Rows pair = parsed(asCsv(of({"Pale 1", "Pale 2"})));
    EXPECT_EQ(value(pair, table, "A · Pale 1", "covered").toDouble(), coverage);
    EXPECT_NE(value(pair, table, "B · Pale 2", "meters"), QString());
}

TEST_F(ReportTest, TwoBatchesAreCountedFromAStage)
{
    const auto document = compose(*m_logbook, {"Pale 1", "Pale 2"}, {"Primary", {}});
    ASSERT_TRUE(document) << document.error().sentence();
    const std::string page = asHtml(*document, ui::Scheme::light).toStdString();
    EXPECT_THAT(page, HasSubstr("Counted from the start of Primary;"));
    EXPECT_THAT(page, HasSubstr("are of the whole runs."));
    const auto none = compose(*m_logbook, {"Pale 1", "Pale 2"}, {"Crash", {}});
    ASSERT_FALSE(none);
    EXPECT_THAT(none.error().sentence(), HasSubstr("there is no stage \"Crash\" in both"));
}

TEST_F(ReportTest, TheBoundsOfTheMeasuresAreAmongTheFigures)
{
    const auto review = results::reviewSideBySide(*m_logbook, "Pale 1", "Pale 2");
    ASSERT_TRUE(review);
    const Rows rows = parsed(asCsv(of({"Pale 1", "Pale 2"})));
    const analysis::Measure& energy = review->measures.at(0);
    ASSERT_TRUE(energy.a && energy.a->low && energy.ratio && energy.ratio->high);
    EXPECT_EQ(value(rows, "Bounds of the measures", "energy_kwh", "A, minimum").toDouble(),
              *energy.a->low);
    EXPECT_EQ(value(rows, "Bounds of the measures", "energy_kwh", "A ÷ B, maximum").toDouble(),
              *energy.ratio->high);
}

TEST_F(ReportTest, ANumberAndItsUnitStayOnOneLine)
{
    EXPECT_EQ(unbroken("8.94 kWh (3.89 – 13.99), worst 3.1 °F past, 68.2 % of 3 h 8 min"),
              "8.94\u00A0kWh (3.89\u00A0–\u2060\u00A013.99), worst 3.1\u00A0°F past, "
              "68.2\u00A0% of 3\u00A0h 8\u00A0min");
    EXPECT_EQ(unbroken("Ale 3 and 2 wide"), "Ale 3 and 2 wide");
}

TEST_F(ReportTest, TheFiguresOfAJudgementAreThoseOfTheReview)
{
    const auto review = results::reviewSideBySide(*m_logbook, "Pale 1", "Pale 2");
    ASSERT_TRUE(review);
    const Rows rows = parsed(asCsv(of({"Pale 1", "Pale 2"})));
    ASSERT_TRUE(review->judgement.sheet.totals);
    EXPECT_EQ(value(rows, "Judgement sheet", "Total", "A").toDouble(),
              review->judgement.sheet.totals->a);
    EXPECT_EQ(value(rows, "Judgement sheet", "Total", "B").toDouble(),
              review->judgement.sheet.totals->b);
    EXPECT_EQ(value(rows, "What it costs", "Parts", "A").toDouble(),
              review->money.partsA.value_or(0.0));
}

TEST_F(ReportTest, ForSetupsEveryBatchsFigureIsListed)
{
    const QString logbook = path("ended.holdband");
    QFile small(path("small.json"));
    ASSERT_TRUE(small.open(QIODevice::ReadOnly));
    QString description = QString::fromUtf8(small.readAll());
    description.replace("2026-03-10 18:00\",",
                        "2026-03-10 18:00\", \"ended\": \"2026-03-12 12:00\",");
    write("ended.json", description.toStdString());
    ASSERT_TRUE(
        exchange::loadDescription(logbook.toStdString(), path("ended.json").toStdString(), now));
    open(logbook);
    const auto review = results::reviewSideBySide(*m_logbook, "Loop", "Cabinet");
    ASSERT_TRUE(review) << review.error().sentence();
    const Document document = of({"Loop", "Cabinet"});
    EXPECT_TRUE(headingsOf(document).contains("Batch by batch"));
    EXPECT_EQ(document.headline, ui::shown(review->glance.answer));
    ASSERT_TRUE(document.figure()) << "the picture of two setups";
    EXPECT_EQ(document.figure()->title, "At a glance");
    EXPECT_TRUE(document.figure()->alt.contains("Energy, kWh: A ")) << "and it names its figures";
    const Rows rows = parsed(asCsv(document));
    EXPECT_EQ(value(rows, "Every batch’s figures", "Pale 1", "energy_kwh").toDouble(),
              review->batchFigures.at(0).a.batches.at(0).value);
    EXPECT_EQ(value(rows, "Every batch’s figures", "Pale 2", "inside_share").toDouble(), 1.0);
}

} // namespace holdband::report::test
