// What a batch's figures were computed from, besides the readings themselves: its sensors with
// their uncertainties and its meters, for a report that can be read without the logbook.
#pragma once

#include "core/results/run/run_review.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

struct SensorProvenance {
    Sensor sensor;
    /// ±, the largest in force during the batch; absent where it is unknown for some of it.
    std::optional<TemperatureDifference> accuracy;
    std::size_t readings = 0; ///< inside the batch; 0 if another sensor took over or there is none
};

struct Provenance {
    std::string batch;
    Span span;                       ///< pitched to ended, or to the last reading of an open one
    std::optional<Instant> judgedTo; ///< of an open batch whose beer readings end earlier
    std::optional<double> coverage;  ///< of the hold time, a fraction; absent where there was none
    std::vector<SensorProvenance> sensors; ///< the beer's, in order of their use, then the room's
    std::vector<Meter> meters;             ///< those that count for the setup
    std::optional<TemperatureDifference> tolerance; ///< ±; absent: each stage has its own
    Milliseconds gapLimit{0};
    /// Derived from the intervals between the readings, not set in the batch.
    bool usualGapLimit = true;
    Milliseconds ignoreShorterThan{0};
    BandTimes bandTimes;
    double coverageNeeded = 0.0; ///< a fraction
};

/// Reads the sensors and meters of the batch.
Result<Provenance> provenanceOf(const store::LogbookFile& logbook, const RunReview& review);

/// Reviews one batch after the other, in the given order; only one batch's readings are in memory
/// at a time. Problem (data): no batch of a name.
Result<std::vector<Provenance>> provenancesOf(const store::LogbookFile& logbook,
                                              const std::vector<std::string>& batches);

} // namespace holdband::results
