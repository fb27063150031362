#include "core/results/run/past_falls.h"

#include "core/analysis/track.h"
#include "core/model/plan_in_force.h"

#include <algorithm>

namespace holdband::results {

using analysis::CrashRecord;
using analysis::PlacedStage;
using analysis::TargetTurn;
using analysis::TemperatureAt;
using analysis::Turned;

namespace {

constexpr Milliseconds alwaysBridged = std::chrono::hours{2}; // the longest default gap limit
constexpr Milliseconds longestFall = std::chrono::days{14};

/// Pitched to ended; of an open batch to the last reading of its beer.
Instant readTo(const Snapshot& snapshot, const Batch& batch)
{
    return batch.ended ? *batch.ended : snapshot.beerKnownTo.at(batch.name);
}

/// The hour at which the beer was first in the stage's own band, or beyond it; else the last one.
double arrivalHour(const std::vector<TemperatureAt>& fall, const PlacedStage& stage, Turned turned)
{
    const double sign = turned == Turned::down ? 1.0 : -1.0;
    const auto arrived = std::find_if(fall.begin(), fall.end(), [&](const TemperatureAt& reading) {
        return sign * (reading.celsius - stage.startTarget.celsius()) <= stage.tolerance.kelvins();
    });
    return arrived == fall.end() ? fall.back().hours : arrived->hours;
}

/// Absent where nothing was read.
Result<std::optional<CrashRecord>> recordOf(const store::LogbookFile& logbook,
                                            const Snapshot& snapshot, const Batch& batch,
                                            const PlacedStage& stage, Turned turned)
{
    const Span span{stage.span.start, std::min(stage.span.end, stage.span.start + longestFall)};
    auto beer = beerInside(logbook, snapshot, batch, span);
    HOLDBAND_TRY(beer);
    const Milliseconds gapLimit = batch.gapLimit.value_or(analysis::defaultGapLimit(*beer, span));
    CrashRecord record{fallOf(*beer, span, gapLimit), litresOf(batch), false};
    if (record.readings.empty())
        return std::nullopt;
    const Hours length{arrivalHour(record.readings, stage, turned)};
    record.shared = wasShared(snapshot, batch, {span.start, span.start + toMilliseconds(length)});
    return record;
}

std::vector<PlacedStage> stagesOf(const Snapshot& snapshot, const Batch& batch)
{
    Batch done = batch;
    done.schedule = scheduleInForce(batch);
    return analysis::placeStages(done, readTo(snapshot, batch));
}

Done addFallsOf(const store::LogbookFile& logbook, const Snapshot& snapshot, const Batch& batch,
                Turned turned, std::vector<CrashRecord>& falls)
{
    const std::vector<PlacedStage> stages = stagesOf(snapshot, batch);
    for (const TargetTurn& turn : analysis::targetTurns(stages)) {
        if (turn.turned != turned)
            continue;
        auto record = recordOf(logbook, snapshot, batch, stages[turn.stage], turned);
        HOLDBAND_TRY(record);
        if (*record)
            falls.push_back(std::move(**record));
    }
    return {};
}

} // namespace

std::vector<TemperatureAt> fallOf(const Series& beer, Span span, Milliseconds gapLimit)
{
    const Milliseconds bridged = std::max(gapLimit, alwaysBridged);
    std::vector<TemperatureAt> fall;
    Instant before = span.start;
    for (std::size_t i = 0; i < beer.size(); ++i) {
        if (beer.at[i] < span.start || beer.at[i] > span.end)
            continue;
        if (beer.at[i] - before > bridged)
            break;
        before = beer.at[i];
        fall.push_back({hoursBetween(span.start, beer.at[i]), beer.value[i]});
    }
    return fall;
}

bool wasShared(const Snapshot& snapshot, const Batch& batch, Span span)
{
    return std::any_of(snapshot.batches.begin(), snapshot.batches.end(), [&](const Batch& other) {
        return other.setup == batch.setup && other.name != batch.name &&
               !intersection(snapshot.batchSpans.at(other.name), span).empty();
    });
}

std::optional<double> litresOf(const Batch& batch)
{
    return batch.volume ? std::optional(batch.volume->litres()) : std::nullopt;
}

Result<std::vector<CrashRecord>> pastFalls(const store::LogbookFile& logbook,
                                           const Snapshot& snapshot, const Batch& batch,
                                           Turned turned)
{
    std::vector<CrashRecord> falls;
    for (const Batch& other : snapshot.batches) {
        if (other.setup == batch.setup && other.name != batch.name)
            HOLDBAND_TRY(addFallsOf(logbook, snapshot, other, turned, falls));
    }
    return falls;
}

} // namespace holdband::results
