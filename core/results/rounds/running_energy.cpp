#include "core/results/rounds/running_energy.h"

#include "core/results/snapshot.h"

#include <algorithm>

namespace holdband::results {

namespace {

std::vector<EnergyPoint> curveOf(const analysis::RunInput& input)
{
    analysis::RunEnergy energy;
    energy.span = input.span;
    energy.shares = analysis::sharesOf(input.concurrentBatches, input.self);
    energy.whole = analysis::shareOver(input.setup, energy.shares, input.span);
    return energyCurveOf(input, energy);
}

} // namespace

Result<RunningEnergy> reviewRunningEnergy(const store::LogbookFile& logbook)
{
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    auto snapshot = readSnapshot(logbook);
    HOLDBAND_TRY(snapshot);
    RunningEnergy running;
    running.zone = snapshot->zone;
    running.now = logbook.now();
    std::vector<Batch> batches = snapshot->batches;
    std::erase_if(batches, [](const Batch& batch) { return batch.ended.has_value(); });
    std::stable_sort(batches.begin(), batches.end(),
                     [](const Batch& a, const Batch& b) { return a.pitched < b.pitched; });
    for (const Batch& batch : batches) {
        analysis::RunInput input;
        input.span = snapshot->batchSpans.at(batch.name);
        HOLDBAND_TRY(addEnergyInput(logbook, *snapshot, batch, input));
        std::vector<EnergyPoint> curve = curveOf(input);
        if (curve.size() > 1)
            running.batches.push_back(
                {batch.name, snapshot->indexOfSetup(batch.setup), std::move(curve)});
    }
    return running;
}

} // namespace holdband::results
