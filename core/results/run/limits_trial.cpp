#include "core/results/run/limits_trial.h"

#include "core/store/records/batches.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::results {

using analysis::JudgedBatch;
using analysis::JudgingRules;
using analysis::PlacedStage;

namespace {

std::vector<PlacedStage> stagesWith(const RunReview& review, const Limits& limits)
{
    std::vector<PlacedStage> stages = review.figures.judged.stages;
    for (PlacedStage& stage : stages)
        stage.tolerance = limits.tolerance.value_or(stage.tolerance);
    return stages;
}

Milliseconds gapLimitOf(const RunReview& review, const Limits& limits)
{
    if (limits.gapLimit)
        return *limits.gapLimit;
    const analysis::RunInput& input = review.input;
    return input.batch.gapLimit ? analysis::defaultGapLimit(input.judging.beer, input.span)
                                : input.judging.gapLimit;
}

std::vector<analysis::StageTrack> tracksWith(const RunReview& review, Milliseconds gapLimit)
{
    if (gapLimit == review.input.judging.gapLimit)
        return review.figures.judged.tracks;
    std::vector<analysis::StageTrack> tracks;
    for (const PlacedStage& stage : review.figures.judged.stages)
        tracks.push_back(analysis::stageTrack(review.input.judging.beer, gapLimit, stage));
    return tracks;
}

void replaceTolerances(Schedule& schedule)
{
    for (Stage& stage : schedule)
        stage.tolerance.reset();
}

Done checkLimits(const Limits& limits)
{
    if (limits.tolerance && !(limits.tolerance->kelvins() > 0.0))
        return dataProblem(Phrase::tr("a tolerance must be above 0"));
    if (limits.ignoreShorterThan < Milliseconds{0})
        return dataProblem(
            Phrase::tr("the time below which excursions are ignored can't be negative"));
    if (limits.bandTimes.dwell < Milliseconds{0} || limits.bandTimes.returnTime < Milliseconds{0})
        return dataProblem(Phrase::tr("the time inside after which the beer is settled, or an "
                                      "excursion ends, can't be negative"));
    if (limits.gapLimit && *limits.gapLimit <= Milliseconds{0})
        return dataProblem(Phrase::tr("a gap limit must be above 0"));
    return {};
}

} // namespace

Limits limitsOf(const RunReview& review)
{
    Limits limits;
    limits.ignoreShorterThan = review.input.judging.ignoreShorterThan;
    limits.bandTimes = review.input.judging.bandTimes;
    limits.gapLimit = review.batch().gapLimit;
    const auto& stages = review.figures.judged.stages;
    const bool one = std::all_of(stages.begin(), stages.end(), [&](const PlacedStage& stage) {
        return stage.tolerance == stages.front().tolerance;
    });
    if (stages.empty())
        limits.tolerance = review.batch().tolerance;
    else if (one)
        limits.tolerance = stages.front().tolerance;
    return limits;
}

LimitsTrial tryLimits(const RunReview& review, const Limits& limits)
{
    JudgingRules rules = review.input.judging;
    rules.ignoreShorterThan = limits.ignoreShorterThan;
    rules.bandTimes = limits.bandTimes;
    rules.gapLimit = gapLimitOf(review, limits);
    LimitsTrial trial;
    trial.judged =
        analysis::judgeTracks(stagesWith(review, limits), tracksWith(review, rules.gapLimit), rules,
                              review.input.settings, analysis::Detail::withoutQuantiles);
    const auto leftOut =
        analysis::leftOutFigures(trial.judged, review.input.judging, rules, review.input.settings);
    trial.words = verdictWords(
        trial.judged, {rules, review.input.settings, !review.input.judging.beer.empty(), leftOut},
        {review.settings.temperatureUnit(), review.decimalSign});
    return trial;
}

store::HistoryEntry limitsEntry(const std::string& batch)
{
    return {store::HistoryVerb::limitsChanged, {batch}};
}

Done saveLimits(const store::Change& change, const std::string& name, const Limits& limits)
{
    HOLDBAND_TRY(checkLimits(limits));
    auto batch = store::readBatch(change.logbook(), name);
    HOLDBAND_TRY(batch);
    if (limits.tolerance) {
        batch->tolerance = limits.tolerance;
        replaceTolerances(batch->schedule);
        for (PlanChange& planned : batch->planChanges)
            replaceTolerances(planned.schedule);
    }
    batch->ignoreShorterThan = limits.ignoreShorterThan;
    batch->bandTimes = limits.bandTimes;
    batch->gapLimit = limits.gapLimit;
    return store::updateBatch(change, name, *batch);
}

} // namespace holdband::results
