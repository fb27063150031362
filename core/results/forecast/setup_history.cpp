#include "core/results/forecast/setup_history.h"

#include "core/analysis/same_weather.h"

#include <algorithm>

namespace holdband::results {

using analysis::BatchPart;
using analysis::ForecastRecord;

namespace {

using Records = std::map<std::string, ForecastRecord>;

ForecastRecord recorded(LoadedRun run, const std::vector<Span>& betweenReadings,
                        const ForecastRules& rules)
{
    run.figures = analysis::analyseRun(run.input, analysis::Detail::withoutQuantiles);
    return analysis::forecastRecordOf(run.input, run.figures, betweenReadings, rules.quietAfter);
}

bool isPast(const Batch& batch, const ForecastRecord& record, bool shared)
{
    return batch.ended && record.shared == shared;
}

std::vector<analysis::BatchPoint> pointsOf(const LoadedSetup& setup, const Snapshot& snapshot,
                                           const Records& records, bool shared)
{
    std::vector<analysis::SetupRun> runs;
    for (const Batch* batch : setup.batches) {
        const ForecastRecord& record = records.at(batch->name);
        runs.push_back({batch->name, snapshot.batchSpans.at(batch->name),
                        isPast(*batch, record, shared), record.quiet});
    }
    std::vector<analysis::BatchPoint> points;
    for (const analysis::WeatherPair& pair :
         analysis::weatherPairs(setup.energy, setup.betweenReadings, runs))
        points.push_back({{pair.liftK, pair.watts, pair.hours()}, pair.of});
    return points;
}

void addPast(SetupHistory& history, const ForecastRecord& record)
{
    const auto& parts = record.past.parts;
    if (!parts[BatchPart::beforeCrash] && !parts[BatchPart::crash])
        ++history.unmetered;
    history.basis.batches.push_back(record.past);
    history.basis.resolutionKwh = std::max(history.basis.resolutionKwh, record.resolutionKwh);
    if (record.crash)
        history.crashes.push_back(*record.crash);
    if (record.seenLiftK)
        history.seenLiftK =
            std::max(history.seenLiftK.value_or(*record.seenLiftK), *record.seenLiftK);
}

} // namespace

Result<SetupHistory> loadHistory(BatchReading reading, const Setup& setup, bool shared,
                                 const ForecastRules& rules, ForecastCache* cache)
{
    auto loaded = loadSetup(*reading.logbook, *reading.snapshot, setup);
    HOLDBAND_TRY(loaded);
    EachBatch<ForecastRecord, ForecastRules> each(reading, *loaded, rules, recorded, cache);
    for (const Batch* batch : loaded->batches)
        HOLDBAND_TRY(each.add(*batch));
    const Records records = each.finish();
    SetupHistory history;
    history.basis.shared = shared;
    history.hasMeter = loaded->metered();
    for (const Batch* batch : loaded->batches) {
        const ForecastRecord& record = records.at(batch->name);
        if (isPast(*batch, record, shared))
            addPast(history, record);
        else if (batch->ended)
            ++history.otherKind;
    }
    history.basis.pairs = pointsOf(*loaded, *reading.snapshot, records, shared);
    return history;
}

} // namespace holdband::results
