// What the two kinds of comparison share: reading, summing batches up, lines and models. Not for
// use outside core/results.
#pragma once

#include "core/results/comparison/comparison_cache.h"
#include "core/results/comparison/side_by_side.h"
#include "core/results/comparison/side_format.h"
#include "core/results/comparison/side_models.h"
#include "core/results/each_batch.h"

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

/// Sums up batches of the setup, which must outlive it, as the rules must.
EachBatch<analysis::BatchSummary, SummaryRules>
summingUp(SideReader& reader, const LoadedSetup& setup, const SummaryRules& rules);

double widestTolerance(const Batch& batch); ///< K

SideBySide begunReview(const SideReader& reader, bool ofSetups);

/// The pairs between readings in which the wanted batches ran; other batches that ran at the same
/// time are considered too.
Result<SidePairs> pairsOf(SideReader& reader, const LoadedSetup& setup,
                          const std::vector<std::string>& wanted, const Summaries& known,
                          const SummaryRules& rules);

/// How many rounds each compared batch took; needs the batches of the review.
Done addWork(SideBySide& review, const SideReader& reader, const analysis::SetupEnergy& a,
             const analysis::SetupEnergy& b);

void addModels(SideBySide& review, const SideReader& reader, SidePairs a, SidePairs b);

Result<SideBySide> reviewOfBatches(SideReader& reader, const Batch& a, const Batch& b);
Result<SideBySide> reviewOfSetups(SideReader& reader, const Setup& a, const Setup& b);

} // namespace holdband::results
