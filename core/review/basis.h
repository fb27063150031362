// What a batch's figures were computed from, beside the readings themselves: its sensors with their
// doubts and its meters, for a report that can be read without the logbook.
#pragma once

#include "core/review/run_review.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::review {

struct SensorBasis {
    Sensor sensor;
    /// ±, the largest in force during the batch; absent where it is unknown for some of it.
    std::optional<TemperatureDifference> accuracy;
    std::size_t readings = 0; ///< inside the batch; 0 where another sensor took over or none is
};

struct Basis {
    std::vector<SensorBasis> sensors; ///< the beer's, in order of their use, then the room's
    std::vector<Meter> meters;        ///< those that count for the setup
};

/// Reads the sensors and meters of the batch.
Result<Basis> basisOf(const store::LogbookFile& logbook, const RunReview& review);

} // namespace holdband::review
