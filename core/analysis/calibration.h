// Turns a sensor's raw readings into the series that is judged: applies offsets and excluded
// stretches. Section 1 of the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/track.h"
#include "core/model/equipment.h"

#include <optional>
#include <vector>

namespace holdband::analysis {

/// Adds to each reading (°C) the offset in force at its time: an offset holds from its `from` on
/// until the next one, which replaces it. `offsets` increasing in time.
void applyOffsets(Series& series, const std::vector<Offset>& offsets);

/// Removes the readings inside the stretches (ends included) and adds breaks, so that nothing is
/// interpolated across them.
void applyExclusions(Series& series, const std::vector<Span>& excluded);

/// The largest accuracy in force during the span: while an offset applies, its own uncertainty
/// replaces the sensor's accuracy. Absent where it is unknown for some of the span.
std::optional<TemperatureDifference> accuracyOver(const Sensor& sensor, Span span);

} // namespace holdband::analysis
