#include "ui/report/run_stages.h"

#include "core/review/causes.h"
#include "core/text/quantities.h"
#include "ui/report/cells.h"
#include "ui/run/run_tables.h"
#include "ui/words/words.h"

#include <cmath>

namespace holdband::report {

namespace {

using analysis::BandJudgement;
using analysis::Excursion;
using review::RunReview;

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
            rawNumber(valueIn(end, unit)), cells.degrees()};
}

Cell settledCell(const analysis::StageTrack& track, const BandJudgement& judged, const Cells& cells)
{
    if (judged.missed)
        return {ui::Words::tr("missed"), {}, {}, true};
    if (!judged.settles)
        return cells.absent();
    const auto figures = analysis::settlingFigures(track, judged);
    return figures.clockMs ? cells.length(*figures.clockMs) : Cell{ui::Words::tr("not yet")};
}

Cell worstCell(const BandJudgement& judged, const Cells& cells)
{
    double worst = 0.0;
    for (const Excursion& excursion : judged.excursions)
        worst = std::max(worst, excursion.peak);
    return cells.pastEdge(worst);
}

std::optional<double> ratio(double part, double whole)
{
    return whole > 0.0 ? std::optional(part / whole) : std::nullopt;
}

std::vector<Cell> stageRow(const RunReview& review, std::size_t i, const Cells& cells)
{
    const analysis::JudgedBatch& judged = review.figures.judged;
    const analysis::PlacedStage& stage = judged.stages[i];
    const BandJudgement& band = judged.asPlanned.stages[i];
    const analysis::TimeMoments& deviation = judged.statistics[i].deviation;
    return {cells.text(stage.label),
            targetCell(stage, cells),
            cells.instant(stage.span.start),
            settledCell(judged.tracks[i], band, cells),
            cells.length(band.holdMs),
            cells.share(ratio(band.coveredMs, band.holdMs)),
            cells.share(ratio(band.insideMs, band.coveredMs)),
            cells.difference(deviation.empty() ? std::nullopt : std::optional(deviation.mean())),
            worstCell(band, cells)};
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
    const Instant start =
        judged.stages[stage].span.start + Milliseconds{std::llround(excursion.startMs)};
    const std::string cause = review::causeText(review::causeOf(review, stage, k));
    const bool above = excursion.side == analysis::Side::above;
    return {cells.instant(start),
            {above ? ui::Words::tr("▲ above") : ui::Words::tr("▼ below"),
             above ? ui::Words::tr("above") : ui::Words::tr("below")},
            cells.length(excursion.lengthMs()),
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
    const QString unit = cells.degrees();
    Table table;
    table.title = ui::Words::tr("Stages");
    table.columns = {words(ui::Words::tr("Stage")),
                     figures(ui::Words::tr("target"), unit),
                     words(ui::Words::tr("from")),
                     figures(ui::Words::tr("settled in"), "h"),
                     figures(ui::Words::tr("held"), "h"),
                     figures(ui::Words::tr("seen"), "1"),
                     figures(ui::Words::tr("inside"), "1"),
                     figures(ui::Words::tr("mean deviation, %1"), unit),
                     figures(ui::Words::tr("worst past edge, %1"), unit)};
    for (Column& column : table.columns)
        column.title.replace(QStringLiteral("%1"), unit);
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
    table.title = ui::Words::tr("Excursions");
    table.columns = {words(ui::Words::tr("From")),
                     words(ui::Words::tr("side")),
                     figures(ui::Words::tr("lasted"), "h"),
                     figures(ui::Words::tr("worst past edge, %1"), cells.degrees()),
                     words(ui::Words::tr("ended by")),
                     wideWords(ui::Words::tr("cause"))};
    table.columns[3].title.replace(QStringLiteral("%1"), cells.degrees());
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
