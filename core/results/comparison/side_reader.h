// What the two kinds of comparison share: reading, summing batches up, lines and models. Not for
// use outside core/results.
#pragma once

#include "core/results/batch_cache.h"
#include "core/results/comparison/side_by_side.h"
#include "core/results/comparison/side_format.h"
#include "core/results/setup_loading.h"
#include "core/results/comparison/side_models.h"

#include <deque>
#include <future>
#include <map>

namespace holdband::results {

/// Resolution of the drawn distribution: bins between target and the band's edge.
inline constexpr int spreadBins = 12;

/// What one comparison needs for reading.
struct SideReader {
    const store::LogbookFile& logbook;
    const Snapshot& snapshot;
    const SideBySideRequest& request;
    SideFormat format;
    Weighing weighing;
    ComparisonCache* cache;
    store::SeriesFingerprints fingerprints;

    Milliseconds quietAfter() const
    {
        return toMilliseconds(weighing.quietAfter.value_or(usualQuietAfter));
    }
};

using Summaries = std::map<std::string, analysis::BatchSummary>; ///< by batch

/// Sums batches up one after the other: while one is computed on another thread, the next is read.
/// `setup` and `rules` must outlive it.
class SummingUp {
public:
    SummingUp(SideReader& reader, const LoadedSetup& setup, const SummaryRules& rules)
        : m_reader(&reader), m_setup(&setup), m_rules(&rules)
    {
    }
    Done add(const Batch& batch);
    Summaries finish();

private:
    struct Work {
        const Batch* batch;
        std::future<analysis::BatchSummary> summary;
    };
    void takeOldest(std::size_t untilLeft);

    SideReader* m_reader;
    const LoadedSetup* m_setup;
    const SummaryRules* m_rules;
    std::deque<Work> m_atWork;
    Summaries m_done;
};

double widestTolerance(const Batch& batch); ///< K

SideBySide begunReview(const SideReader& reader, bool ofSetups);

/// The pairs between readings in which the wanted batches ran; other batches that ran at the same
/// time are considered too.
Result<SidePairs> pairsOf(SideReader& reader, const LoadedSetup& setup,
                          const std::vector<std::string>& wanted, const Summaries& known,
                          const SummaryRules& rules);

void addModels(SideBySide& review, const SideReader& reader, SidePairs a, SidePairs b);

Result<SideBySide> reviewOfBatches(SideReader& reader, const Batch& a, const Batch& b);
Result<SideBySide> reviewOfSetups(SideReader& reader, const Setup& a, const Setup& b);

} // namespace holdband::results
