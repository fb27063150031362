#include "core/results/setup_loading.h"

#include "core/assign_result.h"

#include <algorithm>

namespace holdband::results {

Result<LoadedRun> loadInput(const store::LogbookFile& logbook, const Snapshot& snapshot,
                            const Batch& batch)
{
    auto input = runInputFor(logbook, snapshot, batch);
    HOLDBAND_TRY(input);
    LoadedRun loaded;
    loaded.input = std::move(*input);
    loaded.input.days.clear(); // a comparison shows no days
    loaded.parts = partsTotal(*snapshot.setup(batch.setup));
    loaded.placement = snapshot.sensor(batch.beerSensor)->placement;
    return loaded;
}

Result<LoadedRun> loadRun(const store::LogbookFile& logbook, const Snapshot& snapshot,
                          const Batch& batch)
{
    auto loaded = loadInput(logbook, snapshot, batch);
    if (loaded)
        loaded->figures = analysis::analyseRun(loaded->input);
    return loaded;
}

std::vector<analysis::ConcurrentBatch>
LoadedSetup::concurrentBatches(const Snapshot& snapshot) const
{
    std::vector<analysis::ConcurrentBatch> all;
    for (const Batch* batch : batches)
        all.push_back({snapshot.batchSpans.at(batch->name), 1.0, batch->name});
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
    HOLDBAND_TRY(assignResult(setupEnergyOf(logbook, snapshot, setup, whole), loaded.energy));
    loaded.betweenReadings = analysis::timesBetweenReadings(loaded.energy);
    return loaded;
}

} // namespace holdband::results
