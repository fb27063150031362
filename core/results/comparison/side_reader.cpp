#include "core/results/comparison/side_reader.h"

#include <algorithm>
#include <array>

namespace holdband::results {

using analysis::BatchSummary;

EachBatch<BatchSummary, SummaryRules> summingUp(SideReader& reader, const LoadedSetup& setup,
                                                const SummaryRules& rules)
{
    return {{&reader.logbook, &reader.snapshot, &reader.fingerprints},
            setup,
            rules,
            summedUp,
            reader.cache};
}

double widestTolerance(const Batch& batch)
{
    double widest = batch.tolerance ? batch.tolerance->kelvins() : 0.0;
    for (const Stage& stage : batch.schedule) {
        if (stage.tolerance)
            widest = std::max(widest, stage.tolerance->kelvins());
    }
    return widest;
}

SideBySide begunReview(const SideReader& reader, bool ofSetups)
{
    SideBySide review;
    review.settings = reader.snapshot.settings;
    review.weighing = reader.weighing;
    review.a = reader.request.a;
    review.b = reader.request.b;
    review.ofSetups = ofSetups;
    return review;
}

namespace {

/// Summaries of the batches that have none yet and ran on the setup in one of the spans.
Result<Summaries> summariesBeside(SideReader& reader, const LoadedSetup& setup,
                                  const std::vector<Span>& spans, const Summaries& known,
                                  const SummaryRules& rules)
{
    auto summing = summingUp(reader, setup, rules);
    const std::vector<Span> busy = analysis::unite(spans);
    for (const Batch* batch : setup.batches) {
        const Span span = reader.snapshot.batchSpans.at(batch->name);
        if (!known.contains(batch->name) && !analysis::intersect(busy, {span}).empty())
            HOLDBAND_TRY(summing.add(*batch));
    }
    return summing.finish();
}

bool hasWindows(const LogbookSettings& settings)
{
    return !settings.tariff.windows.empty() ||
           std::any_of(settings.tariffChanges.begin(), settings.tariffChanges.end(),
                       [](const TariffChange& change) { return !change.tariff.windows.empty(); });
}

} // namespace

/// The pairs between readings in which the wanted batches ran; other batches that ran at the same
/// time are considered too.
Result<SidePairs> pairsOf(SideReader& reader, const LoadedSetup& setup,
                          const std::vector<std::string>& wanted, const Summaries& known,
                          const SummaryRules& rules)
{
    SidePairs side;
    side.hasMeter = !setup.betweenReadings.empty();
    side.hasAmbient = false;
    std::vector<Span> spans;
    for (const std::string& name : wanted) {
        spans.push_back(reader.snapshot.batchSpans.at(name));
        side.meanHours += spans.back().hours() / static_cast<double>(wanted.size());
        side.hasAmbient = side.hasAmbient || reader.snapshot.batch(name)->ambientSensor;
    }
    auto beside = summariesBeside(reader, setup, spans, known, rules);
    HOLDBAND_TRY(beside);
    const Summaries& also = *beside;
    std::vector<analysis::SetupRun> runs;
    for (const Batch* batch : setup.batches) {
        analysis::SetupRun run{batch->name, reader.snapshot.batchSpans.at(batch->name), false, {}};
        run.wanted = std::find(wanted.begin(), wanted.end(), batch->name) != wanted.end();
        for (const Summaries* summaries : std::array{&known, &also}) {
            if (const auto found = summaries->find(batch->name); found != summaries->end())
                run.quiet = found->second.quiet;
        }
        runs.push_back(std::move(run));
    }
    side.pairs = analysis::weatherPairs(setup.energy, setup.betweenReadings, runs);
    return side;
}

void addModels(SideBySide& review, const SideReader& reader, SidePairs a, SidePairs b)
{
    const Setup& setupA = *reader.snapshot.setup(review.setupA);
    const Setup& setupB = *reader.snapshot.setup(review.setupB);
    addWeather(review, std::move(a), std::move(b));
    addMoney(review, setupA, setupB, hasWindows(review.settings));
    addJudgement(review, setupA, setupB);
}

} // namespace holdband::results
