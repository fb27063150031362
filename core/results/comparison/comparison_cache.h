// What comparisons know of each batch since they last looked, so that a change sums up anew only
// the batches that it touches. A summary is used again only where everything that it was made from
// is the same: the batch's record, its span, its sensors with their exclusions and the prints of
// their readings (core/store/series_print.h), its gravities, its setup and those that ran on it,
// the register readings around it, prices and zone. Belongs to one logbook and to the thread that
// reads it.
#pragma once

#include "core/results/comparison/side_loading.h"
#include "core/store/readings/series_fingerprint.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

class ComparisonCache {
public:
    /// To be called before summaries are asked for; forgets batches that are gone.
    void begin(const store::LogbookFile& logbook, const Snapshot& snapshot);
    /// The batch's summary, where it is known and still holds. Else the caller makes it, from what
    /// the logbook holds now, and gives it to remember(). `prints`: made for this review.
    Result<std::optional<analysis::BatchSummary>>
    known(const store::LogbookFile& logbook, const Snapshot& snapshot, const Batch& batch,
          const LoadedSetup& setup, const SummaryRules& rules, store::SeriesFingerprints& prints);
    void remember(const Batch& batch, const SummaryRules& rules, analysis::BatchSummary summary);

    /// How many batches were summed up anew since begin().
    int summed() const { return m_summed; }

private:
    struct SensorBasis {
        Sensor sensor;
        std::vector<Span> excluded;
        store::SeriesFingerprint readings;
    };
    /// A meter that counts for the setup, and what it read from just before the batch to just
    /// after.
    struct MeterBasis {
        Meter meter;
        std::optional<double> resolutionKwh; ///< in effect
        std::vector<MeterReading> readings;

        bool operator==(const MeterBasis&) const = default;
    };
    struct Basis {
        Batch batch;
        Span span;
        std::optional<Instant> knownTo;
        std::vector<SensorBasis> sensors;
        std::vector<analysis::GravityReading> gravities;
        Setup setup;
        std::vector<Span> concurrentBatches; ///< that touch the span
        std::vector<MeterBasis> meters;
        SummaryRules rules;
    };
    struct Entry {
        Basis basis;
        std::optional<analysis::BatchSummary> summary; ///< absent until it is remembered
    };
    static Result<Basis> basisOf(const store::LogbookFile& logbook, const Snapshot& snapshot,
                                 const Batch& batch, const LoadedSetup& setup,
                                 const SummaryRules& rules, store::SeriesFingerprints& prints);
    static Result<bool> same(const Basis& before, const Basis& now,
                             store::SeriesFingerprints& prints);

    std::string m_path;
    LogbookSettings m_settings;
    /// By batch and number of edges: two batches and two setups are summed up in their own ways.
    std::map<std::pair<std::string, std::size_t>, Entry> m_entries;
    int m_summed = 0;
};

} // namespace holdband::results
