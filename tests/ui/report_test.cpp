// The contents of reports, read back from each form.
#include "ui/report/report.h"

#include "core/exchange/load.h"
#include "core/results/comparison/side_by_side.h"
#include "core/results/run/run_review.h"
#include "core/text/times.h"
#include "tests/ui/sample_window.h"
#include "ui/report/compose/cells.h"
#include "ui/report/compose/plain_text.h"
#include "ui/report/render/csv_renderer.h"
#include "ui/report/render/html_renderer.h"
#include "ui/report/render/pdf_renderer.h"
#include "ui/theme/colours.h"
#include "ui/words/words.h"

#include <QFile>
#include <QFontDatabase>
#include <QSvgRenderer>
#include <QXmlStreamReader>
#include <filesystem>
#include <gmock/gmock.h>

namespace holdband::report::test {

using ::testing::HasSubstr;
using ::testing::Not;

namespace {

using Rows = std::vector<QStringList>;

/// RFC 4180, strictly: every line ends in CR LF, quotes are only around and inside fields.
Rows parsed(const QByteArray& csv)
{
    const QString text = QString::fromUtf8(csv);
    Rows rows;
    QStringList row;
    QString field;
    bool inQuotes = false;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const QChar c = text[i];
        const QChar next = i + 1 < text.size() ? text[i + 1] : QChar();
        if (inQuotes && c == u'"' && next == u'"') {
            field += c;
            ++i;
        } else if (c == u'"') {
            inQuotes = !inQuotes;
        } else if (!inQuotes && c == u',') {
            row << std::exchange(field, {});
        } else if (!inQuotes && c == u'\r' && next == u'\n') {
            row << std::exchange(field, {});
            rows.push_back(std::exchange(row, {}));
            ++i;
        } else {
            field += c;
        }
    }
    EXPECT_TRUE(!inQuotes && row.isEmpty() && field.isEmpty());
    return rows;
}

class ReportTest : public ui::test::WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        open(makeLogbook());
    }

    void open(const QString& logbook)
    {
        auto opened = store::LogbookFile::open(logbook.toStdString(), store::Access::read, now);
        ASSERT_TRUE(opened) << opened.error().sentence();
        m_logbook = std::move(*opened);
    }

    Document of(const std::vector<std::string>& names) const
    {
        const auto document = compose(*m_logbook, names);
        EXPECT_TRUE(document) << (document ? "" : document.error().sentence());
        return document.value_or(Document{});
    }

    QString value(const Rows& rows, const QString& part, const QString& item,
                  const QString& figure) const
    {
        for (const QStringList& row : rows) {
            if (row[0] == part && row[1] == item && row[2] == figure)
                return row[3];
        }
        return {};
    }

    std::unique_ptr<store::LogbookFile> m_logbook;
};

} // namespace

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
        EXPECT_EQ(row.size(), 5);
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
    const Rows rows = parsed(asCsv(document));
    EXPECT_EQ(value(rows, "Every batch’s figures", "Pale 1", "energy_kwh").toDouble(),
              review->batchFigures.at(0).a.batches.at(0).value);
    EXPECT_EQ(value(rows, "Every batch’s figures", "Pale 2", "inside_share").toDouble(), 1.0);
}

TEST_F(ReportTest, APageIsWellFormedAndHasEveryBlock)
{
    const Document document = of({"Pale 1"});
    QXmlStreamReader xml(asHtml(document, ui::Scheme::light));
    QStringList tags;
    while (!xml.atEnd()) {
        if (xml.readNext() == QXmlStreamReader::StartElement)
            tags << xml.name().toString();
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString() << xml.lineNumber();
    EXPECT_EQ(tags.count("svg"), 1);
    std::ptrdiff_t tables = 0;
    std::ptrdiff_t headings = 0;
    for (const Block& block : document.blocks) {
        tables += std::holds_alternative<Table>(block);
        headings += std::holds_alternative<Heading>(block);
    }
    EXPECT_EQ(tags.count("table"), tables);
    EXPECT_EQ(tags.count("caption"), tables);
    EXPECT_EQ(tags.count("h2"), headings);
}

TEST_F(ReportTest, ADarkPageIsLightOnPaper)
{
    const Document document = of({"Pale 1"});
    const QString dark = QString::fromUtf8(asHtml(document, ui::Scheme::dark));
    const QString darkCard = ui::coloursOf(ui::Scheme::dark).card.name();
    const QString lightCard = ui::coloursOf(ui::Scheme::light).card.name();
    const qsizetype print = dark.indexOf(QStringLiteral("@media print"));
    ASSERT_GT(print, 0);
    EXPECT_LT(dark.indexOf(QStringLiteral("--card: ") + darkCard), print);
    EXPECT_GT(dark.indexOf(QStringLiteral("--card: ") + lightCard), print);
    EXPECT_EQ(dark.count(QStringLiteral("<svg")), 2) << "one for the screen, one for paper";
    EXPECT_EQ(dark.count(QStringLiteral("<div class=\"paper\">")), 1);
}

TEST_F(ReportTest, EverySubjectHasEveryFormat)
{
    ReportOptions small;
    small.size = QSize(640, 480);
    for (const auto& names :
         {std::vector<std::string>{"Pale 1"}, {"Pale 1", "Pale 2"}, {"Loop"}, {"Cabinet"}}) {
        const Document document = of(names);
        for (const Form form : {Form::pdf, Form::html, Form::csv, Form::png, Form::svg}) {
            const auto bytes = rendered(document, form, small);
            ASSERT_TRUE(bytes) << bytes.error().sentence();
            EXPECT_GT(bytes->size(), 500);
        }
    }
}

TEST_F(ReportTest, PicturesShowTheBandAndAreLightOrDark)
{
    const Document document = of({"Pale 1"});
    for (const ui::Scheme scheme : {ui::Scheme::light, ui::Scheme::dark}) {
        const ui::Colours& colours = ui::coloursOf(scheme);
        const QImage image = asImage(document, portrait, scheme);
        ASSERT_EQ(image.size(), portrait);
        EXPECT_EQ(image.pixelColor(1, 1), colours.card);
        int beer = 0;
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x)
                beer += image.pixelColor(x, y) == colours.beer;
        }
        EXPECT_GT(beer, 1500);
    }
}

/// "matrix(1,0,0,1,16,66)"
QTransform transformOf(const QString& text)
{
    const QStringList numbers = text.mid(7).chopped(1).split(u',');
    if (numbers.size() != 6)
        return {};
    return QTransform(numbers[0].toDouble(), numbers[1].toDouble(), numbers[2].toDouble(),
                      numbers[3].toDouble(), numbers[4].toDouble(), numbers[5].toDouble());
}

/// The points of a polyline "x,y x,y" or of a path "Mx,yLx,y".
QPolygonF pointsOf(QString text)
{
    QPolygonF points;
    for (const QChar command : {u'M', u'L', u'C', u'Z'})
        text.replace(command, u' ');
    for (const QString& pair : text.split(u' ', Qt::SkipEmptyParts)) {
        const QStringList place = pair.split(u',');
        if (place.size() == 2)
            points << QPointF(place[0].toDouble(), place[1].toDouble());
    }
    return points;
}

/// The chart of an SVG stays inside its frame although SVG does not clip.
TEST_F(ReportTest, AnSvgDrawsNothingOutside)
{
    QXmlStreamReader xml(asSvg(of({"Pale 1"}), QSize(1920, 1080), ui::Scheme::light));
    QTransform transform;
    QRectF frame;
    qsizetype count = 0;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement)
            continue;
        const auto attribute = [&](const char* name) {
            return xml.attributes().value(QLatin1String(name)).toString();
        };
        if (xml.name() == u"svg") {
            const QStringList box = attribute("viewBox").split(u' ');
            frame = QRectF(0.0, 0.0, box[2].toDouble() + 1.0, box[3].toDouble() + 1.0);
        }
        if (xml.name() == u"g")
            transform = transformOf(attribute("transform"));
        const QPolygonF points = pointsOf(attribute("points") + attribute("d"));
        count += points.size();
        for (const QPointF& point : points)
            EXPECT_TRUE(frame.contains(transform.map(point))) << point.x() << ' ' << point.y();
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    EXPECT_GT(count, 300);
    EXPECT_TRUE(QSvgRenderer(asSvg(of({"Pale 2"}), landscape, ui::Scheme::dark)).isValid());
}

TEST_F(ReportTest, FormulasAreEscapedAndNumbersAreNot)
{
    Document document;
    document.kind = "k";
    document.title = "=1+1";
    Table table;
    table.title = "T";
    table.columns = {words("name"), figures("figure", "K"), words("text")};
    table.rows = {{{"+name"}, {"−0.5", "-0.5"}, {"-5"}},
                  {{"\tx"}, {"1e-7", "1e-7"}, {"@a,\"b\"\r\nc"}}};
    document.add(table);
    const Rows rows = parsed(asCsv(document));
    EXPECT_EQ(rows[2], QStringList({"report", "", "of", "'=1+1", ""}));
    EXPECT_EQ(rows[3], QStringList({"T", "'+name", "figure", "-0.5", "K"}));
    EXPECT_EQ(rows[4], QStringList({"T", "'+name", "text", "'-5", ""}));
    EXPECT_EQ(rows[5], QStringList({"T", "'\tx", "figure", "1e-7", "K"}));
    EXPECT_EQ(rows[6], QStringList({"T", "'\tx", "text", "'@a,\"b\"\r\nc", ""}));
}

TEST(PlainText, StaysOnOneLineInItsOwnDirection)
{
    EXPECT_EQ(calm(QString::fromUtf8("a\nb\u202Ec\u0007")), "a bc ");
    EXPECT_EQ(calm(QString::fromUtf8("שלום\u200F!")), QString::fromUtf8("שלום\u200F!"));
    EXPECT_EQ(calm(QString(QChar(0xD800)) + "x" + QChar(0xFFFF)), "x");
    EXPECT_EQ(shortened(QString(10'000, u'n'), 160).size(), 160);
    EXPECT_EQ(shortened("short", 160), "short");
}

TEST(FormNamed, DependsOnTheEnding)
{
    EXPECT_EQ(formNamed("a/b.PDF"), Form::pdf);
    EXPECT_EQ(formNamed("x.tar.html"), Form::html);
    EXPECT_FALSE(formNamed(".pdf"));
    EXPECT_FALSE(formNamed("pdf"));
    EXPECT_FALSE(formNamed("a.pdf "));
}

TEST_F(ReportTest, NamesOfAnyKindAreWritten)
{
    const std::string ugly = "../<b>\"&'\xE2\x80\xAE\\n" + std::string(150, 'x');
    write("ugly.json", R"json({ "holdband": 1, "setups": [ { "name": "S" } ],
      "sensors": [ { "name": "B", "reads": "beer" } ],
      "batches": [ { "name": "../<b>\"&'\u202e\\n)json" +
                           std::string(150, 'x') +
                           R"json(", "setup": "S", "pitched": "2026-03-01 00:00",
        "beer_sensor": "B", "tolerance_c": 1,
        "schedule": [ { "stage": "=cmd()", "target_c": 20 } ] } ] })json");
    std::filesystem::rename(path("ugly.json").toStdString(), path("small.json").toStdString());
    open(makeLogbook("ugly.holdband"));
    const Document document = of({ugly});
    EXPECT_TRUE(QXmlStreamReader(asHtml(document, ui::Scheme::dark)).atEnd() == false);
    QXmlStreamReader xml(asHtml(document, ui::Scheme::dark));
    while (!xml.atEnd())
        xml.readNext();
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    EXPECT_EQ(parsed(asCsv(document))[2][3], QString::fromStdString(ugly)) << "complete in the CSV";
    for (const Form form : {Form::pdf, Form::png, Form::svg})
        EXPECT_TRUE(rendered(document, form, ReportOptions{}));
}

/// Longer than any name can be: notes have no length limit.
TEST(LongTexts, WrapAndContinueOnTheNextPage)
{
    const QString longText(10'000, u'n');
    Document document;
    document.kind = "k";
    document.title = longText;
    document.subtitle = longText;
    document.headline = longText;
    document.footer = longText;
    document.add(Paragraph{longText, Tone::lead});
    document.add(Bullets{{longText, QString("two words ").repeated(1'000)}});
    Table table;
    table.title = "T";
    table.columns = {words("name"), figures("figure"), wideWords("text")};
    for (int i = 0; i < 150; ++i)
        table.rows.push_back({{longText}, {"1", "1"}, {longText}});
    document.add(table);
    const QByteArray pdf = asPdf(document, QPageSize(QPageSize::A4));
    EXPECT_GT(pdf.count("/Type /Page\n"), 20);
    EXPECT_LT(pdf.count("/Type /Page\n"), 150);
    EXPECT_EQ(asImage(document, landscape, ui::Scheme::light).size(), landscape);
    EXPECT_EQ(parsed(asCsv(document)).size(), 3u + 300u + 2u);
    const std::string page = asHtml(document, ui::Scheme::light).toStdString();
    EXPECT_THAT(page, HasSubstr("And 50 more; a report of the figures (CSV) has them all."));
}

/// Nothing was logged or metered: a clear page and no error.
TEST_F(ReportTest, ABatchWithNothingInItHasAClearPage)
{
    write("small.json", R"json({ "holdband": 1, "setups": [ { "name": "S" } ],
      "sensors": [ { "name": "B", "reads": "beer" } ],
      "batches": [ { "name": "Empty", "setup": "S", "pitched": "2026-03-01 00:00",
        "beer_sensor": "B", "tolerance_c": 1,
        "schedule": [ { "stage": "Hold", "target_c": 20 } ] } ] })json");
    open(makeLogbook("empty.holdband"));
    const Document document = of({"Empty"});
    EXPECT_EQ(document.figure(), nullptr);
    const std::string page = asHtml(document, ui::Scheme::light).toStdString();
    EXPECT_THAT(page, HasSubstr("Nothing of this batch is logged or metered yet"));
    EXPECT_THAT(page, HasSubstr("No meter was read twice while this batch ran."));
    EXPECT_THAT(page, Not(HasSubstr("nan")));
    for (const Form form : {Form::pdf, Form::csv, Form::png, Form::svg})
        EXPECT_TRUE(rendered(document, form, ReportOptions{}));
    EXPECT_TRUE(rendered(of({"S"}), Form::pdf, ReportOptions{}));
}

TEST_F(ReportTest, ADecimalCommaIsForPeopleAndAPointForPrograms)
{
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    const Document document = of({"Pale 1"});
    QLocale::setDefault(before);
    EXPECT_THAT(asHtml(document, ui::Scheme::light).toStdString(), HasSubstr(">2,40<"));
    EXPECT_EQ(value(parsed(asCsv(document)), "Energy", "Total metered", "kWh"),
              value(parsed(asCsv(of({"Pale 1"}))), "Energy", "Total metered", "kWh"));
}

TEST_F(ReportTest, StoppedWritesNothing)
{
    ReportRequest request;
    request.names = {"Pale 1"};
    request.path = path("run.pdf").toStdString();
    Progress progress;
    bool stop = false;
    progress.at = [&](const QString& step) { stop = step == "drawing"; };
    progress.stopped = [&] { return stop; };
    const Done made = make(*m_logbook, request, progress);
    ASSERT_FALSE(made);
    EXPECT_THAT(made.error().sentence(), HasSubstr("stopped"));
    EXPECT_FALSE(QFile::exists(path("run.pdf")));
}

} // namespace holdband::report::test
