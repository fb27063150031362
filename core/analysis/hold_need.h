// Can the setup hold the plan? The greatest 12 h mean of room − target in the plan beside the
// greatest 12 h mean lift that past batches were held at. Section 8.1 of the method in
// DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/energy_figure.h"
#include "core/analysis/planned_lift.h"

#include <optional>
#include <vector>

namespace holdband::analysis {

enum class HoldOutlook {
    unknown,    ///< the need is not known, or no past batch was seen holding for 12 h
    heldMore,   ///< was seen holding more: need at most 0.9 of what was seen
    atEdge,     ///< need at most what was seen
    beyondSeen, ///< more than was seen
};

/// K: the greatest 12 h mean of room − target over the plan, below 0 where the room is colder
/// throughout; of a shorter plan its mean. A typed room adds 2a/π, the mean of the warm half of its
/// day. Absent where a recorded room doesn't cover 12 h of it.
std::optional<double> neededLift(const std::vector<PlacedStage>& stages, const PlannedRoom& room);

/// The times at which the deviation (beer − target, K) was covered and in the band.
std::vector<Span> timesInBand(const Track& deviation, double tolerance);

/// K: the greatest 12 h mean of room − beer of a past batch, from 96 h after pitching, with the
/// beer in band throughout. `lift` is liftTrack() over the batch, `inBand` the timesInBand() of its
/// stages together. Absent where there are no such 12 h.
std::optional<double> seenLift(const Track& lift, const std::vector<Span>& inBand, Instant pitched);

HoldOutlook holdOutlook(std::optional<double> needed, std::optional<double> seen);

} // namespace holdband::analysis
