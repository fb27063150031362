#include "ui/run/run_tables.h"

#include "core/results/run/causes.h"
#include "core/results/run/explain.h"
#include "core/results/run/stage_texts.h"
#include "core/text/durations.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/words/words.h"

#include <cmath>

namespace holdband::ui {

namespace {

using analysis::Excursion;
using results::StageFigure;

QString lengthText(double ms)
{
    return shown(durationText(wholeMs(ms), decimalSign()));
}

QString endedBy(const Excursion& excursion)
{
    switch (excursion.cut) {
    case analysis::Cut::cameBack:
        return {};
    case analysis::Cut::gap:
        return Words::tr(", cut by a gap");
    case analysis::Cut::stageEnd:
        break;
    }
    return Words::tr(", cut by the stage’s end");
}

std::vector<TableCell> excursionRow(const Excursion& excursion, Span span, const QString& why,
                                    const QString& cause, const results::RunReview& review)
{
    const bool above = excursion.side == analysis::Side::above;
    const QString peak =
        shown(results::pastEdgeText(excursion.signedPeak(), review.settings.temperatureUnit(),
                                    decimalSign())) +
        QLatin1Char(' ') + shown(unitText(review.settings.temperatureUnit())) + endedBy(excursion) +
        (cause.isEmpty() ? QString() : QStringLiteral(" · ") + cause);
    return {{above ? QStringLiteral("▲") : QStringLiteral("▼"), why, false},
            {shown(timeInRun(review, span.start)), why, false},
            {lengthText(excursion.outsideMs), why, false},
            {peak, why, false}};
}

template <typename Visit>
void forEachExcursion(const results::RunReview& review, Visit visit)
{
    const analysis::JudgedBatch& judged = review.figures.judged;
    for (std::size_t i = 0; i < judged.stages.size(); ++i) {
        const auto& excursions = judged.asPlanned.stages[i].excursions;
        for (std::size_t k = 0; k < excursions.size(); ++k)
            visit(i, k, spanOf(judged.stages[i], excursions[k]));
    }
}

} // namespace

TableText stageTable(const results::RunReview& review)
{
    TableText table;
    table.header = {Words::tr("Stage"), Words::tr("settled in"), Words::tr("inside"),
                    Words::tr("worst"), QStringLiteral("kWh")};
    table.numeric = {false, true, true, true, true};
    const analysis::JudgedBatch& judged = review.figures.judged;
    const TemperatureUnit unit = review.settings.temperatureUnit();
    const auto explained = [&](std::size_t stage, StageFigure figure) {
        return shown(results::explainStage(review, stage, figure, decimalSign()));
    };
    for (std::size_t i = 0; i < judged.stages.size(); ++i) {
        const analysis::PlacedStage& stage = judged.stages[i];
        const double length = static_cast<double>((stage.span.end - stage.span.start).count());
        const Temperature end = Temperature::celsius(stage.targetCelsiusAt(length));
        QString why = Words::tr("%1 ± %2, from %3")
                          .arg(shown(temperatureText(end, unit, 1, decimalSign())),
                               shown(differenceText(stage.tolerance, unit, 2, decimalSign())),
                               shown(timeInRun(review, stage.span.start)));
        const results::StageTexts texts = results::stageTexts(review, i);
        const bool missed = review.figures.stages[i].settled == analysis::Settled::missed;
        table.rows.push_back(
            {{shown(stage.label), shown(stage.label) + QStringLiteral(": ") + why, false},
             {shown(texts.settledIn), explained(i, StageFigure::settledIn), missed},
             {shown(texts.inside), explained(i, StageFigure::insideShare), false},
             {shown(texts.worst), explained(i, StageFigure::worst), false},
             {shown(texts.kwh), explained(i, StageFigure::energy), false}});
    }
    return table;
}

TableText excursionTable(const results::RunReview& review)
{
    TableText table;
    table.header = {{}, Words::tr("from"), Words::tr("outside"), Words::tr("past the edge")};
    table.numeric = {false, false, false, false};
    forEachExcursion(review, [&](std::size_t stage, std::size_t k, Span span) {
        const QString why = shown(results::explainExcursion(review, stage, k, decimalSign()));
        const Excursion& excursion = review.figures.judged.asPlanned.stages[stage].excursions[k];
        const QString cause = shown(results::causeText(results::causeOf(review, stage, k)));
        const QString whole = cause.isEmpty() ? why : Words::tr("%1 Cause: %2").arg(why, cause);
        table.rows.push_back(excursionRow(excursion, span, whole, cause, review));
    });
    return table;
}

std::vector<ExcursionPlace> excursionPlaces(const results::RunReview& review)
{
    std::vector<ExcursionPlace> places;
    forEachExcursion(review, [&](std::size_t stage, std::size_t excursion, Span) {
        places.push_back({stage, excursion});
    });
    return places;
}

std::vector<Span> excursionSpans(const results::RunReview& review)
{
    std::vector<Span> spans;
    forEachExcursion(review, [&](std::size_t, std::size_t, Span span) { spans.push_back(span); });
    return spans;
}

namespace {

/// Why there are none where a target was missed.
QString missedRemark(const std::vector<std::string>& missed)
{
    QStringList names;
    for (const std::string& name : missed)
        names << shown(name);
    return Words::tr("None: a stage is watched for them once its target is reached, and that of %1 "
                     "was not.")
        .arg(names.join(QStringLiteral(", ")));
}

} // namespace

QString excursionRemark(const results::RunReview& review)
{
    const std::vector<std::string>& missed = review.figures.judged.asPlanned.missed;
    if (!missed.empty() && excursionSpans(review).empty())
        return missedRemark(missed);
    if (!(review.figures.judged.asPlanned.totals.coveredMs > 0.0))
        return Words::tr("There is no hold time with data yet.");
    const Milliseconds ignoreShorterThan = review.batch().ignoreShorterThan;
    if (ignoreShorterThan > Milliseconds{0})
        return Words::tr("Those shorter than %1 do not count for the verdict.")
            .arg(lengthText(static_cast<double>(ignoreShorterThan.count())));
    return excursionSpans(review).empty()
               ? Words::tr("None. Every moment outside the band would count.")
               : Words::tr("Every moment outside the band counts.");
}

QStringList journalLines(const results::RunReview& review)
{
    QStringList lines;
    int number = 0; // as in the chart, which omits notes outside the run
    for (const JournalNote& note : review.journal) {
        const bool drawn = note.at >= review.input.span.start && note.at <= review.input.span.end;
        const QString mark = drawn ? QStringLiteral("%1 · ").arg(++number) : QString();
        lines << mark + shown(timeInRun(review, note.at)) + QStringLiteral(" · ") +
                     shown(note.text);
    }
    return lines;
}

QString runSubtitle(const results::RunReview& review)
{
    const Batch& batch = review.batch();
    QStringList parts{shown(batch.name), shown(batch.setup),
                      Words::tr("pitched %1").arg(shown(timeInRun(review, batch.pitched)))};
    if (batch.volume)
        parts << shown(volumeText(*batch.volume, review.settings.units, decimalSign()));
    if (batch.originalGravity) {
        QString gravity = shown(gravityText(*batch.originalGravity, decimalSign()));
        if (const auto latest = latestGravity(review))
            gravity += QStringLiteral(" → ") + shown(gravityText(*latest, decimalSign()));
        parts << gravity;
    }
    return parts.join(QStringLiteral(" · "));
}

} // namespace holdband::ui
