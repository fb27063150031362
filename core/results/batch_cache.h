// Each batch's summary from the last comparison, so that after a change only the affected batches
// are summed up again. A summary is reused only if everything that it was made from is the same:
// the settings, the batch's key (core/results/cache_key.h), its gravities, its setup and the
// batches that ran on it, and the register readings around it. Belongs to one logbook and to the
// thread that reads it.
#pragma once

#include "core/results/cache_key.h"
#include "core/results/setup_loading.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

class ComparisonCache {
public:
    /// Call before asking for summaries; forgets deleted batches.
    void begin(const store::LogbookFile& logbook, const Snapshot& snapshot);
    /// The batch's summary if it is cached and still valid. Else the caller makes it from the
    /// logbook and passes it to remember(). `fingerprints`: made for this review.
    Result<std::optional<analysis::BatchSummary>>
    known(const store::LogbookFile& logbook, const Snapshot& snapshot, const Batch& batch,
          const LoadedSetup& setup, const SummaryRules& rules,
          store::SeriesFingerprints& fingerprints);
    void remember(const Batch& batch, const SummaryRules& rules, analysis::BatchSummary summary);

    /// How many batches were summed up since begin().
    int summed() const { return m_summed; }

private:
    /// A meter that counts for the setup, and its readings from just before the batch to just
    /// after.
    struct MeterKey {
        Meter meter;
        std::optional<double> resolutionKwh; ///< in effect
        std::vector<MeterReading> readings;

        bool operator==(const MeterKey&) const = default;
    };
    /// What a summary depends on besides the batch's own record and readings.
    struct Surroundings {
        std::vector<analysis::GravityReading> gravities;
        Setup setup;
        std::vector<Span> concurrentBatches; ///< that touch the span
        std::vector<MeterKey> meters;
        SummaryRules rules;

        bool operator==(const Surroundings&) const = default;
    };
    struct Key {
        BatchKey batch;
        Surroundings surroundings;
    };
    struct Entry {
        Key key;
        std::optional<analysis::BatchSummary> summary; ///< absent until remember()
    };
    static Result<Key> keyOf(const store::LogbookFile& logbook, const Snapshot& snapshot,
                             const Batch& batch, const LoadedSetup& setup,
                             const SummaryRules& rules, store::SeriesFingerprints& fingerprints);

    CachedLogbook m_of;
    /// By batch and number of edges: two batches are summed up in a different way from two setups.
    std::map<std::pair<std::string, std::size_t>, Entry> m_entries;
    int m_summed = 0;
};

} // namespace holdband::results
