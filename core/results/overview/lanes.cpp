#include "core/results/overview/lanes.h"

#include "core/results/overview/batch_line.h"
#include "core/results/overview/lanes_cache.h"
#include "core/results/rounds/round_calendar.h"
#include "core/results/snapshot.h"

#include <algorithm>
#include <map>

namespace holdband::results {

namespace {

/// Puts a bar into the first row that is free at its start.
int freeRow(std::vector<Instant>& rowEnds, Span span)
{
    for (std::size_t row = 0; row < rowEnds.size(); ++row) {
        if (rowEnds[row] <= span.start) {
            rowEnds[row] = span.end;
            return static_cast<int>(row);
        }
    }
    rowEnds.push_back(span.end);
    return static_cast<int>(rowEnds.size()) - 1;
}

LaneBar barOf(const BatchLine& line, Instant now)
{
    LaneBar bar;
    bar.batch = line.name;
    bar.open = !line.ended;
    bar.span = {line.pitched, line.ended.value_or(std::max(now, line.lastKnown))};
    bar.verdict = line.verdict;
    bar.mark = line.mark;
    bar.headline = line.headline;
    return bar;
}

/// Judges batches, using the cache if there is one.
class Lines {
public:
    Lines(const store::LogbookFile& logbook, const Snapshot& snapshot, LanesCache* cache)
        : m_logbook(&logbook), m_snapshot(&snapshot), m_cache(cache), m_prints(logbook)
    {
        if (m_cache)
            m_cache->begin(logbook, snapshot);
    }

    Result<BatchLine> of(const Batch& batch)
    {
        return m_cache ? m_cache->lineOf(*m_logbook, *m_snapshot, batch, m_prints)
                       : batchLineOf(*m_logbook, *m_snapshot, batch);
    }

private:
    const store::LogbookFile* m_logbook;
    const Snapshot* m_snapshot;
    LanesCache* m_cache;
    store::SeriesFingerprints m_prints;
};

Result<Lane> laneOf(const Snapshot& snapshot, const Setup& setup, Instant now, Lines& lines)
{
    Lane lane;
    lane.setup = setup.name;
    std::vector<Instant> rowEnds;
    for (const Batch& batch : snapshot.batches) {
        if (batch.setup != setup.name)
            continue;
        auto line = lines.of(batch);
        HOLDBAND_TRY(line);
        LaneBar bar = barOf(*line, now);
        bar.row = freeRow(rowEnds, bar.span);
        lane.bars.push_back(std::move(bar));
    }
    lane.rows = std::max(1, static_cast<int>(rowEnds.size()));
    return lane;
}

struct RoundOrder {
    bool operator()(const RoundColumn& a, const RoundColumn& b) const { return earlier(a, b); }
};

/// A tick for every round in which a meter was read, and for every missed round.
std::vector<RoundTick> roundTicks(const Snapshot& snapshot, Instant now)
{
    std::map<RoundColumn, Instant, RoundOrder> read;
    for (const auto& [meter, readings] : snapshot.meterReadings) {
        for (const store::StoredReading& stored : readings)
            read.emplace(roundOf(stored.inForce.at, snapshot.zone, snapshot.settings.rounds),
                         stored.inForce.at);
    }
    std::vector<RoundTick> ticks;
    if (read.empty())
        return ticks;
    const RoundColumn last = roundOf(now, snapshot.zone, snapshot.settings.rounds);
    for (RoundColumn round = read.begin()->first; !earlier(last, round);
         round = roundAfter(round, snapshot.settings.rounds)) {
        const auto found = read.find(round);
        const Instant due = dueAt(round, snapshot.zone, snapshot.settings.rounds);
        const bool wanted =
            std::any_of(snapshot.meters.begin(), snapshot.meters.end(),
                        [&](const Meter& meter) { return isExpected(snapshot, meter, due, now); });
        if (found != read.end())
            ticks.push_back({found->second, false});
        else if (wanted && earlier(round, last))
            ticks.push_back({due, true});
    }
    return ticks;
}

} // namespace

Result<LanesReview> reviewLanes(const store::LogbookFile& logbook, LanesCache* cache,
                                char decimalSign)
{
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    auto snapshot = readSnapshot(logbook);
    HOLDBAND_TRY(snapshot);
    snapshot->decimalSign = decimalSign;
    LanesReview review;
    review.now = logbook.now();
    review.shown = {review.now, review.now};
    Lines lines(logbook, *snapshot, cache);
    bool first = true;
    for (const Setup& setup : snapshot->setups) {
        auto lane = laneOf(*snapshot, setup, review.now, lines);
        HOLDBAND_TRY(lane);
        for (const LaneBar& bar : lane->bars) {
            review.shown.start =
                first ? bar.span.start : std::min(review.shown.start, bar.span.start);
            review.shown.end = first ? bar.span.end : std::max(review.shown.end, bar.span.end);
            first = false;
        }
        review.lanes.push_back(std::move(*lane));
    }
    review.rounds = roundTicks(*snapshot, review.now);
    return review;
}

} // namespace holdband::results
