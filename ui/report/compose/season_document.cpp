#include "ui/report/compose/season_document.h"

#include "core/text/numbers.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/charts/season_picture.h"
#include "ui/report/compose/evidence_tables.h"
#include "ui/words/choice_text.h"
#include "ui/words/words.h"

namespace holdband::report {

namespace {

constexpr std::size_t mostBatches = 2'000; ///< the sum is in the last row

using results::Season;
using results::SeasonLine;

/// "2 Mar 2026", with the instant as raw value
Cell dayCell(Instant at, const Cells& cells)
{
    Cell cell = cells.instant(at);
    cell.text = ui::shown(dateText(cells.zone().localDate(at)));
    return cell;
}

std::vector<Cell> verdictRow(const SeasonLine& line, const Cells& cells)
{
    Cell ended = dayCell(line.span.end, cells);
    if (line.open)
        ended = {ui::Words::tr("open")};
    return {cells.text(line.batch),
            dayCell(line.span.start, cells),
            ended,
            cells.text(line.headline),
            cells.share(line.coverage),
            cells.share(line.insideShare),
            cells.pastEdge(line.worstPeak)};
}

Table verdicts(const Season& season, const Cells& cells)
{
    Table table;
    table.id = "verdicts";
    table.title = ui::Words::tr("Did they stay in their bands?");
    table.mostRows = mostBatches;
    table.columns = {words("batch", ui::Words::tr("Batch")),
                     words("pitched", ui::Words::tr("pitched")),
                     words("ended", ui::Words::tr("ended")),
                     wideWords("verdict", ui::Words::tr("verdict")),
                     figures("coverage", ui::Words::tr("covered"), "1"),
                     figures("inside_share", ui::Words::tr("inside"), "1"),
                     cells.differences("worst_past_edge", ui::Words::tr("worst past edge"))};
    for (const SeasonLine& line : season.batches)
        table.rows.push_back(verdictRow(line, cells));
    return table;
}

std::vector<Cell> energyRow(const SeasonLine& line, const Cells& cells)
{
    Cell name = cells.text(line.batch);
    if (line.partlyMetered)
        name.text += ui::Words::tr(", partly metered");
    const std::optional<double> cost = line.cost ? std::optional(line.cost->amount) : std::nullopt;
    return {name,
            cells.kwh(line.energy),
            cells.leastKwh(line.energy),
            cells.mostKwh(line.energy),
            cells.metered(line.energy),
            cells.watts(line.meanWatts),
            cells.money(cost),
            cells.difference(line.meanLift, 1),
            cells.perDegreeDay(line.kwhPerDegreeDay)};
}

std::vector<Cell> sumRow(const Season& season, const Cells& cells)
{
    const QString all = season.metered == season.batches.size()
                            ? ui::Words::tr("Sum")
                            : ui::Words::tr("Sum of the %1 metered").arg(season.metered);
    const std::optional<double> cost = season.cost && season.priced == season.metered
                                           ? std::optional(season.cost->amount)
                                           : std::nullopt;
    std::vector<Cell> row{{all},
                          cells.kwh(season.energy),
                          cells.leastKwh(season.energy),
                          cells.mostKwh(season.energy),
                          {QString()},
                          {QString()},
                          cells.money(cost),
                          {QString()},
                          {QString()}};
    row.front().id = "sum";
    for (Cell& cell : row)
        cell.strong = true;
    return row;
}

/// "kWh for each °F·day" on pages
Column perDegreeDays(const Cells& cells)
{
    Column column =
        figures("kwh_per_cday", ui::Words::tr("kWh for each %1·day").arg(cells.degrees()),
                QStringLiteral("kWh/(K·d)"));
    column.name = ui::Words::tr("Energy for each degree-day of lift");
    return column;
}

Table energies(const Season& season, const Cells& cells)
{
    Table table;
    table.id = "energy";
    table.title = ui::Words::tr("Energy and money");
    table.mostRows = mostBatches;
    table.columns = {words("batch", ui::Words::tr("Batch")),
                     figures("kwh", QStringLiteral("kWh"), "kWh"),
                     figures("kwh_low", ui::Words::tr("minimum"), "kWh"),
                     figures("kwh_high", ui::Words::tr("maximum"), "kWh"),
                     figures("metered", ui::Words::tr("metered"), "h"),
                     figures("mean_power", ui::Words::tr("mean power, W"), "W"),
                     figures("cost", ui::Words::tr("cost")),
                     cells.differences("mean_lift", ui::Words::tr("room above beer")),
                     perDegreeDays(cells)};
    for (const SeasonLine& line : season.batches)
        table.rows.push_back(energyRow(line, cells));
    if (season.metered > 0)
        table.rows.push_back(sumRow(season, cells));
    return table;
}

void addChart(Document& document, const Season& season)
{
    auto picture = std::make_shared<ui::SeasonPicture>(season);
    if (picture->empty())
        return;
    document.add(
        Figure{picture, ui::Words::tr("Energy of each batch"),
               ui::Words::tr("A bar for each batch. %1 The figures are in the tables below.")
                   .arg(ui::shown(season.sentence)),
               ui::Words::tr("Under each name: ✓ stayed in the band, a number for its "
                             "excursions, ↛ a target missed, ? not enough data, … still "
                             "open.")});
}

void addParts(Document& document, const Season& season, const Cells& cells)
{
    if (season.setup.parts.empty())
        return;
    Table table;
    table.id = "parts";
    table.title = ui::Words::tr("Parts");
    table.columns = {words("item", ui::Words::tr("Part")),
                     figures("quantity", ui::Words::tr("pieces"), "1"),
                     figures("price", ui::Words::tr("price of one")),
                     figures("total", ui::Words::tr("together"))};
    for (const Part& part : season.setup.parts)
        table.rows.push_back(
            {cells.text(part.item),
             {ui::shown(shortestText(part.quantity, ui::decimalSign())), rawNumber(part.quantity)},
             cells.money(part.price),
             cells.money(part.quantity * part.price)});
    table.rows.push_back({{ui::Words::tr("Sum of all pieces")},
                          {QString()},
                          {QString()},
                          cells.money(season.parts)});
    table.rows.back().front().id = "sum";
    for (Cell& cell : table.rows.back())
        cell.strong = true;
    document.add(Heading{table.title});
    document.add(std::move(table));
}

void addSentences(Document& document, const char* id, const QString& title,
                  const std::vector<std::string>& sentences)
{
    if (sentences.empty())
        return;
    QStringList list;
    for (const std::string& sentence : sentences)
        list << ui::capitalised(ui::shown(sentence));
    document.add(Heading{title});
    document.add(Bullets{id, list});
}

QString subtitleOf(const Season& season)
{
    QStringList parts;
    if (!season.setup.kind.empty())
        parts << ui::shown(season.setup.kind);
    parts << ui::vesselsText(season.setup.vessels);
    if (season.setup.ratedPower)
        parts << ui::Words::tr("rated %1")
                     .arg(ui::shown(powerText(*season.setup.ratedPower, 0, ui::decimalSign())));
    return parts.join(QStringLiteral(" · "));
}

} // namespace

Document seasonDocument(const Season& season, const Origin& origin)
{
    const Cells cells(season.settings, season.zone);
    Document document;
    document.kind = ui::Words::tr("Report of a season");
    document.title = ui::shown(season.setup.name);
    document.subtitle = subtitleOf(season);
    document.headline = ui::shown(season.sentence);
    document.footer = footerOf(origin, season.zone);
    document.us = season.settings.units == UnitSystem::us;
    document.add(Paragraph{document.headline, Tone::lead, "season", ui::Words::tr("season")});
    addChart(document, season);
    if (!season.batches.empty()) {
        for (Table table : {verdicts(season, cells), energies(season, cells)}) {
            document.add(Heading{table.title});
            document.add(std::move(table));
        }
    }
    addParts(document, season, cells);
    addSentences(document, "findings", ui::Words::tr("Check these"), season.findings);
    std::vector<SideProvenance> batches;
    for (const results::Provenance& provenance : season.provenances)
        batches.push_back({{}, provenance});
    addProvenance(document, batches, origin, cells, methodInShort());
    addSentences(document, "cautions", ui::Words::tr("Safety"), season.cautions);
    return document;
}

} // namespace holdband::report
