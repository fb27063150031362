#include "core/review/side_loading.h"

#include "core/keep.h"

#include <algorithm>

namespace holdband::review {

Result<LoadedRun> loadRun(const store::LogbookFile& logbook, const Snapshot& snapshot,
                          const Batch& batch, analysis::Detail detail)
{
    auto input = runInputFor(logbook, snapshot, batch);
    HOLDBAND_TRY(input);
    LoadedRun loaded;
    loaded.input = std::move(*input);
    loaded.input.days.clear(); // a comparison has none
    loaded.figures = analysis::analyseRun(loaded.input, detail);
    loaded.parts = partsTotal(*snapshot.setup(batch.setup));
    loaded.placement = snapshot.sensor(batch.beerSensor)->placement;
    return loaded;
}

std::vector<analysis::Tenant> LoadedSetup::tenants(const Snapshot& snapshot) const
{
    std::vector<analysis::Tenant> all;
    for (const Batch* batch : batches)
        all.push_back({snapshot.batchSpans.at(batch->name), 1.0});
    return all;
}

Result<LoadedSetup> loadSetup(const store::LogbookFile& logbook, const Snapshot& snapshot,
                              const Setup& setup)
{
    LoadedSetup loaded;
    loaded.setup = &setup;
    Span whole{Instant::max(), Instant::min()};
    for (const Batch& batch : snapshot.batches) {
        if (batch.setup != setup.name)
            continue;
        loaded.batches.push_back(&batch);
        const Span span = snapshot.batchSpans.at(batch.name);
        whole = {std::min(whole.start, span.start), std::max(whole.end, span.end)};
    }
    std::stable_sort(loaded.batches.begin(), loaded.batches.end(),
                     [](const Batch* a, const Batch* b) { return a->pitched < b->pitched; });
    HOLDBAND_TRY(keep(setupEnergyOf(logbook, snapshot, setup, whole), loaded.energy));
    loaded.betweenReadings = analysis::timesBetweenReadings(loaded.energy);
    return loaded;
}

Result<analysis::BatchSummary> summaryFor(const store::LogbookFile& logbook,
                                          const Snapshot& snapshot, const Batch& batch,
                                          const LoadedSetup& setup, const SummaryRules& rules)
{
    auto run = loadRun(logbook, snapshot, batch, analysis::Detail::withoutQuantiles);
    HOLDBAND_TRY(run);
    return analysis::summaryOf(run->contender(), rules.edges, setup.betweenReadings,
                               rules.quietAfter);
}

} // namespace holdband::review
