// The greatest mean of a quantity over any window of a given length. No Qt, no SQL.
#pragma once

#include "core/analysis/track.h"

#include <optional>

namespace holdband::analysis {

/// Over windows that are covered throughout; in the track's unit. Exact on its straight pieces.
/// Absent where no run is so long.
std::optional<double> greatestMean(const Track& track, double windowMs);

} // namespace holdband::analysis
