// Each batch's summary for a comparison, made from its readings or from the cache of the last one.
#pragma once

#include "core/analysis/setup_comparison.h"
#include "core/results/batch_cache.h"

#include <cstddef>
#include <vector>

namespace holdband::results {

/// Settings for summing up batches for a comparison.
struct SummaryRules {
    std::vector<double> edges; ///< of the distribution of deviation, K
    Milliseconds quietAfter{0};

    bool operator==(const SummaryRules&) const = default;
    /// Two batches are summed up in a different way from two setups.
    std::size_t cachePlace() const { return edges.size(); }
};

class ComparisonCache : public BatchCache<analysis::BatchSummary, SummaryRules> {};

/// Computes the run, which was only read so far, and sums it up. Uses only its arguments, so it may
/// run on any thread.
inline analysis::BatchSummary summedUp(LoadedRun run, const std::vector<Span>& betweenReadings,
                                       const SummaryRules& rules)
{
    run.figures = analysis::analyseRun(run.input, analysis::Detail::withoutQuantiles);
    return analysis::summaryOf(run.side(), rules.edges, betweenReadings, rules.quietAfter);
}

} // namespace holdband::results
