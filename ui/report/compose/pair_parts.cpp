#include "ui/report/compose/pair_parts.h"

#include "core/results/comparison/measure_words.h"
#include "ui/charts/batch_dots.h"
#include "ui/charts/pair_deviation.h"
#include "ui/charts/pair_spread.h"
#include "ui/charts/total_cost.h"
#include "ui/charts/weather_points.h"
#include "ui/comparison/side_tables.h"
#include "ui/words/words.h"

#include <algorithm>

namespace holdband::report {

namespace {

using analysis::MeasureId;
using results::SideBySide;

/// Drawn batch by batch; the table beneath has all of them.
constexpr MeasureId drawnMeasures[] = {MeasureId::energy, MeasureId::insideShare,
                                       MeasureId::rmsDeviation};
constexpr int costRows = 6;

QString joinedSentences(const std::vector<std::string>& lines)
{
    return ui::sentences(lines).join(u' ');
}

void addSentences(Document& document, const std::vector<std::string>& lines,
                  Tone tone = Tone::plain, const QString& figure = {})
{
    if (const QString text = joinedSentences(lines); !text.isEmpty())
        document.add(Paragraph{text, tone, figure});
}

/// "Ale 2: 6.12, Ale 3: 5.90"
QString batchWords(const results::SetupFigures& figures)
{
    QStringList words;
    for (const results::BatchFigure& batch : figures.batches)
        words << ui::shown(batch.batch) + QStringLiteral(": ") + ui::shown(batch.text);
    return words.join(QStringLiteral(", "));
}

void addDots(Document& document, const SideBySide& pair, std::size_t measure,
             const ui::PairSides& sides)
{
    const results::MeasureBatches& figures = pair.batchFigures[measure];
    const QString title = ui::shown(pair.lines[measure].title);
    auto picture =
        std::make_shared<ui::BatchDotsPicture>(title, figures, pair.lines[measure].factor, sides);
    if (picture->empty())
        return;
    document.add(Figure{picture,
                        ui::Words::tr("%1, batch by batch").arg(title),
                        QStringLiteral("%1: %2. %3: %4.")
                            .arg(sides.a, batchWords(figures.a), sides.b, batchWords(figures.b)),
                        {}});
}

/// A row for each measure, the batches' figures one after the other.
Table batchWordsTable(const SideBySide& pair)
{
    Table table;
    table.title = ui::Words::tr("Every batch’s figures");
    table.shown = Shown::onPages;
    table.columns = {words(ui::Words::tr("Measure")), wideWords(QStringLiteral("A")),
                     wideWords(QStringLiteral("B"))};
    for (std::size_t i = 0; i < pair.batchFigures.size(); ++i) {
        const results::MeasureBatches& figures = pair.batchFigures[i];
        if (!figures.a.batches.empty() || !figures.b.batches.empty())
            table.rows.push_back({{ui::shown(pair.lines[i].title)},
                                  {batchWords(figures.a)},
                                  {batchWords(figures.b)}});
    }
    return table;
}

/// A row for each batch of a side, a column for each measure.
std::vector<std::vector<Cell>> batchRows(const SideBySide& pair, bool first)
{
    std::vector<std::vector<Cell>> rows;
    for (const std::string& batch : first ? pair.batchesA : pair.batchesB) {
        std::vector<Cell> row{{ui::shown(batch)}};
        for (const results::MeasureBatches& each : pair.batchFigures) {
            const auto& batches = (first ? each.a : each.b).batches;
            const auto found =
                std::find_if(batches.begin(), batches.end(),
                             [&](const results::BatchFigure& one) { return one.batch == batch; });
            row.push_back(found == batches.end()
                              ? Cell{}
                              : Cell{ui::shown(found->text), rawNumber(found->value)});
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

Table batchFiguresTable(const SideBySide& pair)
{
    Table table = batchWordsTable(pair);
    table.shown = Shown::amongFigures;
    table.columns = {words(ui::Words::tr("Batch"))};
    for (const analysis::Measure& measure : pair.measures)
        table.columns.push_back(
            {ui::shown(results::measureName(measure.rule.id)), ui::shown(measure.rule.unit), true});
    table.rows = batchRows(pair, true);
    for (std::vector<Cell>& row : batchRows(pair, false))
        table.rows.push_back(std::move(row));
    return table;
}

void addIdle(Document& document, const SideBySide& pair)
{
    std::vector<std::string> idle;
    for (const results::IdleFigures& each : pair.idle)
        idle.push_back(each.sentence);
    addSentences(document, idle, Tone::plain, ui::Words::tr("idle"));
}

void addModel(Document& document, const results::ModelWords& side)
{
    const QStringList lines =
        ui::sentences(side.figures) + ui::sentences(side.cautions) + ui::sentences(side.remarks);
    if (!lines.isEmpty())
        document.add(
            Paragraph{ui::shown(side.side) + QStringLiteral(": ") + lines.join(u' '), Tone::muted});
}

QString sentenceOf(const results::CostScenario& scenario)
{
    return joinedSentences({scenario.sentence, scenario.yearSentence});
}

/// At the logbook's own price.
void addCostPicture(Document& document, const SideBySide& pair, const ui::PairSides& sides)
{
    if (pair.money.scenarios.empty())
        return;
    const results::CostScenario& scenario = pair.money.scenarios.front();
    auto picture = std::make_shared<ui::TotalCostPicture>(pair.money, 0,
                                                          ui::shown(pair.settings.currency), sides);
    if (!picture->empty())
        document.add(Figure{
            picture,
            ui::Words::tr("Total cost over batches, energy %1").arg(ui::shown(scenario.name)),
            ui::Words::tr("Cost of parts and energy of A, %1, and B, %2. %3")
                .arg(sides.a, sides.b, sentenceOf(scenario)),
            {}});
}

Table costTable(const SideBySide& pair, const Cells& cells)
{
    const results::MoneyWords& money = pair.money;
    Table table;
    table.title = ui::Words::tr("What it costs");
    table.columns = {wideWords(QStringLiteral("")), figures(QStringLiteral("A")),
                     figures(QStringLiteral("B"))};
    const auto parts = [&](const std::string& text, const std::optional<double>& amount) {
        Cell cell = cells.money(amount);
        cell.text = ui::shown(text);
        return cell;
    };
    table.rows.push_back({{ui::Words::tr("Parts")},
                          parts(money.partsTextA, money.partsA),
                          parts(money.partsTextB, money.partsB)});
    for (const results::CostScenario& scenario : money.scenarios)
        table.rows.push_back({{ui::Words::tr("Energy of a batch %1", "at which price")
                                   .arg(ui::shown(scenario.name))},
                              parts(scenario.perBatchA, scenario.a.perBatch.value),
                              parts(scenario.perBatchB, scenario.b.perBatch.value)});
    for (int row = 1; row <= costRows && !money.scenarios.empty(); ++row) {
        const int batches = money.lastBatch * row / costRows;
        const results::CostScenario& first = money.scenarios.front();
        table.rows.push_back({{ui::Words::tr("Total after %1 batches").arg(batches)},
                              cells.money(first.a.after(batches)),
                              cells.money(first.b.after(batches))});
    }
    return table;
}

Cell scoreCell(const std::string& text, const std::optional<analysis::Scores>& scores, bool first)
{
    Cell cell{ui::shown(text)};
    if (scores)
        cell.raw = rawNumber(first ? scores->a : scores->b);
    return cell;
}

Table judgementTable(const results::JudgementWords& judgement)
{
    Table table;
    table.title = ui::Words::tr("Judgement sheet");
    table.columns = {words(ui::Words::tr("Criterion")), figures(ui::Words::tr("weight")),
                     figures(QStringLiteral("A")), figures(QStringLiteral("B")),
                     wideWords(ui::Words::tr("how it was scored"))};
    for (const results::CriterionWords& each : judgement.criteria)
        table.rows.push_back({{ui::shown(each.title), ui::shown(each.name)},
                              {ui::numberText(each.weight, 1), rawNumber(each.weight)},
                              scoreCell(each.textA, each.scores, true),
                              scoreCell(each.textB, each.scores, false),
                              {ui::capitalised(ui::shown(each.how))}});
    if (const auto& totals = judgement.sheet.totals) {
        table.rows.push_back({{ui::Words::tr("Total")},
                              {QString()},
                              {ui::numberText(totals->a, 2), rawNumber(totals->a)},
                              {ui::numberText(totals->b, 2), rawNumber(totals->b)},
                              {ui::Words::tr("The mean by weight")}});
        for (Cell& cell : table.rows.back())
            cell.strong = true;
    }
    return table;
}

} // namespace

void addDeviations(Document& document, const SideBySide& pair, const ui::PairSides& sides)
{
    const TemperatureUnit unit = pair.settings.temperatureUnit();
    const QString words = ui::shown(pair.temperatureSentence);
    auto deviation = std::make_shared<ui::PairDeviationPicture>(pair.deviations, unit, sides);
    if (!deviation->empty())
        document.add(
            Figure{deviation,
                   ui::Words::tr("Deviation of both from target"),
                   ui::Words::tr("The beer’s deviation from target of A, %1, and B, %2, over "
                                 "elapsed time. %3")
                       .arg(sides.a, sides.b, words),
                   {}});
    auto spread = std::make_shared<ui::PairSpreadPicture>(pair.deviations, unit, sides);
    if (!spread->empty())
        document.add(Figure{spread,
                            ui::Words::tr("Time spent at each deviation"),
                            ui::Words::tr("How much of its judged time each spent at each "
                                          "deviation from target, A, %1, above B, %2. %3")
                                .arg(sides.a, sides.b, words),
                            {}});
}

void addBatchFigures(Document& document, const SideBySide& pair, const ui::PairSides& sides)
{
    if (!pair.ofSetups)
        return;
    document.add(Heading{ui::Words::tr("Batch by batch")});
    for (std::size_t i = 0; i < pair.batchFigures.size(); ++i) {
        if (std::find(std::begin(drawnMeasures), std::end(drawnMeasures),
                      pair.measures[i].rule.id) != std::end(drawnMeasures))
            addDots(document, pair, i, sides);
    }
    addIdle(document, pair);
    document.add(batchWordsTable(pair));
    document.add(batchFiguresTable(pair));
}

void addWeather(Document& document, const SideBySide& pair, const ui::PairSides& sides,
                const Cells& cells)
{
    const results::SameWeather& weather = pair.weather;
    if (weather.sentence.empty())
        return;
    document.add(Heading{ui::Words::tr("In the same weather")});
    addSentences(document, {weather.sentence, weather.any ? weather.energySentence : ""},
                 Tone::plain, ui::Words::tr("same weather"));
    auto picture =
        std::make_shared<ui::WeatherPicture>(weather, cells.settings().temperatureUnit(), sides);
    if (!picture->empty())
        document.add(Figure{picture,
                            ui::Words::tr("Mean power over how much warmer the room was"),
                            ui::Words::tr("A point for each time between two readings of the "
                                          "meters, and the line through them. ") +
                                joinedSentences({weather.sentence}),
                            {}});
    addModel(document, weather.a);
    addModel(document, weather.b);
    addSentences(document, weather.remarks, Tone::muted);
}

void addMoney(Document& document, const SideBySide& pair, const ui::PairSides& sides,
              const Cells& cells)
{
    const results::MoneyWords& money = pair.money;
    document.add(Heading{ui::Words::tr("Money")});
    for (const results::CostScenario& scenario : money.scenarios)
        document.add(Paragraph{QStringLiteral("%1: %2").arg(
            ui::capitalised(ui::shown(scenario.name)), sentenceOf(scenario))});
    document.add(costTable(pair, cells));
    addCostPicture(document, pair, sides);
    addSentences(document, {money.timeOfUse, money.why}, Tone::muted);
}

void addJudgement(Document& document, const SideBySide& pair)
{
    const results::JudgementWords& judgement = pair.judgement;
    document.add(Heading{ui::Words::tr("Judgement sheet")});
    addSentences(document, {judgement.sentence}, Tone::lead, ui::Words::tr("judgement"));
    document.add(judgementTable(judgement));
    if (const QStringList turning = ui::sentences(judgement.turning); !turning.isEmpty()) {
        document.add(Paragraph{ui::Words::tr("What would change the result:")});
        document.add(Bullets{turning});
    }
    addSentences(document, {judgement.rule}, Tone::muted);
}

} // namespace holdband::report
