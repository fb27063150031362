// What is known of a setup from its past batches, for a forecast. Not for use outside core/results.
#pragma once

#include "core/analysis/forecast.h"
#include "core/analysis/forecast_record.h"
#include "core/results/each_batch.h"

#include <map>
#include <string>
#include <vector>

namespace holdband::results {

struct ForecastRules {
    Milliseconds quietAfter{0};

    bool operator==(const ForecastRules&) const = default;
    std::size_t cachePlace() const { return 0; }
};

class ForecastCache : public BatchCache<analysis::ForecastRecord, ForecastRules> {};

/// Batches are ended ones of one kind: shared, or alone.
struct SetupHistory {
    analysis::ForecastBasis basis;            ///< its batches in order of pitching
    std::vector<analysis::PastCrash> crashes; ///< litres 0 where unknown
    std::optional<double> seenLiftK;          ///< K, the greatest of any batch of the kind
    std::size_t otherKind = 0;                ///< ended batches of the other kind
    std::size_t unmetered = 0;                ///< of the kind, of which no part counts
    bool hasMeter = false;
};

/// `cache` may be null. Problem: a batch can't be read.
Result<SetupHistory> loadHistory(BatchReading reading, const Setup& setup, bool shared,
                                 const ForecastRules& rules, ForecastCache* cache);

} // namespace holdband::results
