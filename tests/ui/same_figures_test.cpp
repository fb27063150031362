// The same figures everywhere: for every batch of the sample the window's tables, the report, the
// command line and its JSON agree on every stage and on the energy.
#include "core/exchange/load.h"
#include "core/results/run/energy_texts.h"
#include "core/results/run/provenance.h"
#include "core/results/run/run_review.h"
#include "core/results/run/stage_texts.h"
#include "tests/ui/sample_window.h"
#include "ui/report/compose/run_document.h"
#include "ui/run/energy_tables.h"
#include "ui/run/run_tables.h"
#include "ui/words/words.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QRegularExpression>
#include <algorithm>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

QByteArray answer(const QStringList& arguments)
{
    QProcess program;
    program.start(QStringLiteral(HOLDBAND_PROGRAM), arguments);
    EXPECT_TRUE(program.waitForFinished(60'000));
    EXPECT_EQ(program.exitCode(), 0) << program.readAllStandardError().toStdString();
    return program.readAllStandardOutput();
}

/// The cells of the line whose first cell is `name`, in a text table.
QStringList lineOf(const QByteArray& text, const QString& name)
{
    const QRegularExpression gap(QStringLiteral(" {2,}"));
    for (const QString& line : QString::fromUtf8(text).split(u'\n')) {
        const QStringList cells = line.trimmed().split(gap);
        if (line.startsWith(QStringLiteral("  ")) && cells.front() == name)
            return cells;
    }
    ADD_FAILURE() << "no line " << name.toStdString();
    return {};
}

const report::Table& tableOf(const report::Document& document, const QString& title)
{
    for (const report::Block& block : document.blocks) {
        const auto* table = std::get_if<report::Table>(&block);
        if (table && table->title == title)
            return *table;
    }
    throw std::runtime_error("no table " + title.toStdString());
}

QJsonObject jsonOf(const QStringList& arguments)
{
    return QJsonDocument::fromJson(answer(arguments + QStringList{QStringLiteral("--json")}))
        .object();
}

class SameFigures : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        const auto loaded = exchange::loadDescription(core(path(QStringLiteral("s.holdband"))),
                                                      HOLDBAND_SAMPLE_DIR "/spring-trials.json",
                                                      [] { return Instant(now()); });
        ASSERT_TRUE(loaded) << loaded.error().sentence();
        auto opened = store::LogbookFile::open(core(path(QStringLiteral("s.holdband"))),
                                               store::Access::read, [] { return Instant(now()); });
        ASSERT_TRUE(opened);
        m_logbook = std::move(*opened);
    }

    results::RunReview reviewOf(const std::string& batch) const
    {
        auto review = results::reviewRun(*m_logbook, batch);
        EXPECT_TRUE(review);
        return *review;
    }

    report::Document reportOf(const results::RunReview& review) const
    {
        const auto provenance = results::provenanceOf(*m_logbook, review);
        EXPECT_TRUE(provenance);
        return report::runDocument(review, *provenance, {});
    }

    QStringList call(const char* command, const std::string& batch) const
    {
        return {QString::fromLatin1(command), path(QStringLiteral("s.holdband")), shown(batch)};
    }

    static const std::vector<std::string>& batches()
    {
        static const std::vector<std::string> names{"Lager 1", "Ale 1", "Saison 1", "Lager 2",
                                                    "Ale 2",   "Ale 3", "Ale 4",    "Ale 5",
                                                    "Lager 3", "Ale 6", "Ale 7",    "Ale 8"};
        return names;
    }

    std::unique_ptr<store::LogbookFile> m_logbook;
};

} // namespace

TEST_F(SameFigures, OfEveryStage)
{
    for (const std::string& batch : batches()) {
        SCOPED_TRACE(batch);
        const results::RunReview review = reviewOf(batch);
        const QByteArray text = answer(call("verdict", batch));
        const QJsonArray json = jsonOf(call("verdict", batch))[QStringLiteral("stages")].toArray();
        const TableText window = stageTable(review);
        const report::Document document = reportOf(review);
        const report::Table& table = tableOf(document, QStringLiteral("Stages"));
        ASSERT_EQ(static_cast<std::size_t>(json.size()), review.figures.stages.size());
        for (std::size_t i = 0; i < review.figures.stages.size(); ++i) {
            SCOPED_TRACE(review.figures.judged.stages[i].label);
            const results::StageTexts one = results::stageTexts(review, i);
            const auto& row = window.rows.at(i);
            const auto& cells = table.rows.at(i);
            const QStringList line = lineOf(text, shown(review.figures.judged.stages[i].label));
            ASSERT_EQ(line.size(), 10);
            const auto same = [&](const std::string& wanted, int inWindow, int inTables) {
                if (inWindow >= 0) {
                    EXPECT_EQ(core(row[static_cast<std::size_t>(inWindow)].text), wanted);
                }
                EXPECT_EQ(core(cells[static_cast<std::size_t>(inTables)].text), wanted);
                EXPECT_EQ(core(line[inTables]), wanted);
            };
            same(one.settledIn, 1, 3);
            same(one.hold, -1, 4);
            same(one.coverage, -1, 5);
            same(one.inside, 2, 6);
            same(one.meanDeviation, -1, 7);
            same(one.worst, 3, 8);
            same(one.kwh, 4, 9);
            const QJsonObject stage = json[static_cast<int>(i)].toObject();
            const analysis::StageFigures& figures = review.figures.stages[i];
            const QJsonValue settledIn = stage[QStringLiteral("settled_in_h")];
            EXPECT_EQ(settledIn.isNull(), !figures.settledInMs);
            EXPECT_DOUBLE_EQ(settledIn.toDouble() * msPerHour, figures.settledInMs.value_or(0.0));
            EXPECT_DOUBLE_EQ(stage[QStringLiteral("settling_h")].toDouble() * msPerHour,
                             figures.settlingMs);
            if (figures.settled == analysis::Settled::arrived) {
                EXPECT_DOUBLE_EQ(cells[3].raw.toDouble(), settledIn.toDouble());
            }
        }
    }
}

TEST_F(SameFigures, OfEveryPartOfTheEnergy)
{
    for (const std::string& batch : batches()) {
        SCOPED_TRACE(batch);
        const results::RunReview review = reviewOf(batch);
        const QByteArray text = answer(call("energy", batch));
        const QJsonObject json = jsonOf(call("energy", batch));
        const TableText window = energyTable(review);
        const report::Document document = reportOf(review);
        const report::Table& table = tableOf(document, QStringLiteral("Energy"));
        const std::vector<results::EnergyPart> parts = results::energyParts(review);
        for (std::size_t i = 0; i < parts.size(); ++i) {
            SCOPED_TRACE(parts[i].label);
            const results::EnergyTexts one = results::energyTexts(parts[i].energy);
            const QStringList line = lineOf(text, shown(parts[i].label));
            ASSERT_EQ(line.size(), 5);
            EXPECT_EQ(core(line[1]), one.kwh);
            EXPECT_EQ(core(line[2]), one.bounds);
            EXPECT_EQ(core(window.rows.at(i)[1].text), one.kwh + " kWh");
            EXPECT_EQ(core(window.rows.at(i)[2].text), one.bounds);
            const auto& cells = table.rows.at(i);
            EXPECT_EQ(core(cells[1].text), one.kwh);
            EXPECT_EQ(core(cells[2].text) + " – " + core(cells[3].text), one.bounds);
            EXPECT_EQ(core(cells[5].text), one.watts);
        }
        EXPECT_DOUBLE_EQ(json[QStringLiteral("kwh")].toDouble(), review.figures.energy.whole.kwh);
        const QJsonArray stages = json[QStringLiteral("stages")].toArray();
        ASSERT_EQ(static_cast<std::size_t>(stages.size()), review.figures.energy.stages.size());
        for (std::size_t i = 0; i < review.figures.energy.stages.size(); ++i) {
            const analysis::SpanEnergy& stage = review.figures.energy.stages[i];
            EXPECT_DOUBLE_EQ(
                stages[static_cast<int>(i)].toObject()[QStringLiteral("kwh")].toDouble(),
                stage.energy.kwh);
            if (review.figures.crash == i &&
                stage.span.end == review.figures.energy.crash->span.end) {
                EXPECT_DOUBLE_EQ(stage.energy.kwh, review.figures.energy.crash->energy.kwh)
                    << "the crash's stage and the crash are one";
            }
        }
    }
}

} // namespace holdband::ui::test
