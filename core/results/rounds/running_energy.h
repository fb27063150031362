// The cumulative energy of the running batches, for the chart below the rounds.
#pragma once

#include "core/results/run/energy_curve.h"
#include "core/store/logbook_file.h"
#include "core/text/zone.h"

#include <string>
#include <vector>

namespace holdband::results {

/// A running batch's share of its setup's energy since pitching.
struct RunningBatch {
    std::string batch;
    int setupIndex = 0; ///< in the logbook
    std::vector<EnergyPoint> curve;
};

struct RunningEnergy {
    Zone zone;
    Instant now;
    std::vector<RunningBatch> batches; ///< those that were metered, in order of pitching
};

/// The same figures as in each batch's run.
Result<RunningEnergy> reviewRunningEnergy(const store::LogbookFile& logbook);

} // namespace holdband::results
