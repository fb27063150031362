#include "ui/report/compose/run_stages.h"

#include "core/results/run/causes.h"
#include "core/results/run/stage_texts.h"
#include "core/text/quantities.h"
#include "ui/report/compose/cells.h"
#include "ui/run/run_tables.h"
#include "ui/words/words.h"

#include <cmath>

namespace holdband::report {

namespace {

using analysis::Excursion;
using analysis::StageFigures;
using results::RunReview;

/// "66.0 ± 3", "to 70.0 ± 3" for a ramp
Cell targetCell(const analysis::PlacedStage& stage, const Cells& cells)
{
    const double length = static_cast<double>((stage.span.end - stage.span.start).count());
    const Temperature end = Temperature::celsius(stage.targetCelsiusAt(length));
    const TemperatureUnit unit = cells.settings().temperatureUnit();
    const QString tolerance =
        ui::shown(differenceText(stage.tolerance, unit, 2, ui::decimalSign()));
    const QString band = ui::numberText(valueIn(end, unit), 1) + QStringLiteral(" ± ") + tolerance;
    return {stage.kind == StageKind::ramp ? ui::Words::tr("to %1", "the end of a ramp").arg(band)
                                          : band,
            rawNumber(end.celsius()), QStringLiteral("°C")};
}

Cell lengthCell(const std::string& text, std::optional<double> ms)
{
    return {ui::shown(text), ms ? rawNumber(*ms / msPerHour) : QString(), "h"};
}

Cell settledCell(const StageFigures& stage, const results::StageTexts& texts)
{
    const bool arrived = stage.settled == analysis::Settled::arrived;
    Cell cell = lengthCell(texts.settledIn, arrived ? stage.settledInMs : std::nullopt);
    cell.strong = stage.settled == analysis::Settled::missed;
    return cell;
}

Cell differenceCell(const std::string& text, std::optional<double> kelvins)
{
    return {ui::shown(text), kelvins ? rawNumber(*kelvins) : QString(), "K"};
}

std::vector<Cell> stageRow(const RunReview& review, std::size_t i, const Cells& cells)
{
    const analysis::JudgedBatch& judged = review.figures.judged;
    const analysis::PlacedStage& stage = judged.stages[i];
    const StageFigures& figures = review.figures.stages[i];
    const results::StageTexts texts = results::stageTexts(review, i);
    return {cells.text(stage.label),
            targetCell(stage, cells),
            cells.instant(stage.span.start),
            settledCell(figures, texts),
            lengthCell(texts.hold, judged.asPlanned.stages[i].holdMs),
            {ui::shown(texts.coverage), figures.coverage ? rawNumber(*figures.coverage) : QString(),
             "1"},
            {ui::shown(texts.inside),
             figures.insideShare ? rawNumber(*figures.insideShare) : QString(), "1"},
            differenceCell(texts.meanDeviation, figures.meanDeviation),
            differenceCell(texts.worst, figures.worst),
            cells.kwh(review.figures.energy.stages[i].energy)};
}

Cell endCell(const Excursion& excursion)
{
    switch (excursion.cut) {
    case analysis::Cut::gap:
        return {ui::Words::tr("a gap")};
    case analysis::Cut::stageEnd:
        return {ui::Words::tr("the stage’s end")};
    case analysis::Cut::cameBack:
        break;
    }
    return {ui::Words::tr("coming back")};
}

std::vector<Cell> excursionRow(const RunReview& review, std::size_t stage, std::size_t k,
                               const Cells& cells)
{
    const analysis::JudgedBatch& judged = review.figures.judged;
    const Excursion& excursion = judged.asPlanned.stages[stage].excursions[k];
    const Instant start = spanOf(judged.stages[stage], excursion).start;
    const std::string cause = results::causeText(results::causeOf(review, stage, k));
    const bool above = excursion.side == analysis::Side::above;
    return {cells.instant(start),
            {above ? ui::Words::tr("▲ above") : ui::Words::tr("▼ below"),
             above ? ui::Words::tr("above") : ui::Words::tr("below")},
            cells.length(excursion.outsideMs),
            cells.pastEdge(excursion.peak),
            endCell(excursion),
            cause.empty() ? cells.absent() : cells.text(cause)};
}

} // namespace

void addStages(Document& document, const RunReview& review)
{
    const std::size_t count = review.figures.judged.stages.size();
    if (count == 0)
        return;
    const Cells cells(review.settings, review.zone);
    Table table;
    table.id = "stages";
    table.title = ui::Words::tr("Stages");
    table.columns = {words("stage", ui::Words::tr("Stage")),
                     figures("target", ui::Words::tr("target"), QStringLiteral("°C")),
                     words("start", ui::Words::tr("from")),
                     figures("settled_in", ui::Words::tr("settled in"), "h"),
                     figures("hold", ui::Words::tr("held"), "h"),
                     figures("coverage", ui::Words::tr("covered"), "1"),
                     figures("inside_share", ui::Words::tr("inside"), "1"),
                     cells.differences("mean_deviation", ui::Words::tr("mean deviation")),
                     cells.differences("worst_past_edge", ui::Words::tr("worst past edge")),
                     figures("kwh", QStringLiteral("kWh"), "kWh")};
    for (std::size_t i = 0; i < count; ++i)
        table.rows.push_back(stageRow(review, i, cells));
    document.add(Heading{table.title});
    document.add(std::move(table));
}

void addExcursions(Document& document, const RunReview& review)
{
    const Cells cells(review.settings, review.zone);
    document.add(Heading{ui::Words::tr("Excursions")});
    Table table;
    table.id = "excursions";
    table.title = ui::Words::tr("Excursions");
    table.columns = {words("start", ui::Words::tr("From")),
                     words("side", ui::Words::tr("side")),
                     figures("outside", ui::Words::tr("outside"), "h"),
                     cells.differences("peak", ui::Words::tr("worst past edge")),
                     words("cut", ui::Words::tr("ended by")),
                     wideWords("cause", ui::Words::tr("cause"))};
    const auto& stages = review.figures.judged.asPlanned.stages;
    for (std::size_t i = 0; i < stages.size(); ++i) {
        for (std::size_t k = 0; k < stages[i].excursions.size(); ++k)
            table.rows.push_back(excursionRow(review, i, k, cells));
    }
    if (!table.rows.empty())
        document.add(std::move(table));
    document.add(Paragraph{ui::excursionRemark(review), Tone::muted});
}

} // namespace holdband::report
