// The forms of a report, read back: page, paper, picture, SVG and CSV.
#include "ui/report/report.h"

#include "tests/ui/report_test.h"
#include "ui/report/compose/cells.h"
#include "ui/report/compose/plain_text.h"
#include "ui/report/render/csv_renderer.h"
#include "ui/report/render/html_renderer.h"
#include "ui/report/render/pdf_renderer.h"
#include "ui/theme/colours.h"
#include "ui/words/words.h"

#include <QFile>
#include <QSvgRenderer>
#include <QXmlStreamReader>
#include <filesystem>
#include <gmock/gmock.h>

namespace holdband::report::test {

using ::testing::HasSubstr;
using ::testing::Not;

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
                beer += image.pixelColor(x, y) == ui::setupLine(0, colours);
        }
        EXPECT_GT(beer, 1500);
    }
}

namespace {

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

} // namespace

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
    table.id = "t";
    table.title = "T";
    table.columns = {words("n", "name"), figures("f", "figure", "K"), words("w", "text")};
    table.rows = {{{"+name"}, {"−0.5", "-0.5"}, {"-5"}},
                  {{"\tx"}, {"1e-7", "1e-7"}, {"@a,\"b\"\r\nc"}}};
    document.add(table);
    const Rows rows = parsed(asCsv(document));
    EXPECT_EQ(rows[2], QStringList({"report.of", "report", "", "of", "'=1+1", ""}));
    EXPECT_EQ(rows[3], QStringList({"t.f", "T", "'+name", "figure", "-0.5", "K"}));
    EXPECT_EQ(rows[4], QStringList({"t.w", "T", "'+name", "text", "'-5", ""}));
    EXPECT_EQ(rows[5], QStringList({"t.f", "T", "'\tx", "figure", "1e-7", "K"}));
    EXPECT_EQ(rows[6], QStringList({"t.w", "T", "'\tx", "text", "'@a,\"b\"\r\nc", ""}));
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
    EXPECT_EQ(parsed(asCsv(document))[2][4], QString::fromStdString(ugly)) << "complete in the CSV";
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
    document.add(Bullets{"long", {longText, QString("two words ").repeated(1'000)}});
    Table table;
    table.title = "T";
    table.columns = {words("n", "name"), figures("f", "figure"), wideWords("w", "text")};
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
