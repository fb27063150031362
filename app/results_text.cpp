#include "app/results_text.h"

#include "app/colors.h"
#include "app/table.h"
#include "core/results/run/causes.h"
#include "core/results/run/energy_texts.h"
#include "core/results/run/stage_texts.h"
#include "core/text/durations.h"
#include "core/text/numbers.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "core/text/visible.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace holdband::app {

namespace {

using analysis::EnergyFigure;
using results::RunReview;

constexpr std::size_t rejectsListed = 20;

std::string duration(double ms)
{
    return durationText(Hours{ms / msPerHour});
}

std::string kelvins(double value, const RunReview& review)
{
    return differenceText(TemperatureDifference::kelvins(value), review.settings.temperatureUnit());
}

std::string titleOf(const RunReview& review)
{
    std::string title = review.batch().name + " · " + review.setup.name + " · pitched " +
                        localText(review.batch().pitched, review.zone);
    if (review.batch().volume)
        title += " · " + volumeText(*review.batch().volume, review.settings.units);
    return title;
}

std::string stagesTable(const RunReview& review)
{
    const analysis::JudgedBatch& judged = review.figures.judged;
    const std::string degrees(unitText(review.settings.temperatureUnit()));
    Table table({"stage", "target", "from", "settled in", "hold time", "covered", "inside",
                 "mean deviation, " + degrees, "worst past edge, " + degrees, "kWh"});
    for (std::size_t i = 0; i < judged.stages.size(); ++i) {
        const analysis::PlacedStage& stage = judged.stages[i];
        const results::StageTexts texts = results::stageTexts(review, i);
        const double length = static_cast<double>((stage.span.end - stage.span.start).count());
        const auto target = Temperature::celsius(
            stage.targetCelsiusAt(stage.kind == StageKind::ramp ? length : 0.0));
        table.add({stage.label,
                   (stage.kind == StageKind::ramp ? "to " : "") +
                       temperatureText(target, review.settings.temperatureUnit()),
                   localShortText(stage.span.start, review.zone), texts.settledIn, texts.hold,
                   texts.coverage, texts.inside, texts.meanDeviation, texts.worst, texts.kwh});
    }
    return table.text();
}

std::string excursionsTable(const RunReview& review)
{
    const analysis::JudgedBatch& judged = review.figures.judged;
    Table table({"excursion", "side", "outside", "worst past edge", "ended by", "cause"});
    for (std::size_t i = 0; i < judged.stages.size(); ++i) {
        const auto& excursions = judged.asPlanned.stages[i].excursions;
        for (std::size_t k = 0; k < excursions.size(); ++k) {
            const analysis::Excursion& excursion = excursions[k];
            const std::string cause = results::causeText(results::causeOf(review, i, k));
            const Instant start = spanOf(judged.stages[i], excursion).start;
            const char* end = excursion.cut == analysis::Cut::gap        ? "a gap"
                              : excursion.cut == analysis::Cut::stageEnd ? "the stage's end"
                                                                         : "coming back";
            table.add({localText(start, review.zone),
                       excursion.side == analysis::Side::above ? "above" : "below",
                       duration(excursion.outsideMs), kelvins(excursion.peak, review), end,
                       cause.empty() ? "–" : cause});
        }
    }
    return table.empty() ? std::string() : "\n" + table.text();
}

std::string gravityLine(const RunReview& review)
{
    const auto& fermented = review.figures.fermentation;
    if (!fermented)
        return {};
    const std::string measured =
        fermented->measuredAt
            ? " (the last measured, " + localText(*fermented->measuredAt, review.zone) + ")"
            : "";
    return "\nGravity " + gravityText(fermented->original) + " to " +
           gravityText(fermented->final) + measured + ": apparent attenuation " +
           fixedText(fermented->apparentAttenuation, 1) + " %, alcohol " +
           fixedText(fermented->alcoholSimple, 1) +
           " % by volume (131.25 times the fall in gravity; by Balling's formula " +
           fixedText(fermented->alcoholBalling, 1) + " %).\n";
}

std::string findingsText(const RunReview& review)
{
    std::string text;
    for (const std::string& finding : review.findings)
        text += "\n" + finding;
    return text.empty() ? text : text + "\n";
}

void addEnergyRow(Table& table, const std::string& label, const EnergyFigure& energy)
{
    const results::EnergyTexts texts = results::energyTexts(energy);
    table.add({label, texts.kwh, texts.bounds, texts.metered, texts.watts});
}

/// Successive days of which nothing was metered are one row.
void addDays(Table& table, const std::vector<analysis::SpanEnergy>& days)
{
    for (auto day = days.begin(); day != days.end();) {
        const auto unmetered = std::find_if(
            day, days.end(), [](const analysis::SpanEnergy& each) { return each.energy.any(); });
        const auto count = unmetered - day;
        if (count < 2) {
            addEnergyRow(table, day->label, day->energy);
            ++day;
            continue;
        }
        table.add({day->label + " – " + std::prev(unmetered)->label, "–", "–",
                   "not metered, " + std::to_string(count) + " days", "–"});
        day = unmetered;
    }
}

std::string energyTable(const RunReview& review)
{
    const analysis::RunEnergy& energy = review.figures.energy;
    Table table({"", "kWh", "bounds of reading", "metered", "mean W"});
    for (const results::EnergyPart& part : results::energyParts(review))
        addEnergyRow(table, part.label, part.energy);
    for (const analysis::SpanEnergy& stage : energy.stages)
        addEnergyRow(table, "stage " + stage.label, stage.energy);
    addDays(table, energy.days);
    return table.text();
}

std::string headlineOfEnergy(const RunReview& review)
{
    const analysis::RunEnergy& energy = review.figures.energy;
    if (!energy.whole.any())
        return "Nothing of this run was metered.";
    const results::EnergyTexts texts = results::energyTexts(energy.whole);
    std::string text = "Used " + texts.kwh + " kWh (" + texts.bounds + ") over " + texts.metered;
    if (energy.partlyMetered())
        text += ", partly metered: from " +
                localText(energy.whole.metered.front().start, review.zone) + " to " +
                localText(energy.whole.metered.back().end, review.zone);
    return text + ". Energy between readings is interpolated.";
}

std::string costLine(const RunReview& review)
{
    const auto& cost = review.figures.energy.cost;
    if (!cost)
        return {};
    const std::string& currency = review.settings.currency;
    std::string line = "Cost " + moneyText(cost->amount, currency);
    if (std::isfinite(cost->low) && std::isfinite(cost->high))
        line +=
            " (" + moneyText(cost->low, currency) + " – " + moneyText(cost->high, currency) + ")";
    return line + ".\n";
}

std::string weatherLine(const RunReview& review)
{
    const analysis::RunEnergy& energy = review.figures.energy;
    if (!energy.lift)
        return {};
    const bool us = review.settings.temperatureUnit() == TemperatureUnit::fahrenheit;
    const TemperatureUnit degree = review.settings.temperatureUnit();
    const double factor = degreesPerKelvin(degree);
    const std::string unit = us ? "°F·h" : "°C·h";
    std::string line = "The room was above the beer by " +
                       fixedText(energy.lift->coolingKh * factor, 0) + " " + unit +
                       " in sum, below it by " + fixedText(energy.lift->heatingKh * factor, 0) +
                       " " + unit + ".";
    if (energy.kwhPerDegreeDay)
        line += " Energy per degree-day of cooling lift: " +
                fixedText(perDegree(*energy.kwhPerDegreeDay, degree), 4) +
                (us ? " kWh/(°F·d)." : " kWh/(°C·d).");
    return line + "\n";
}

} // namespace

std::string oneLine(const std::string& text)
{
    return visible(text, LineEnds::escaped);
}

std::string countLine(std::int64_t count, const std::string& one, const std::string& more)
{
    return std::to_string(count) + " " + (count == 1 ? one : more);
}

std::string verdictText(const RunReview& review)
{
    const std::string arrival = review.arrival ? review.arrival->sentence + "\n" : std::string();
    return titleOf(review) + "\n" + emphasized(review.words.headline + ".") + "\n" + arrival +
           review.words.detail + "\n\n" + stagesTable(review) + excursionsTable(review) +
           gravityLine(review) + findingsText(review);
}

std::string energyText(const RunReview& review)
{
    std::string remarks;
    for (const std::string& remark : results::energyRemarks(review))
        remarks += remark + "\n";
    return titleOf(review) + "\n" + emphasized(headlineOfEnergy(review)) + "\n" + remarks +
           costLine(review) + weatherLine(review) + "\n" + energyTable(review) +
           findingsText(review);
}

std::string batchesText(const results::BatchList& list)
{
    if (list.batches.empty())
        return "The logbook has no batch yet.\n";
    std::string text;
    for (const results::BatchLine& line : list.batches) {
        text += emphasized(line.name) + " · " + line.setup + " · " +
                localText(line.pitched, list.zone) + " to " +
                (line.ended ? localText(*line.ended, list.zone) : "now, still open") + "\n  " +
                line.mark + " " + line.headline + ".\n";
    }
    return text;
}

std::string importText(const intake::ImportReport& report, bool dryRun)
{
    std::string text = oneLine(report.file.fileName) + ": " +
                       countLine(report.file.rowsRead, "row", "rows") + " read; " +
                       countLine(report.added(), "reading", "readings") + " new, " +
                       std::to_string(report.alreadyThere()) + " already there, " +
                       std::to_string(report.conflicting()) + " conflicting, " +
                       std::to_string(report.file.rejectedTotal) + " rejected" +
                       (dryRun ? " (dry run: nothing was stored).\n" : ".\n");
    for (const intake::ImportedColumn& column : report.columns)
        text += "  " + column.name + ": column \"" + oneLine(column.header) + "\", " +
                countLine(column.added, "reading", "readings") + " new (" + column.unitReason +
                ")\n";
    if (!report.file.timeReason.empty())
        text += "  time: column \"" + oneLine(report.file.timeHeader) + "\" (" +
                oneLine(report.file.timeReason) + ")\n";
    if (const std::string zone = intake::zoneSentence(report); !zone.empty())
        text += "  " + oneLine(zone) + "\n";
    for (const std::string& conflict : report.conflicts)
        text += "  conflict, " + oneLine(conflict) + "\n";
    const auto unlisted = report.conflicting() - static_cast<std::int64_t>(report.conflicts.size());
    if (unlisted > 0)
        text += "  and " + std::to_string(unlisted) + " more conflicting\n";
    const std::size_t shown = std::min(rejectsListed, report.file.rejected.size());
    for (std::size_t i = 0; i < shown; ++i) {
        const RejectedRow& row = report.file.rejected[i];
        text += "  rejected, line " + std::to_string(row.line) +
                (row.column.empty() ? "" : ", column \"" + oneLine(row.column) + "\"") + ": \"" +
                row.text + "\": " + row.reason + "\n";
    }
    const std::int64_t more = report.file.rejectedTotal - static_cast<std::int64_t>(shown);
    if (more > 0)
        text += "  and " + std::to_string(more) + " more rejected\n";
    return text;
}

std::string loadText(const exchange::LoadReport& report)
{
    const auto count = [](std::size_t number, const char* one, const char* more) {
        return countLine(static_cast<std::int64_t>(number), one, more);
    };
    std::string text = "Loaded " + count(report.setups, "setup", "setups") + ", " +
                       count(report.sensors, "sensor", "sensors") + ", " +
                       count(report.meters, "meter", "meters") + ", " +
                       count(report.batches, "batch", "batches") + " and " +
                       count(report.meterReadings, "meter reading", "meter readings") + ".\n";
    for (const intake::ImportReport& file : report.files)
        text += importText(file, false);
    return text;
}

} // namespace holdband::app
