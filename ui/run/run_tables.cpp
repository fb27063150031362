#include "ui/run/run_tables.h"

#include "core/text/durations.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/words/words.h"

#include <cmath>

namespace holdband::ui {

namespace {

using analysis::Excursion;

QString lengthText(double ms)
{
    return shown(durationText(Milliseconds{std::llround(ms)}, decimalSign()));
}

double inUnit(double kelvins, const review::RunReview& review)
{
    return valueIn(TemperatureDifference::kelvins(kelvins), review.settings.temperatureUnit());
}

double signedPeak(const Excursion& excursion)
{
    return excursion.side == analysis::Side::above ? excursion.peak : -excursion.peak;
}

TableCell settledCell(const analysis::StageTrack& track, const analysis::BandJudgement& judged)
{
    if (judged.missed)
        return {QStringLiteral("missed"),
                QStringLiteral("the beer never came into this stage's band"), true};
    if (!judged.settles)
        return {dash,
                QStringLiteral("no settling: the beer was inside, or the target did not jump"),
                false};
    const auto figures = analysis::settlingFigures(track, judged);
    if (!figures.clockMs)
        return {QStringLiteral("not yet"), QStringLiteral("still on its way to the target"), false};
    return {lengthText(*figures.clockMs),
            QStringLiteral("from the stage's start to the first time inside the band; not judged"),
            false};
}

TableCell insideCell(const analysis::BandJudgement& judged)
{
    if (!(judged.coveredMs > 0.0))
        return {dash, QStringLiteral("nothing of the hold time is covered"), false};
    return {shown(shareText(judged.insideMs / judged.coveredMs, 1, decimalSign())),
            QStringLiteral("%1 inside of %2 covered hold time")
                .arg(lengthText(judged.insideMs), lengthText(judged.coveredMs)),
            false};
}

TableCell worstCell(const analysis::BandJudgement& judged, const review::RunReview& review)
{
    const Excursion* worst = nullptr;
    for (const Excursion& excursion : judged.excursions) {
        if (!worst || excursion.peak > worst->peak)
            worst = &excursion;
    }
    if (!worst)
        return {dash, QStringLiteral("never outside the band"), false};
    return {signedText(inUnit(signedPeak(*worst), review), 1),
            QStringLiteral("how far past the band's edge, at most"), false};
}

QString boundsText(const analysis::EnergyFigure& energy, int decimals)
{
    if (!energy.lowKnown() || !energy.highKnown())
        return energy.lowKnown() ? QStringLiteral("at least ") + numberText(energy.low, decimals)
                                 : QStringLiteral("bounds unknown");
    return QStringLiteral("%1 – %2").arg(numberText(energy.low, decimals),
                                         numberText(energy.high, decimals));
}

TableCell kwhCell(const analysis::EnergyFigure& energy)
{
    if (!energy.any())
        return {dash, QStringLiteral("not metered"), false};
    return {numberText(energy.kwh, 2),
            QStringLiteral("%1 kWh; metered for %2")
                .arg(boundsText(energy, 2), lengthText(energy.meteredMs())),
            false};
}

QString endedBy(const Excursion& excursion)
{
    switch (excursion.cut) {
    case analysis::Cut::cameBack:
        return {};
    case analysis::Cut::gap:
        return QStringLiteral(", cut by a gap");
    case analysis::Cut::stageEnd:
        break;
    }
    return QStringLiteral(", cut by the stage’s end");
}

std::vector<TableCell> excursionRow(const Excursion& excursion, Span span,
                                    const review::RunReview& review)
{
    const bool above = excursion.side == analysis::Side::above;
    const std::string_view unit = unitText(review.settings.temperatureUnit());
    const QString peak = signedText(inUnit(signedPeak(excursion), review), 1) + QLatin1Char(' ') +
                         shown(unit) + endedBy(excursion);
    const QString why =
        QStringLiteral("%1 the band until %2; %3 %4·h beyond the edge")
            .arg(above ? QStringLiteral("above") : QStringLiteral("below"),
                 shown(localShortText(span.end, review.zone)),
                 numberText(inUnit(excursion.areaMs / 3.6e6, review), 2), shown(unit));
    return {{above ? QStringLiteral("▲") : QStringLiteral("▼"), why, false},
            {shown(localShortText(span.start, review.zone)), why, false},
            {lengthText(excursion.lengthMs()), why, false},
            {peak, why, false}};
}

template <typename Visit>
void forEachExcursion(const review::RunReview& review, Visit visit)
{
    const analysis::JudgedBatch& judged = review.figures.judged;
    for (std::size_t i = 0; i < judged.stages.size(); ++i) {
        const Instant start = judged.stages[i].span.start;
        for (const Excursion& excursion : judged.asPlanned.stages[i].excursions) {
            const auto at = [&](double ms) { return start + Milliseconds{std::llround(ms)}; };
            visit(excursion, Span{at(excursion.startMs), at(excursion.endMs)});
        }
    }
}

void addEnergyRow(TableWords& table, const QString& title, const analysis::EnergyFigure& energy)
{
    if (energy.any())
        table.rows.push_back(
            {{title, {}, false},
             {numberText(energy.kwh, 2) + QStringLiteral(" kWh"), kwhCell(energy).why, true},
             {boundsText(energy, 2), {}, false}});
}

void addMoney(TableWords& table, const review::RunReview& review)
{
    const auto& cost = review.figures.energy.cost;
    if (!cost)
        return;
    const auto money = [&](double amount) {
        return shown(moneyText(amount, review.settings.currency, decimalSign()));
    };
    const auto& tariff = review.settings.tariff;
    const QString title = tariff.windows.empty() && tariff.pricePerKwh
                              ? QStringLiteral("at %1 a kWh").arg(money(*tariff.pricePerKwh))
                              : QStringLiteral("by the time of use");
    const bool bounded = std::isfinite(cost->low) && std::isfinite(cost->high);
    table.rows.push_back(
        {{title, {}, false},
         {money(cost->amount), {}, true},
         {bounded ? QStringLiteral("%1 – %2").arg(money(cost->low), money(cost->high)) : QString(),
          {},
          false}});
}

void addRates(TableWords& table, const review::RunReview& review)
{
    const analysis::RunEnergy& energy = review.figures.energy;
    if (const auto watts = energy.meanWatts())
        table.rows.push_back({{QStringLiteral("mean power"), {}, false},
                              {shown(powerText(Power::watts(*watts), 0, decimalSign())),
                               QStringLiteral("energy over the metered time"), true},
                              {}});
    addMoney(table, review);
    if (!energy.kwhPerDegreeDay)
        return;
    const bool us = review.settings.temperatureUnit() == TemperatureUnit::fahrenheit;
    const double perDegree = *energy.kwhPerDegreeDay / (us ? 1.8 : 1.0);
    table.rows.push_back(
        {{us ? QStringLiteral("per °F·day of lift") : QStringLiteral("per °C·day of lift"),
          {},
          false},
         {numberText(perDegree, 3) + QStringLiteral(" kWh"),
          QStringLiteral("energy over the sum of room minus beer, where the room is the warmer"),
          true},
         {}});
}

} // namespace

TableWords stageTable(const review::RunReview& review)
{
    TableWords table;
    table.header = {QStringLiteral("Stage"), QStringLiteral("settled in"), QStringLiteral("inside"),
                    QStringLiteral("worst"), QStringLiteral("kWh")};
    table.numeric = {false, true, true, true, true};
    const analysis::JudgedBatch& judged = review.figures.judged;
    const TemperatureUnit unit = review.settings.temperatureUnit();
    for (std::size_t i = 0; i < judged.stages.size(); ++i) {
        const analysis::PlacedStage& stage = judged.stages[i];
        const double length = static_cast<double>((stage.span.end - stage.span.start).count());
        const Temperature end = Temperature::celsius(stage.targetCelsiusAt(length));
        QString why = QStringLiteral("%1 ± %2, from %3")
                          .arg(shown(temperatureText(end, unit, 1, decimalSign())),
                               shown(differenceText(stage.tolerance, unit, 2, decimalSign())),
                               shown(localShortText(stage.span.start, review.zone)));
        const analysis::BandJudgement& stageJudged = judged.asPlanned.stages[i];
        table.rows.push_back(
            {{shown(stage.label), shown(stage.label) + QStringLiteral(": ") + why, false},
             settledCell(judged.tracks[i], stageJudged),
             insideCell(stageJudged),
             worstCell(stageJudged, review),
             kwhCell(review.figures.energy.stages[i].energy)});
    }
    return table;
}

TableWords excursionTable(const review::RunReview& review)
{
    TableWords table;
    table.header = {
        {}, QStringLiteral("from"), QStringLiteral("for"), QStringLiteral("past the edge")};
    table.numeric = {false, false, false, false};
    forEachExcursion(review, [&](const Excursion& excursion, Span span) {
        table.rows.push_back(excursionRow(excursion, span, review));
    });
    return table;
}

std::vector<Span> excursionSpans(const review::RunReview& review)
{
    std::vector<Span> spans;
    forEachExcursion(review, [&](const Excursion&, Span span) { spans.push_back(span); });
    return spans;
}

QString excursionRemark(const review::RunReview& review)
{
    const Milliseconds grace = review.batch().grace;
    if (grace > Milliseconds{0})
        return QStringLiteral("Those shorter than %1 do not count for the verdict.")
            .arg(lengthText(static_cast<double>(grace.count())));
    return excursionSpans(review).empty()
               ? QStringLiteral("None. Every moment outside the band would count.")
               : QStringLiteral("Every moment outside the band counts.");
}

TableWords energyTable(const review::RunReview& review)
{
    const analysis::RunEnergy& energy = review.figures.energy;
    TableWords table;
    table.header = {{}, {}, QStringLiteral("least – most")};
    table.numeric = {false, true, true};
    addEnergyRow(table,
                 energy.partlyMetered() ? QStringLiteral("Metered part")
                                        : QStringLiteral("Whole run"),
                 energy.whole);
    if (energy.beforeCrash)
        addEnergyRow(table, QStringLiteral("before the crash"), energy.beforeCrash->energy);
    if (energy.crash)
        addEnergyRow(table, QStringLiteral("the crash"), energy.crash->energy);
    if (energy.whole.any())
        addRates(table, review);
    return table;
}

QStringList journalLines(const review::RunReview& review)
{
    QStringList lines;
    int number = 0; // as in the chart, which leaves out what lies outside the run
    for (const JournalNote& note : review.journal) {
        const bool drawn = note.at >= review.input.span.start && note.at <= review.input.span.end;
        const QString mark = drawn ? QStringLiteral("%1 · ").arg(++number) : QString();
        lines << mark + shown(localShortText(note.at, review.zone)) + QStringLiteral(" · ") +
                     shown(note.text);
    }
    return lines;
}

QString runSubtitle(const review::RunReview& review)
{
    const Batch& batch = review.batch();
    QStringList parts{shown(batch.name), shown(batch.setup),
                      QStringLiteral("pitched ") +
                          shown(localShortText(batch.pitched, review.zone))};
    if (batch.volume)
        parts << shown(volumeText(*batch.volume, review.settings.units, decimalSign()));
    if (batch.originalGravity) {
        QString gravity = shown(gravityText(*batch.originalGravity, decimalSign()));
        if (batch.finalGravity)
            gravity +=
                QStringLiteral(" → ") + shown(gravityText(*batch.finalGravity, decimalSign()));
        parts << gravity;
    }
    return parts.join(QStringLiteral(" · "));
}

} // namespace holdband::ui
