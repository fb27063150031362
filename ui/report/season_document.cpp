#include "ui/report/season_document.h"

#include "core/text/numbers.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/pictures/season_picture.h"
#include "ui/words/words.h"

namespace holdband::report {

namespace {

constexpr std::size_t mostBatches = 2'000; ///< the sum stands in the last row

using review::Season;
using review::SeasonLine;

/// "2 Mar 2026", and the instant behind it
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
        ended = {QStringLiteral("open")};
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
    table.title = QStringLiteral("Did they stay in their bands?");
    table.mostRows = mostBatches;
    table.columns = {words("Batch"),
                     words("pitched"),
                     words("ended"),
                     wideWords("verdict"),
                     figures("seen", "1"),
                     figures("inside", "1"),
                     figures("worst past edge, %1", cells.degrees())};
    table.columns.back().title.replace(QStringLiteral("%1"), cells.degrees());
    for (const SeasonLine& line : season.batches)
        table.rows.push_back(verdictRow(line, cells));
    return table;
}

std::vector<Cell> energyRow(const SeasonLine& line, const Cells& cells)
{
    Cell name = cells.text(line.batch);
    if (line.partlyMetered)
        name.text += QStringLiteral(", partly metered");
    const std::optional<double> cost = line.cost ? std::optional(line.cost->amount) : std::nullopt;
    const double degree = cells.inUnit(1.0);
    const auto perDegreeDay =
        line.kwhPerDegreeDay ? std::optional(*line.kwhPerDegreeDay / degree) : std::nullopt;
    return {name,
            cells.kwh(line.energy),
            cells.leastKwh(line.energy),
            cells.mostKwh(line.energy),
            cells.metered(line.energy),
            cells.watts(line.meanWatts),
            cells.money(cost),
            cells.difference(line.meanLift),
            cells.number(perDegreeDay, 3, QStringLiteral("kWh/(%1·day)").arg(cells.degrees()))};
}

std::vector<Cell> sumRow(const Season& season, const Cells& cells)
{
    const QString all = season.metered == season.batches.size()
                            ? QStringLiteral("Sum")
                            : QStringLiteral("Sum of the %1 metered").arg(season.metered);
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
    for (Cell& cell : row)
        cell.strong = true;
    return row;
}

Table energies(const Season& season, const Cells& cells)
{
    Table table;
    table.title = QStringLiteral("Energy and money");
    table.mostRows = mostBatches;
    table.columns = {words("Batch"),
                     figures("kWh", "kWh"),
                     figures("least", "kWh"),
                     figures("most", "kWh"),
                     figures("metered", "h"),
                     figures("mean power, W", "W"),
                     figures("cost"),
                     figures("room above beer, %1", cells.degrees()),
                     figures("kWh for each %1·day")};
    for (Column& column : table.columns)
        column.title.replace(QStringLiteral("%1"), cells.degrees());
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
    document.add(Figure{picture, QStringLiteral("Energy of each batch"),
                        QStringLiteral("A bar for each batch. ") + ui::shown(season.sentence) +
                            QStringLiteral(" The figures stand in the tables below."),
                        QStringLiteral("Under each name: ✓ stayed in the band, a number for its "
                                       "excursions, ↛ a target missed, ? not enough data, … still "
                                       "open.")});
}

void addParts(Document& document, const Season& season, const Cells& cells)
{
    if (season.setup.parts.empty())
        return;
    Table table;
    table.title = QStringLiteral("Parts");
    table.columns = {words("Part"), figures("pieces"), figures("price of one")};
    for (const Part& part : season.setup.parts)
        table.rows.push_back(
            {cells.text(part.item),
             {ui::shown(shortestText(part.quantity, ui::decimalSign())), rawNumber(part.quantity)},
             cells.money(part.price)});
    table.rows.push_back(
        {{QStringLiteral("Sum of all pieces")}, {QString()}, cells.money(season.parts)});
    for (Cell& cell : table.rows.back())
        cell.strong = true;
    document.add(Heading{table.title});
    document.add(std::move(table));
}

void addSentences(Document& document, const char* title, const std::vector<std::string>& sentences)
{
    if (sentences.empty())
        return;
    QStringList list;
    for (const std::string& sentence : sentences)
        list << ui::capitalised(ui::shown(sentence));
    document.add(Heading{QString::fromUtf8(title)});
    document.add(Bullets{list});
}

QString subtitleOf(const Season& season)
{
    QStringList parts;
    if (!season.setup.kind.empty())
        parts << ui::shown(season.setup.kind);
    parts << (season.setup.vessels == 1 ? QStringLiteral("1 vessel")
                                        : QStringLiteral("%1 vessels").arg(season.setup.vessels));
    if (season.setup.ratedPower)
        parts << QStringLiteral("rated ") +
                     ui::shown(powerText(*season.setup.ratedPower, 0, ui::decimalSign()));
    return parts.join(QStringLiteral(" · "));
}

} // namespace

Document seasonDocument(const Season& season, const Origin& origin)
{
    const Cells cells(season.settings, season.zone);
    Document document;
    document.kind = QStringLiteral("Report of a season");
    document.title = ui::shown(season.setup.name);
    document.subtitle = subtitleOf(season);
    document.headline = ui::shown(season.sentence);
    document.footer = footerOf(origin, season.zone);
    document.us = season.settings.units == UnitSystem::us;
    document.add(Paragraph{document.headline, Tone::lead, QStringLiteral("season")});
    addChart(document, season);
    if (!season.batches.empty()) {
        for (Table table : {verdicts(season, cells), energies(season, cells)}) {
            document.add(Heading{table.title});
            document.add(std::move(table));
        }
    }
    addParts(document, season, cells);
    addSentences(document, "Worth a look", season.findings);
    Table basis = factsTable("Computed from");
    addOrigin(basis, origin, cells);
    document.add(Heading{basis.title});
    document.add(std::move(basis));
    document.add(Paragraph{methodInShort(), Tone::muted});
    addSentences(document, "Care", season.cautions);
    return document;
}

} // namespace holdband::report
