#include "ui/report/compose/pair_document.h"

#include "core/results/comparison/side_by_side.h"
#include "core/text/name_suggestions.h"
#include "ui/charts/batch_energies.h"
#include "ui/charts/pair_bars.h"
#include "ui/charts/pair_energy.h"
#include "ui/report/compose/evidence_tables.h"
#include "ui/report/compose/pair_parts.h"
#include "ui/words/words.h"

#include <algorithm>

namespace holdband::report {

namespace {

using results::SideBySide;

/// The text from the screen with the raw figure of the analysis, in the unit of the analysis.
Cell cellOf(const std::string& text, const std::optional<analysis::Bounded>& figure,
            const QString& unit)
{
    if (!figure)
        return {text.empty() ? ui::dash : ui::shown(text)};
    return {ui::shown(text), rawNumber(figure->value), unit};
}

/// A row of figures of one measure.
Cell measureCell(const QString& title, analysis::MeasureId id)
{
    Cell cell{title, ui::shown(results::measureName(id))};
    cell.id = cell.raw;
    return cell;
}

/// The minimum and the maximum of "A − B".
void addBoundsColumns(Table& table, const QString& id, const QString& figure)
{
    table.columns.push_back(
        {id + QStringLiteral("_low"), ui::Words::tr("%1, minimum").arg(figure), {}, true});
    table.columns.push_back(
        {id + QStringLiteral("_high"), ui::Words::tr("%1, maximum").arg(figure), {}, true});
}

/// In the CSV only: on paper the bounds are written next to the values.
Table boundsTable(const SideBySide& pair)
{
    Table table;
    table.id = "bounds";
    table.title = ui::Words::tr("Bounds of the measures");
    table.shown = Shown::amongFigures;
    table.columns = {words("measure", ui::Words::tr("Measure"))};
    addBoundsColumns(table, "a", "A");
    addBoundsColumns(table, "b", "B");
    addBoundsColumns(table, "difference", QStringLiteral("A − B"));
    addBoundsColumns(table, "ratio", QStringLiteral("A ÷ B"));
    for (const analysis::Measure& measure : pair.measures) {
        const QString unit = unitOf(measure, pair.settings);
        std::vector<Cell> row{measureCell({}, measure.rule.id)};
        for (const auto* figure : {&measure.a, &measure.b, &measure.difference, &measure.ratio}) {
            for (const auto bound : {&analysis::Bounded::low, &analysis::Bounded::high}) {
                const auto value = *figure ? (**figure).*bound : std::nullopt;
                const QString raw = value ? rawNumber(*value) : QString();
                row.push_back({raw, raw, figure == &measure.ratio ? QStringLiteral("1") : unit});
            }
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

Table measuresTable(const SideBySide& pair)
{
    Table table;
    table.id = "measures";
    table.title = ui::Words::tr("Measures");
    table.columns = {wideWords("measure", ui::Words::tr("Measure")),
                     figures("a", QStringLiteral("A")),
                     figures("b", QStringLiteral("B")),
                     figures("difference", QStringLiteral("A − B")),
                     figures("ratio", QStringLiteral("A ÷ B")),
                     words("ahead", ui::Words::tr("ahead"))};
    for (std::size_t i = 0; i < pair.measures.size(); ++i) {
        const results::MeasureText& line = pair.text.measures[i];
        const analysis::Measure& measure = pair.measures[i];
        const QString unit = unitOf(measure, pair.settings);
        table.rows.push_back({measureCell(ui::shown(line.title), measure.rule.id),
                              cellOf(line.a, measure.a, unit),
                              cellOf(line.b, measure.b, unit),
                              cellOf(line.difference, measure.difference, unit),
                              cellOf(line.ratio, measure.ratio, QStringLiteral("1")),
                              {line.ahead.empty() ? ui::dash : ui::shown(line.ahead)}});
        table.rows.back().back().strong = isDecided(measure.ahead);
    }
    return table;
}

/// "Energy, kWh: A 13.82, B 12.34, too close to call."
QString glanceWords(const results::PairGlance& glance)
{
    QStringList lines;
    for (const results::GlancePair& each : glance.pairs)
        lines << QStringLiteral("%1: A %2, B %3, %4.")
                     .arg(ui::shown(each.title), ui::shown(each.a.text), ui::shown(each.b.text),
                          ui::shown(each.aheadText));
    return lines.join(u' ');
}

/// Of two setups, which have no energy over the same time, the first figure, so that it is the
/// picture. Of two batches it only goes beside the picture's chart.
void addGlance(Document& document, const SideBySide& pair, const ui::PairSides& sides)
{
    auto bars = std::make_shared<ui::PairBarsPicture>(pair.glance, pair.ofSetups, sides);
    if (!pair.ofSetups) {
        if (!bars->empty())
            document.glance = bars;
        return;
    }
    if (!bars->empty())
        document.add(Figure{bars, ui::Words::tr("At a glance"), glanceWords(pair.glance), {}});
    auto energies = std::make_shared<ui::BatchEnergiesPicture>(pair.energyA, pair.energyB, sides);
    if (!energies->empty())
        document.add(
            Figure{energies,
                   ui::Words::tr("Energy of every batch since pitching"),
                   ui::Words::tr("Cumulative energy of every batch of A, %1, and B, %2. %3")
                       .arg(sides.a, sides.b, ui::shown(pair.text.energySentence)),
                   {}});
}

void addChart(Document& document, const SideBySide& pair, const ui::PairSides& sides)
{
    auto picture = std::make_shared<ui::PairEnergyPicture>(pair, sides);
    if (picture->empty())
        return;
    document.add(Figure{
        picture, ui::Words::tr("Energy of both over the same elapsed time"),
        ui::Words::tr("Cumulative energy of A, %1, and B, %2, and their ratio. %3")
            .arg(ui::shown(pair.a), ui::shown(pair.b), ui::shown(pair.text.energySentence)),
        ui::Words::tr(
            "Pale: the minimum and maximum that the meters’ readings and their accuracy allow.")});
}

/// Adds why neither side is ahead, and how bounds were cut. Measures with the same remark share a
/// line.
void addRemarks(Document& document, const SideBySide& pair)
{
    std::vector<std::pair<QString, QStringList>> remarks;
    for (const results::MeasureText& line : pair.text.measures) {
        if (line.remark.empty())
            continue;
        const QString remark = ui::shown(line.remark);
        const auto same = std::find_if(remarks.begin(), remarks.end(),
                                       [&](const auto& each) { return each.first == remark; });
        if (same == remarks.end())
            remarks.push_back({remark, {ui::shown(line.title)}});
        else
            same->second << ui::shown(line.title);
    }
    QStringList items;
    for (const auto& [remark, titles] : remarks)
        items << titles.join(QStringLiteral("; ")) + QStringLiteral(": ") + remark +
                     (remark.endsWith(u'.') ? QString() : QStringLiteral("."));
    if (!items.isEmpty())
        document.add(Bullets{"remarks", items});
}

void addNotes(Document& document, const SideBySide& pair)
{
    if (pair.notes.empty())
        return;
    Table table;
    table.id = "fairness";
    table.title = ui::Words::tr("How fair is this?");
    table.columns = {wideWords("note", ui::Words::tr("What differs")),
                     wideWords("effect", ui::Words::tr("what it does")),
                     wideWords("measure", ui::Words::tr("touches"))};
    for (std::size_t i = 0; i < pair.notes.size(); ++i) {
        const results::NoteText& note = pair.text.notes[i];
        table.rows.push_back(
            {{ui::capitalised(ui::shown(note.note))},
             {ui::shown(note.effect)},
             {ui::shown(note.title), ui::shown(results::measureName(pair.notes[i].touches))}});
    }
    document.add(Heading{table.title});
    document.add(std::move(table));
}

void addBatches(Document& document, const SideBySide& pair)
{
    if (!pair.ofSetups)
        return;
    Table table = factsTable("batches", ui::Words::tr("Batches that went in"));
    addFact(table, "a", QStringLiteral("A"), ui::shown(joined(pair.batchesA)));
    addFact(table, "b", QStringLiteral("B"), ui::shown(joined(pair.batchesB)));
    document.add(Heading{table.title});
    document.add(std::move(table));
}

void addEvidence(Document& document, const PairProvenance& provenances, const Origin& origin,
                 const Cells& cells)
{
    std::vector<SideProvenance> batches;
    for (const results::Provenance& provenance : provenances.a)
        batches.push_back({QStringLiteral("A"), provenance});
    for (const results::Provenance& provenance : provenances.b)
        batches.push_back({QStringLiteral("B"), provenance});
    addProvenance(
        document, batches, origin, cells,
        ui::Words::tr("Energies are compared over the elapsed time that is metered in both. "
                      "One side is ahead only where the ranges of the two do not overlap; the "
                      "range of energy covers the reading of the meters and their accuracy, "
                      "that of temperature the sensors’ accuracy. ") +
            methodInShort());
}

} // namespace

Result<Document> pairDocument(const SideBySide& pair, const PairProvenance& provenances,
                              const Origin& origin)
{
    auto zone = Zone::named(pair.settings.zone);
    HOLDBAND_TRY(zone);
    Document document;
    document.kind = ui::Words::tr("Report of a comparison");
    document.title = ui::Words::tr("%1 and %2").arg(ui::shown(pair.a), ui::shown(pair.b));
    document.subtitle =
        ui::Words::tr("A is %1 · B is %2").arg(ui::shown(pair.a), ui::shown(pair.b));
    document.headline = ui::shown(pair.glance.answer);
    document.footer = footerOf(origin, *zone);
    document.us = pair.settings.units == UnitSystem::us;
    document.add(Paragraph{document.headline, Tone::lead});
    if (!pair.glance.open.empty())
        document.add(Paragraph{ui::shown(pair.glance.open), Tone::muted});
    document.add(
        Paragraph{ui::shown(pair.text.headline), Tone::plain, "energy", ui::Words::tr("energy")});
    document.add(Paragraph{ui::shown(pair.text.belowHeadline), Tone::plain, "temperature",
                           ui::Words::tr("temperature")});
    if (!pair.ofSetups)
        document.add(Paragraph{ui::Words::tr("Counted from %1; energy over the %2 h that are "
                                             "metered in both.")
                                   .arg(ui::shown(pair.text.alignedFrom),
                                        ui::numberText(pair.alignment.commonHours, 1)),
                               Tone::muted});
    if (!pair.text.scope.empty())
        document.add(Paragraph{ui::shown(pair.text.scope), Tone::muted});
    const ui::PairSides sides{ui::shown(pair.a), ui::shown(pair.b)};
    const Cells cells(pair.settings, *zone);
    addGlance(document, pair, sides);
    addChart(document, pair, sides);
    addDeviations(document, pair, sides);
    document.add(Heading{ui::Words::tr("Measures")});
    document.add(measuresTable(pair));
    document.add(boundsTable(pair));
    addRemarks(document, pair);
    addNotes(document, pair);
    addBatches(document, pair);
    addBatchFigures(document, pair, sides);
    addWeather(document, pair, sides, cells);
    addMoney(document, pair, sides, cells);
    addJudgement(document, pair);
    addEvidence(document, provenances, origin, cells);
    return document;
}

} // namespace holdband::report
