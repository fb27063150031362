#include "core/results/overview/judging_change.h"

#include "core/results/run/verdict_text.h"
#include "core/results/snapshot.h"
#include "core/store/records/judging_notice.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

namespace holdband::results {

namespace {

constexpr std::size_t mostNamed = 5;

/// Without the sensor's accuracy: the verdict itself doesn't depend on it.
analysis::Verdict verdictWith(const analysis::RunInput& input, const BandTimes& times)
{
    analysis::JudgingRules rules = input.judging;
    rules.bandTimes = times;
    rules.accuracy.reset();
    std::vector<analysis::PlacedStage> stages = analysis::judgedStages(input);
    std::vector<analysis::StageTrack> tracks;
    for (const analysis::PlacedStage& stage : stages)
        tracks.push_back(analysis::stageTrack(input.judging.beer, rules.gapLimit, stage));
    return analysis::judgeTracks(std::move(stages), std::move(tracks), rules, input.settings,
                                 analysis::Detail::withoutQuantiles)
        .asPlanned.verdict;
}

std::string changeText(const ChangedVerdict& change)
{
    return Phrase::tr("%1 (was: %2, now: %3)", "a batch and its two verdicts")
        .with(change.batch, verdictWord(change.before), verdictWord(change.now));
}

} // namespace

Result<std::optional<std::vector<ChangedVerdict>>>
changedVerdicts(const store::LogbookFile& logbook)
{
    using Changes = std::optional<std::vector<ChangedVerdict>>;
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    auto names = store::batchesJudgedBefore(logbook);
    HOLDBAND_TRY(names);
    if (!*names)
        return Changes();
    auto snapshot = readSnapshot(logbook);
    HOLDBAND_TRY(snapshot);
    std::vector<ChangedVerdict> changed;
    for (const std::string& name : **names) {
        const Batch* batch = snapshot->batch(name);
        if (!batch)
            continue;
        auto input = judgingInputFor(logbook, *snapshot, *batch);
        HOLDBAND_TRY(input);
        const ChangedVerdict change{name, verdictWith(*input, {Milliseconds{0}, Milliseconds{0}}),
                                    verdictWith(*input, batch->bandTimes)};
        if (change.before != change.now)
            changed.push_back(change);
    }
    return Changes(std::move(changed));
}

std::string changedVerdictsText(const std::vector<ChangedVerdict>& changed)
{
    std::vector<std::string> parts;
    for (const ChangedVerdict& change : changed) {
        if (parts.size() == mostNamed)
            break;
        parts.push_back(changeText(change));
    }
    if (changed.size() > mostNamed)
        parts.push_back(
            Phrase::counted("%n more batches", "%n more batch", changed.size() - mostNamed));
    return Phrase::tr("The beer now has to stay in the band to have arrived, and a short return no "
                      "longer ends an excursion. That changes the verdict of %1.")
        .with(listed(parts));
}

} // namespace holdband::results
