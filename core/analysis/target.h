// The schedule of a batch placed on the time line: the target at each instant. No Qt, no SQL.
#pragma once

#include "core/model/batch.h"
#include "core/quantity/instant.h"
#include "core/quantity/temperature.h"

#include <optional>
#include <vector>

namespace holdband::analysis {

/// One stage as it really ran: clipped to the batch's end, tolerance and settling filled in.
struct PlacedStage {
    std::string label;
    StageKind kind = StageKind::hold;
    Span span;
    Temperature startTarget;
    double slopePerMs = 0.0; ///< K per ms; 0 for a hold
    TemperatureDifference tolerance;
    bool jumps = false; ///< a hold whose target differs from the one before it; every first stage
    Milliseconds settleAllowed{0};
    bool ended = false; ///< a later stage began, or the batch ended

    double targetCelsiusAt(double msFromStart) const
    {
        return startTarget.celsius() + slopePerMs * msFromStart;
    }
};

/// Settling time allowed where a stage does not set its own.
inline constexpr Milliseconds defaultSettleAllowed = std::chrono::hours{48};

/// The stages that begin before the batch's end, in order. `end` is the batch's end, or its last
/// beer reading while it is open. Time after the schedule has no stage.
std::vector<PlacedStage> placeStages(const Batch& batch, Instant end);

/// A stage at whose start the setup was turned down or up.
enum class Turned { down, up };
struct TargetTurn {
    std::size_t stage = 0; ///< index of the placed stage
    Turned turned = Turned::down;

    bool operator==(const TargetTurn&) const = default;
};

/// The stages whose target jumps from the one before it, in order. The first stage is none of them:
/// nothing was turned before it.
std::vector<TargetTurn> targetTurns(const std::vector<PlacedStage>& stages);

/// Index of the crash: the first hold whose target is at least 5 K below the stage before it.
std::optional<std::size_t> crashStage(const std::vector<PlacedStage>& stages);

} // namespace holdband::analysis
