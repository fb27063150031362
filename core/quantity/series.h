// One sensor's readings in order of time. No Qt, no SQL.
#pragma once

#include "core/quantity/instant.h"

#include <cstddef>
#include <vector>

namespace holdband {

/// Readings strictly increasing in time, after calibration and without excluded ones. The unit of
/// `value` is the series' own: °C for temperatures, W for power logs.
struct Series {
    std::vector<Instant> at;
    std::vector<double> value; ///< in the series' own unit
    /// Indices i (increasing) where the piece from reading i − 1 to i contains an excluded stretch
    /// and must not be interpolated.
    std::vector<std::size_t> breaks;

    std::size_t size() const { return at.size(); }
    bool empty() const { return at.empty(); }
};

} // namespace holdband
