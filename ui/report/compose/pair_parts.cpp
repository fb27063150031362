#include "ui/report/compose/pair_parts.h"

#include "core/results/comparison/side_by_side.h"
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

/// Drawn batch by batch; the table below has all measures.
constexpr MeasureId drawnMeasures[] = {MeasureId::energy, MeasureId::insideShare,
                                       MeasureId::rmsDeviation};

QString joinedSentences(const std::vector<std::string>& lines)
{
    return ui::sentences(lines).join(u' ');
}

void addSentences(Document& document, const std::vector<std::string>& lines,
                  Tone tone = Tone::plain, const QString& id = {}, const QString& figure = {})
{
    if (const QString text = joinedSentences(lines); !text.isEmpty())
        document.add(Paragraph{text, tone, id, figure});
}

/// "Ale 2: 6.12, Ale 3: 5.90"
QString batchWords(const results::SetupFigures& figures, const std::vector<std::string>& texts)
{
    QStringList words;
    for (std::size_t i = 0; i < texts.size(); ++i)
        words << ui::shown(figures.batches[i].batch) + QStringLiteral(": ") + ui::shown(texts[i]);
    return words.join(QStringLiteral(", "));
}

void addDots(Document& document, const SideBySide& pair, std::size_t measure,
             const ui::PairSides& sides)
{
    const results::MeasureBatches& figures = pair.batchFigures[measure];
    const results::MeasureText& line = pair.text.measures[measure];
    const QString title = ui::shown(line.title);
    auto picture = std::make_shared<ui::BatchDotsPicture>(title, figures, line.factor, sides);
    if (picture->empty())
        return;
    document.add(Figure{picture,
                        ui::Words::tr("%1, batch by batch").arg(title),
                        QStringLiteral("%1: %2. %3: %4.")
                            .arg(sides.a, batchWords(figures.a, line.batchesA), sides.b,
                                 batchWords(figures.b, line.batchesB)),
                        {}});
}

/// One row per measure, with the batches' figures one after the other.
Table batchWordsTable(const SideBySide& pair)
{
    Table table;
    table.id = "batch_figures";
    table.title = ui::Words::tr("Every batch’s figures");
    table.shown = Shown::onPages;
    table.columns = {words("measure", ui::Words::tr("Measure")),
                     wideWords("a", QStringLiteral("A")), wideWords("b", QStringLiteral("B"))};
    for (std::size_t i = 0; i < pair.batchFigures.size(); ++i) {
        const results::MeasureBatches& figures = pair.batchFigures[i];
        const results::MeasureText& line = pair.text.measures[i];
        if (!figures.a.batches.empty() || !figures.b.batches.empty())
            table.rows.push_back({{ui::shown(line.title)},
                                  {batchWords(figures.a, line.batchesA)},
                                  {batchWords(figures.b, line.batchesB)}});
    }
    return table;
}

/// Of one batch in one measure; empty where it has none.
Cell figureCell(const SideBySide& pair, std::size_t measure, bool first, const std::string& batch)
{
    const results::MeasureBatches& each = pair.batchFigures[measure];
    const results::MeasureText& line = pair.text.measures[measure];
    const auto& batches = (first ? each.a : each.b).batches;
    const auto found =
        std::find_if(batches.begin(), batches.end(),
                     [&](const results::BatchFigure& one) { return one.batch == batch; });
    if (found == batches.end())
        return {};
    const auto at = static_cast<std::size_t>(found - batches.begin());
    return {ui::shown((first ? line.batchesA : line.batchesB)[at]), rawNumber(found->value)};
}

/// A row for each batch of a side, a column for each measure.
std::vector<std::vector<Cell>> batchRows(const SideBySide& pair, bool first)
{
    std::vector<std::vector<Cell>> rows;
    for (const std::string& batch : first ? pair.batchesA : pair.batchesB) {
        std::vector<Cell> row{{ui::shown(batch)}};
        for (std::size_t i = 0; i < pair.batchFigures.size(); ++i)
            row.push_back(figureCell(pair, i, first, batch));
        rows.push_back(std::move(row));
    }
    return rows;
}

Table batchFiguresTable(const SideBySide& pair)
{
    Table table = batchWordsTable(pair);
    table.shown = Shown::amongFigures;
    table.columns = {words("batch", ui::Words::tr("Batch"))};
    for (const analysis::Measure& measure : pair.measures) {
        const QString name = ui::shown(results::measureName(measure.rule.id));
        table.columns.push_back({name, name, unitOf(measure, pair.settings), true});
    }
    table.rows = batchRows(pair, true);
    for (std::vector<Cell>& row : batchRows(pair, false))
        table.rows.push_back(std::move(row));
    return table;
}

void addIdle(Document& document, const SideBySide& pair)
{
    addSentences(document, pair.text.idle, Tone::plain, "idle", ui::Words::tr("idle"));
}

void addModel(Document& document, const std::string& name, const results::SideModelText& side)
{
    const QStringList lines =
        ui::sentences(side.figures) + ui::sentences(side.cautions) + ui::sentences(side.remarks);
    if (!lines.isEmpty())
        document.add(
            Paragraph{ui::shown(name) + QStringLiteral(": ") + lines.join(u' '), Tone::muted});
}

QString sentenceOf(const results::CostScenarioText& scenario)
{
    return joinedSentences({scenario.sentence, scenario.yearSentence});
}

/// Uses the logbook's own price.
void addCostPicture(Document& document, const SideBySide& pair, const ui::PairSides& sides)
{
    if (pair.money.scenarios.empty())
        return;
    const results::CostScenarioText& scenario = pair.text.money.scenarios.front();
    auto picture = std::make_shared<ui::TotalCostPicture>(pair.money, 0, ui::shown(scenario.name),
                                                          ui::shown(pair.settings.currency), sides);
    if (!picture->empty())
        document.add(Figure{
            picture,
            ui::Words::tr("Total cost over batches, energy %1").arg(ui::shown(scenario.name)),
            ui::Words::tr("Cost of parts and energy of A, %1, and B, %2. %3")
                .arg(sides.a, sides.b, sentenceOf(scenario)),
            {}});
}

QString costId(results::CostBasis basis)
{
    switch (basis) {
    case results::CostBasis::otherPrice:
        return QStringLiteral("per_batch_other_price");
    case results::CostBasis::sameWeather:
        return QStringLiteral("per_batch_same_weather");
    case results::CostBasis::logbookPrices:
        break;
    }
    return QStringLiteral("per_batch");
}

Cell rowNamed(const QString& id, const QString& title)
{
    Cell cell{title};
    cell.id = id;
    return cell;
}

Table costTable(const SideBySide& pair, const Cells& cells)
{
    const results::Money& money = pair.money;
    const results::MoneyText& moneyText = pair.text.money;
    Table table;
    table.id = "costs";
    table.title = ui::Words::tr("What it costs");
    table.columns = {wideWords("cost", QStringLiteral("")), figures("a", QStringLiteral("A")),
                     figures("b", QStringLiteral("B"))};
    const auto parts = [&](const std::string& text, const std::optional<double>& amount) {
        Cell cell = cells.money(amount);
        cell.text = ui::shown(text);
        return cell;
    };
    table.rows.push_back({rowNamed("parts", ui::Words::tr("Parts")),
                          parts(moneyText.partsA, money.partsA),
                          parts(moneyText.partsB, money.partsB)});
    for (std::size_t i = 0; i < money.scenarios.size(); ++i) {
        const results::CostScenarioText& text = moneyText.scenarios[i];
        table.rows.push_back(
            {rowNamed(
                 costId(money.scenarios[i].basis),
                 ui::Words::tr("Energy of a batch %1", "at which price").arg(ui::shown(text.name))),
             parts(text.perBatchA, money.scenarios[i].a.perBatch.value),
             parts(text.perBatchB, money.scenarios[i].b.perBatch.value)});
    }
    for (const int batches : money.batchesInTable) {
        if (batches == 0 || money.scenarios.empty())
            continue;
        const results::CostScenario& first = money.scenarios.front();
        table.rows.push_back({rowNamed(QStringLiteral("total_after_%1").arg(batches),
                                       ui::Words::tr("Total after %1 batches").arg(batches)),
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

Table judgementTable(const SideBySide& pair)
{
    Table table;
    table.id = "judgement";
    table.title = ui::Words::tr("Judgement sheet");
    table.columns = {words("criterion", ui::Words::tr("Criterion")),
                     figures("weight", ui::Words::tr("weight"), "1"),
                     figures("a", QStringLiteral("A"), "1"), figures("b", QStringLiteral("B"), "1"),
                     wideWords("how", ui::Words::tr("how it was scored"))};
    const results::Judgement& judgement = pair.judgement;
    for (std::size_t i = 0; i < judgement.criteria.size(); ++i) {
        const results::Criterion& each = judgement.criteria[i];
        const results::CriterionText& text = pair.text.judgement.criteria[i];
        table.rows.push_back({{ui::shown(text.title), ui::shown(each.name)},
                              {ui::numberText(each.weight, 1), rawNumber(each.weight)},
                              scoreCell(text.a, each.scores, true),
                              scoreCell(text.b, each.scores, false),
                              {ui::capitalised(ui::shown(text.how))}});
    }
    if (const auto& totals = judgement.sheet.totals) {
        table.rows.push_back({rowNamed("total", ui::Words::tr("Total")),
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

QString unitOf(const analysis::Measure& measure, const LogbookSettings& settings)
{
    return measure.rule.unit == "money" ? ui::shown(settings.currency)
                                        : ui::shown(measure.rule.unit);
}

void addDeviations(Document& document, const SideBySide& pair, const ui::PairSides& sides)
{
    const TemperatureUnit unit = pair.settings.temperatureUnit();
    const QString words = ui::shown(pair.text.temperatureSentence);
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
    const results::SameWeatherText& weather = pair.text.weather;
    document.add(Heading{ui::Words::tr("In the same weather")});
    addSentences(document, {weather.sentence, weather.energySentence}, Tone::plain, "same_weather",
                 ui::Words::tr("same weather"));
    auto picture = std::make_shared<ui::WeatherPicture>(pair.weather,
                                                        cells.settings().temperatureUnit(), sides);
    if (!picture->empty())
        document.add(Figure{picture,
                            ui::Words::tr("Mean power over how much warmer the room was"),
                            ui::Words::tr("A point for each time between two readings of the "
                                          "meters, and the line through them. ") +
                                joinedSentences({weather.sentence}),
                            {}});
    addModel(document, pair.a, weather.a);
    addModel(document, pair.b, weather.b);
    addSentences(document, weather.remarks, Tone::muted);
}

void addMoney(Document& document, const SideBySide& pair, const ui::PairSides& sides,
              const Cells& cells)
{
    const results::MoneyText& money = pair.text.money;
    document.add(Heading{ui::Words::tr("Money")});
    for (const results::CostScenarioText& scenario : money.scenarios)
        document.add(Paragraph{QStringLiteral("%1: %2").arg(
            ui::capitalised(ui::shown(scenario.name)), sentenceOf(scenario))});
    document.add(costTable(pair, cells));
    addCostPicture(document, pair, sides);
    addSentences(document, {money.timeOfUse, money.why}, Tone::muted);
}

void addJudgement(Document& document, const SideBySide& pair)
{
    const results::JudgementText& judgement = pair.text.judgement;
    document.add(Heading{ui::Words::tr("Judgement sheet")});
    addSentences(document, {judgement.sentence}, Tone::lead, "judgement",
                 ui::Words::tr("judgement"));
    document.add(judgementTable(pair));
    if (const QStringList turning = ui::sentences(judgement.turning); !turning.isEmpty()) {
        document.add(Paragraph{ui::Words::tr("What would change the result:")});
        document.add(Bullets{"turning", turning});
    }
    addSentences(document, {judgement.rule}, Tone::muted);
}

} // namespace holdband::report
