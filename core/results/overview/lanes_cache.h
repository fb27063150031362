// The lines of the lanes view from its last review, so that a change re-judges only the batches
// that it touches. A line is reused only if everything it was made from is unchanged: the batch's
// record, its span, its sensors with their exclusions, the settings, and the fingerprints of their
// readings (core/store/readings/series_fingerprint.h). Belongs to one logbook and to the thread
// that reads it.
#pragma once

#include "core/results/overview/batch_list.h"
#include "core/results/snapshot.h"
#include "core/store/readings/series_fingerprint.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

class LanesCache {
public:
    /// Call before lineOf for the batches of a review; drops batches that no longer exist.
    void begin(const store::LogbookFile& logbook, const Snapshot& snapshot);
    /// Returns the same as batchLineOf. `prints`: made for this review.
    Result<BatchLine> lineOf(const store::LogbookFile& logbook, const Snapshot& snapshot,
                             const Batch& batch, store::SeriesFingerprints& prints);

    /// How many batches were judged again since begin().
    int judged() const { return m_judged; }

private:
    struct SensorBasis {
        Sensor sensor;
        std::vector<Span> excluded;
        store::SeriesFingerprint readings;
    };
    struct Basis {
        Batch batch;
        Span span;
        std::optional<Instant> knownTo;
        std::vector<SensorBasis> sensors;
    };
    struct Entry {
        Basis basis;
        BatchLine line;
    };
    static Result<Basis> basisOf(const Snapshot& snapshot, const Batch& batch,
                                 store::SeriesFingerprints& prints);
    static Result<bool> same(const Basis& before, const Basis& now,
                             store::SeriesFingerprints& prints);

    std::string m_path;
    LogbookSettings m_settings;
    std::map<std::string, Entry> m_entries;
    int m_judged = 0;
};

} // namespace holdband::results
