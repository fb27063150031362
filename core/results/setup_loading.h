// Loads a batch with its computed figures, and a setup with its energy.
// Not for use outside core/results.
#pragma once

#include "core/analysis/setup_comparison.h"
#include "core/results/snapshot.h"

namespace holdband::results {

/// One batch, and everything that a ComparisonSide points to.
struct LoadedRun {
    analysis::RunInput input;
    analysis::RunFigures figures;
    std::optional<double> parts; ///< in the logbook's currency
    std::string placement;

    analysis::ComparisonSide side() const { return {&input, &figures, parts, placement}; }
};

/// Reads the batch without computing it.
Result<LoadedRun> loadInput(const store::LogbookFile& logbook, const Snapshot& snapshot,
                            const Batch& batch);

/// Reads and computes the batch.
Result<LoadedRun> loadRun(const store::LogbookFile& logbook, const Snapshot& snapshot,
                          const Batch& batch);

/// A setup with the batches that ran on it.
struct LoadedSetup {
    const Setup* setup = nullptr;
    analysis::SetupEnergy energy{{}};
    std::vector<Span> betweenReadings;
    std::vector<const Batch*> batches; ///< in order of pitching

    bool metered() const { return !energy.sources().empty(); }
    std::vector<analysis::ConcurrentBatch> concurrentBatches(const Snapshot& snapshot) const;
};

Result<LoadedSetup> loadSetup(const store::LogbookFile& logbook, const Snapshot& snapshot,
                              const Setup& setup);

} // namespace holdband::results
