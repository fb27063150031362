// The figures of a report for programs: ids and units that depend neither on the language nor on
// the units of the logbook.
#include "core/exchange/load.h"
#include "core/store/records/equipment.h"
#include "tests/ui/report_test.h"
#include "tests/ui/spoken.h"
#include "ui/report/render/csv_renderer.h"

#include <QFile>
#include <QRegularExpression>
#include <algorithm>
#include <iterator>
#include <map>
#include <set>

namespace holdband::report::test {

namespace {

bool isId(const QString& text)
{
    static const QRegularExpression form(QStringLiteral("^[a-z][a-z0-9]*(_[a-z0-9]+)*$"));
    return form.match(text).hasMatch();
}

/// Every part of it, joined by points, and at least a table and a figure.
bool isFigureId(const QString& text)
{
    const QStringList steps = text.split(u'.');
    return steps.size() >= 2 && std::all_of(steps.begin(), steps.end(), isId);
}

std::string said(const QStringList& row)
{
    return row.join(u'|').toStdString();
}

} // namespace

class ReportFigures : public ReportTest {
protected:
    static void SetUpTestSuite()
    {
        s_folder = std::make_unique<QTemporaryDir>();
        const auto loaded = exchange::loadDescription(
            sample().toStdString(), HOLDBAND_SAMPLE_DIR "/spring-trials.json", afterTheSample);
        ASSERT_TRUE(loaded) << loaded.error().sentence();
    }
    static void TearDownTestSuite() { s_folder.reset(); }
    /// After the last of the sample's batches.
    static Instant afterTheSample() { return now() + std::chrono::hours{24 * 260}; }
    static QString sample() { return s_folder->filePath(QStringLiteral("sample.holdband")); }

    void openSample(const QString& logbook = sample())
    {
        auto opened =
            store::LogbookFile::open(logbook.toStdString(), store::Access::read, afterTheSample);
        ASSERT_TRUE(opened) << opened.error().sentence();
        m_logbook = std::move(*opened);
    }

    /// The sample in other units.
    QString metricSample() const
    {
        QString logbook = path(QStringLiteral("metric.holdband"));
        EXPECT_TRUE(QFile::copy(sample(), logbook));
        const auto file =
            store::LogbookFile::open(logbook.toStdString(), store::Access::write, afterTheSample);
        EXPECT_TRUE(file);
        auto settings = *store::readSettings(**file);
        EXPECT_EQ(settings.temperatureUnit(), TemperatureUnit::fahrenheit);
        settings.units = UnitSystem::metric;
        auto change = store::Change::begin(**file, {store::HistoryVerb::settingsChanged});
        EXPECT_TRUE(change);
        EXPECT_TRUE(store::writeSettings(*change, settings));
        EXPECT_TRUE(change->commit());
        return logbook;
    }

    Document forecast() const
    {
        results::NextBatchRequest request;
        auto plan = results::planLike(*m_logbook, "Ale 2");
        EXPECT_TRUE(plan);
        request.plan = std::move(*plan);
        request.room = analysis::TypedRoom{24.0, 6.0};
        const auto document = composeForecast(*m_logbook, request);
        EXPECT_TRUE(document) << (document ? "" : document.error().sentence());
        return document.value_or(Document{});
    }

    /// A run with excursions and one with a missed target, two batches, two setups, a season, a
    /// forecast.
    std::vector<Document> documents() const
    {
        return {of({"Ale 5"}),           of({"Ale 3"}), of({"Ale 2", "Ale 3"}),
                of({"Loop", "Cabinet"}), of({"Loop"}),  forecast()};
    }

    inline static std::unique_ptr<QTemporaryDir> s_folder;
};

namespace {

/// Of the tables, columns and facts that reach the CSV, also where they have no row in it.
class Ids {
public:
    void take(const Heading&) {}
    void take(const Figure&) {}
    void take(const Paragraph& paragraph)
    {
        EXPECT_EQ(paragraph.id.isEmpty(), paragraph.figure.isEmpty())
            << paragraph.figure.toStdString();
        if (!paragraph.id.isEmpty())
            add(QStringLiteral("sentence.") + paragraph.id);
    }
    void take(const Bullets& bullets) { add(bullets.id); }
    void take(const Table& table)
    {
        if (table.shown == Shown::onPages)
            return;
        SCOPED_TRACE(table.title.toStdString());
        add(table.id);
        if (table.headerShown)
            takeColumns(table);
        else
            takeFacts(table);
    }

private:
    void add(const QString& id)
    {
        EXPECT_TRUE(isId(id) || isFigureId(id)) << id.toStdString();
        EXPECT_TRUE(m_taken.insert(id).second) << id.toStdString() << " occurs twice";
    }
    void takeColumns(const Table& table)
    {
        for (std::size_t i = 1; i < table.columns.size(); ++i) {
            SCOPED_TRACE(table.columns[i].title.toStdString());
            EXPECT_TRUE(isId(table.columns[i].id));
            add(table.id + u'.' + table.columns[i].id);
        }
    }
    /// A fact of several sensors has a row for each.
    void takeFacts(const Table& table)
    {
        std::map<QString, QString> names;
        for (const auto& row : table.rows) {
            EXPECT_TRUE(isId(row[0].id)) << row[0].text.toStdString();
            EXPECT_EQ(names.emplace(row[0].id, row[0].text).first->second, row[0].text);
        }
    }

    std::set<QString> m_taken;
};

} // namespace

TEST_F(ReportFigures, EveryTableColumnAndFactHasAnIdOfItsOwn)
{
    openSample();
    for (const Document& document : documents()) {
        SCOPED_TRACE(document.kind.toStdString());
        Ids ids;
        for (const Block& block : document.blocks)
            std::visit([&](const auto& each) { ids.take(each); }, block);
    }
}

TEST_F(ReportFigures, AnIdIsThatOfOneFigure)
{
    openSample();
    for (const Document& document : documents()) {
        SCOPED_TRACE(document.kind.toStdString());
        Rows rows = parsed(asCsv(document));
        ASSERT_GT(rows.size(), 20u);
        EXPECT_EQ(rows[0], QStringList({"id", "part", "of", "figure", "value", "unit"}));
        rows.erase(rows.begin());
        std::map<QString, std::pair<QString, QString>> names;
        for (const QStringList& row : rows) {
            EXPECT_TRUE(isFigureId(row[0])) << said(row);
            const std::pair name(row[1], row[3]);
            EXPECT_EQ(names.emplace(row[0], name).first->second, name) << said(row);
        }
    }
}

TEST_F(ReportFigures, IdsAreTheSameInEveryLanguage)
{
    openSample();
    const std::vector<Document> english = documents();
    const ui::test::German language;
    ASSERT_TRUE(language.loaded());
    const std::vector<Document> german = documents();
    ASSERT_EQ(english.size(), german.size());
    for (std::size_t i = 0; i < english.size(); ++i) {
        SCOPED_TRACE(english[i].kind.toStdString());
        EXPECT_NE(english[i].kind, german[i].kind);
        const Rows one = parsed(asCsv(english[i]));
        const Rows other = parsed(asCsv(german[i]));
        ASSERT_EQ(one.size(), other.size());
        for (std::size_t k = 0; k < one.size(); ++k) {
            EXPECT_EQ(one[k][0], other[k][0]);
            EXPECT_EQ(one[k][5], other[k][5]) << said(one[k]);
            EXPECT_TRUE(one[k][5].isEmpty() || one[k][4] == other[k][4]) << said(one[k]);
        }
    }
}

TEST_F(ReportFigures, NumbersAreTheSameInEveryLogbooksUnits)
{
    openSample();
    const std::vector<Document> fahrenheit = documents();
    openSample(metricSample());
    const std::vector<Document> celsius = documents();
    for (std::size_t i = 0; i < fahrenheit.size(); ++i) {
        SCOPED_TRACE(fahrenheit[i].kind.toStdString());
        const Rows one = parsed(asCsv(fahrenheit[i]));
        const Rows other = parsed(asCsv(celsius[i]));
        ASSERT_EQ(one.size(), other.size());
        for (std::size_t k = 0; k < one.size(); ++k) {
            for (const int column : {0, 1, 3, 5}) {
                EXPECT_EQ(one[k][column], other[k][column]) << said(one[k]);
                EXPECT_FALSE(one[k][column].contains(u'°') && column != 5) << said(one[k]);
            }
            EXPECT_TRUE(one[k][5].isEmpty() || one[k][4] == other[k][4]) << said(one[k]);
        }
    }
}

TEST_F(ReportFigures, UnitsAreThoseOfTheAnswersForPrograms)
{
    openSample();
    std::set<QString> units;
    for (const Document& document : documents()) {
        for (const QStringList& row : parsed(asCsv(document))) {
            bool number = false;
            row[4].toDouble(&number);
            EXPECT_TRUE(!number || !row[5].isEmpty()) << said(row);
            units.insert(row[5]);
        }
    }
    EXPECT_EQ(units,
              (std::set<QString>{"", "unit", "1", "K", "°C", "h", "kWh", "W", "USD", "kWh/(K·d)"}));
}

namespace {

std::vector<QStringList> withId(const Rows& rows, const QString& id)
{
    std::vector<QStringList> found;
    std::copy_if(rows.begin(), rows.end(), std::back_inserter(found),
                 [&](const QStringList& row) { return row[0] == id; });
    return found;
}

/// The values of one figure, rounded to millionths, with their unit.
QStringList valuesOf(const Rows& rows, const QString& id)
{
    QStringList values;
    for (const QStringList& row : withId(rows, id))
        values << QString::number(row[4].toDouble(), 'f', 6) + u' ' + row[5];
    return values;
}

} // namespace

/// 66 °F and ± 3 °F, typed; the log's 71 °F is 2 °F past the edge for three hours.
TEST_F(ReportTest, TheFiguresOfALogbookInFahrenheitAreCelsiusAndKelvins)
{
    const Rows rows = parsed(asCsv(of({"Pale 1"})));
    EXPECT_EQ(valuesOf(rows, "stages.target"), QStringList{"18.888889 °C"});
    EXPECT_EQ(valuesOf(rows, "excursions.peak"), QStringList{"1.111111 K"});
    EXPECT_EQ(valuesOf(rows, "basis.tolerance"), QStringList{"1.666667 K"});
    EXPECT_EQ(valuesOf(rows, "basis.gap_limit"), QStringList{"1.500000 h"});
    EXPECT_EQ(valuesOf(rows, "basis.dwell"), QStringList{"1.000000 h"});
    EXPECT_EQ(valuesOf(rows, "basis.coverage_needed"), QStringList{"0.900000 1"});
    ASSERT_EQ(withId(rows, "basis.span").size(), 1u);
    EXPECT_EQ(withId(rows, "basis.span")[0][4],
              "2026-03-07T18:00:00-07:00/2026-03-09T18:00:00-06:00");
}

/// The whole run's figures have the ids that they have in the answer of `energy`; its parts' and
/// stages' are others.
TEST_F(ReportFigures, TheWholeRunAndItsPartsHaveDifferentIds)
{
    openSample();
    const Rows rows = parsed(asCsv(of({"Ale 3"})));
    for (const char* const id : {"energy.kwh", "energy.before_crash.kwh", "energy.crash.kwh"})
        EXPECT_EQ(withId(rows, id).size(), 1u) << id;
    const auto stages = withId(rows, "energy.stage.kwh");
    ASSERT_EQ(stages.size(), 4u);
    EXPECT_EQ(stages[3][2], "Crash") << "the stage's own name";
}

} // namespace holdband::report::test
