#include "core/results/run/run_review.h"

#include "core/assign_result.h"
#include "core/results/run/arrival_text.h"
#include "core/results/run/causes.h"
#include "core/results/run/cautions.h"
#include "core/results/snapshot.h"
#include "core/store/records/batches.h"
#include "core/store/records/journal.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <algorithm>
#include <cmath>

namespace holdband::results {

namespace {

using analysis::MeterCurve;
using analysis::RunInput;

/// Of an open batch whose meter was read on and on while nothing was read of its beer.
std::string forgottenFinding(const RunInput& input)
{
    const auto metered = analysis::readSpan(input.setup);
    if (input.batch.ended || !input.judgedTo || !metered || metered->end <= input.span.end)
        return {};
    return Phrase::tr("This batch is still open, but its beer was not read for more than 48 h: "
                      "meter readings after that are not counted for it. End the batch, or import "
                      "its log.");
}

std::vector<std::string> findingsOf(const RunInput& input, const analysis::RunFigures& figures)
{
    std::vector<std::string> findings;
    if (std::string forgotten = forgottenFinding(input); !forgotten.empty())
        findings.push_back(std::move(forgotten));
    for (const analysis::EnergySource& source : input.setup.sources()) {
        const auto* curve = std::get_if<MeterCurve>(&source.curve);
        const std::size_t pairs = curve ? curve->pairsAboveRatedPower() : 0;
        if (pairs > 0)
            findings.push_back(
                Phrase::counted("The meter %1 counted more than the setup's rated power allows "
                                "between %n pairs of readings: the rated power was ignored there.",
                                "The meter %1 counted more than the setup's rated power allows "
                                "between %n pair of readings: the rated power was ignored there.",
                                pairs)
                    .with(source.name));
    }
    if (!figures.energy.whole.any() && !input.setup.sources().empty())
        findings.push_back(Phrase::tr("No meter of this setup was read twice during the batch, so "
                                      "nothing was metered."));
    if (registerRestarts(input) && figures.energy.whole.any() && !figures.energy.whole.highKnown())
        findings.push_back(Phrase::tr("The register restarted at 0 during the batch and no rated "
                                      "power is known: what it used has no upper bound."));
    return findings;
}

Done addSides(const store::LogbookFile& logbook, const Snapshot& snapshot, RunReview& review)
{
    for (const Sensor& sensor : snapshot.sensors) {
        const bool wanted =
            sensor.reads == SensorKind::chamber || sensor.reads == SensorKind::coolant;
        if (!wanted || sensor.setup != review.batch().setup)
            continue;
        auto series =
            judgedSeries(logbook, snapshot, sensor, review.input.span, review.batch().gapLimit);
        HOLDBAND_TRY(series);
        if (!series->series.empty())
            review.sides.push_back(
                {sensor.name, sensor.reads, std::move(series->series), series->gapLimit});
    }
    return {};
}

Done addJournal(const store::LogbookFile& logbook, RunReview& review)
{
    auto journal = store::readJournal(logbook);
    HOLDBAND_TRY(journal);
    for (JournalNote& note : *journal) {
        if (note.batch == review.batch().name)
            review.journal.push_back(std::move(note));
    }
    return {};
}

Done addCauses(const store::LogbookFile& logbook, RunReview& review)
{
    HOLDBAND_TRY(assignResult(store::readCauses(logbook, review.batch().name), review.causes));
    for (std::string& stray : strayCauses(review))
        review.findings.push_back(std::move(stray));
    return {};
}

Done addArrival(const store::LogbookFile& logbook, const Snapshot& snapshot, RunReview& review)
{
    HOLDBAND_TRY(
        assignResult(arrivalOf(logbook, snapshot, review.input, review.figures), review.arrival));
    if (!review.arrival)
        return {};
    const VerdictFormat format{review.settings.temperatureUnit(), review.decimalSign};
    review.arrival->sentence = arrivalSentence(*review.arrival, format, review.zone);
    review.arrival->datedSentence = datedArrivalSentence(*review.arrival, format, review.zone);
    return {};
}

void addSentence(std::string& text, const std::string& sentence)
{
    if (!sentence.empty())
        text += (text.empty() ? "" : " ") + sentence;
}

Problem unknownBatch(const Snapshot& snapshot, const std::string& name)
{
    std::vector<std::string> names;
    for (const Batch& batch : snapshot.batches)
        names.push_back(batch.name);
    return {ProblemKind::data,
            Phrase::tr("there is no batch \"%1\"").with(name),
            {},
            suggestion(name, names)};
}

} // namespace

std::string timeInRun(const RunReview& review, Instant at)
{
    constexpr Hours mostOfAYear{300 * 24.0}; // in a longer run a day and a month may be ambiguous
    const Span& span = review.input.span;
    return span.end - span.start > mostOfAYear ? localText(at, review.zone)
                                               : localShortText(at, review.zone);
}

std::optional<Gravity> latestGravity(const RunReview& review)
{
    if (review.batch().finalGravity)
        return review.batch().finalGravity;
    return review.figures.gravities.empty()
               ? std::nullopt
               : std::optional(review.figures.gravities.back().gravity);
}

Result<RunReview> reviewRun(const store::LogbookFile& logbook, const std::string& name,
                            char decimalSign, SideCurves sides)
{
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    auto snapshot = readSnapshot(logbook);
    HOLDBAND_TRY(snapshot);
    const Batch* batch = snapshot->batch(name);
    if (!batch)
        return failure(unknownBatch(*snapshot, name));
    auto input = runInputFor(logbook, *snapshot, *batch);
    HOLDBAND_TRY(input);
    RunReview review;
    review.settings = snapshot->settings;
    review.zone = snapshot->zone;
    review.setup = *snapshot->setup(batch->setup);
    review.setupIndex = snapshot->indexOfSetup(batch->setup);
    review.beerSensor = *snapshot->sensor(batch->beerSensor);
    review.input = std::move(*input);
    review.figures = analysis::analyseRun(review.input);
    review.decimalSign = decimalSign;
    review.words = verdictWords(review.input, review.figures,
                                {review.settings.temperatureUnit(), decimalSign});
    addSentence(review.words.detail, leftOutSentence(review.figures.leftOut, review.zone));
    review.energyCurve = energyCurveOf(review.input, review.figures.energy);
    review.energyRange = energyRangeOf(review.input, review.figures.energy, review.energyCurve);
    review.dailyEnergy = dailyEnergyOf(review.figures.energy, review.zone);
    review.findings = findingsOf(review.input, review.figures);
    review.cautions = cautionsFor(review.setup);
    HOLDBAND_TRY(addArrival(logbook, *snapshot, review));
    if (sides == SideCurves::read)
        HOLDBAND_TRY(addSides(logbook, *snapshot, review));
    HOLDBAND_TRY(addJournal(logbook, review));
    HOLDBAND_TRY(addCauses(logbook, review));
    return review;
}

} // namespace holdband::results
