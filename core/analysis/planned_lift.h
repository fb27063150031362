// The lift that a plan will have in a given room. Section 8.1 of the method in DEVELOPERS.md. No
// Qt, no SQL.
#pragma once

#include "core/analysis/target.h"
#include "core/analysis/track.h"
#include "core/analysis/weather.h"

#include <variant>
#include <vector>

namespace holdband::analysis {

/// A room that the user typed: a daily wave about its mean.
struct TypedRoom {
    double meanCelsius = 0.0; ///< °C
    double swingK = 0.0;      ///< K, from the lowest to the highest of the day; at least 0
};

/// A typed room, or a recorded stretch of a room's temperature in °C, moved so that it begins when
/// the plan does.
using PlannedRoom = std::variant<TypedRoom, Track>;

/// How far a typed room's mean may be off, K. A recorded stretch has no doubt of its own: the
/// forecast holds if the room is like that.
inline constexpr double typedRoomDoubtK = 1.0;
double roomDoubtK(const PlannedRoom& room);

/// The mean over a day of max(0, room − target), K, of a wave whose mean lies `aboveK` over the
/// target and that goes `amplitudeK` (half of the swing) up and down.
double meanLiftOfWave(double aboveK, double amplitudeK);

/// The same while the mean's distance to the target goes straight from one to the other: a ramp.
double meanLiftOfWave(double fromAboveK, double toAboveK, double amplitudeK);

/// Room − target over the covered part of the stage, K; a typed room without its swing.
Track aboveTarget(const PlacedStage& stage, const PlannedRoom& room);

/// max(0, room − target) and its opposite over a stage of the plan, for each stage. `stages` is the
/// plan as placeStages() gives it.
std::vector<Lift> plannedLifts(const std::vector<PlacedStage>& stages, const PlannedRoom& room);

} // namespace holdband::analysis
