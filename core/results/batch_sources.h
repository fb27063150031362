// What a value computed from one batch depends on: as long as all of it is the same, a cached value
// is valid. Not for use outside core/results.
#pragma once

#include "core/results/cache_key.h"
#include "core/results/setup_loading.h"

#include <optional>
#include <vector>

namespace holdband::results {

/// The batch's key (cache_key.h), its gravities, its setup and the batches that ran on it, and the
/// register readings around it.
class BatchSources {
public:
    /// `fingerprints`: made for this review. Problem: something of it can't be read.
    static Result<BatchSources> of(const store::LogbookFile& logbook, const Snapshot& snapshot,
                                   const Batch& batch, const LoadedSetup& setup,
                                   store::SeriesFingerprints& fingerprints);

    /// Problem: readings can't be read.
    Result<bool> isSame(const BatchSources& now, store::SeriesFingerprints& fingerprints) const;

private:
    /// A meter that counts for the setup, and its readings from just before the batch to just
    /// after.
    struct MeterKey {
        Meter meter;
        std::optional<double> resolutionKwh; ///< in effect
        std::vector<MeterReading> readings;

        bool operator==(const MeterKey&) const = default;
    };

    BatchKey m_batch;
    std::vector<analysis::GravityReading> m_gravities;
    Setup m_setup;
    std::vector<Span> m_concurrentBatches; ///< that touch the span
    std::vector<MeterKey> m_meters;
};

} // namespace holdband::results
