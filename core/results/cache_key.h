// What a cached result of one batch was made from: as long as it is the same, the result is valid.
// Not for use outside core/results.
#pragma once

#include "core/results/snapshot.h"
#include "core/store/readings/series_fingerprint.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace holdband::results {

/// Sensors that read the batch's beer at some time.
std::set<std::string> beerSensorsOf(const Batch& batch);

/// Stretches of the sensor that are left out by hand.
std::vector<Span> exclusionsOf(const Snapshot& snapshot, const std::string& sensor);

/// A batch's record, its span, and its sensors with their exclusions and readings.
class BatchKey {
public:
    BatchKey() = default;
    BatchKey(const Snapshot& snapshot, const Batch& batch);

    /// Problem: its readings can't be read. `fingerprints`: made for this review.
    Done add(const Snapshot& snapshot, const Sensor& sensor,
             store::SeriesFingerprints& fingerprints);

    const Span& span() const { return m_span; }

    /// Problem: readings can't be read.
    Result<bool> isSame(const BatchKey& now, store::SeriesFingerprints& fingerprints) const;

private:
    struct SensorKey {
        Sensor sensor;
        std::vector<Span> excluded;
        store::SeriesFingerprint readings;
    };
    Batch m_batch;
    Span m_span;
    std::optional<Instant> m_knownTo; ///< of an open batch
    std::vector<SensorKey> m_sensors;
};

/// Identifies a cache's logbook and its settings.
class CachedLogbook {
public:
    /// Whether it is another one, or its settings changed, since the last call.
    bool changed(const store::LogbookFile& logbook, const Snapshot& snapshot);

private:
    std::string m_path;
    LogbookSettings m_settings;
};

} // namespace holdband::results
