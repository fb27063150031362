// What a comparison reads of its sides: a batch with all that is computed of it, and a setup with
// its energy. Not for use outside core/review.
#pragma once

#include "core/analysis/setup_comparison.h"
#include "core/review/snapshot.h"

namespace holdband::review {

/// One batch with all that a Contender points to.
struct LoadedRun {
    analysis::RunInput input;
    analysis::RunFigures figures;
    std::optional<double> parts;
    std::string placement;

    analysis::Contender contender() const { return {&input, &figures, parts, placement}; }
};

Result<LoadedRun> loadRun(const store::LogbookFile& logbook, const Snapshot& snapshot,
                          const Batch& batch, analysis::Detail detail = analysis::Detail::all);

/// A setup with the batches that ran on it.
struct LoadedSetup {
    const Setup* setup = nullptr;
    analysis::SetupEnergy energy{{}};
    std::vector<Span> betweenReadings;
    std::vector<const Batch*> batches; ///< in order of pitching

    bool metered() const { return !energy.sources().empty(); }
    std::vector<analysis::Tenant> tenants(const Snapshot& snapshot) const;
};

Result<LoadedSetup> loadSetup(const store::LogbookFile& logbook, const Snapshot& snapshot,
                              const Setup& setup);

/// How batches are summed up for a comparison.
struct SummaryRules {
    std::vector<double> edges; ///< of the distribution of deviation, K
    Milliseconds quietAfter{0};

    bool operator==(const SummaryRules&) const = default;
};

Result<analysis::BatchSummary> summaryFor(const store::LogbookFile& logbook,
                                          const Snapshot& snapshot, const Batch& batch,
                                          const LoadedSetup& setup, const SummaryRules& rules);

} // namespace holdband::review
