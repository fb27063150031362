// Plain values for a batch and its plan. No Qt.
#pragma once

#include "core/quantity/gravity.h"
#include "core/quantity/instant.h"
#include "core/quantity/temperature.h"
#include "core/quantity/volume.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband {

enum class StageKind { hold, ramp };

struct Stage {
    std::string label;
    StageKind kind = StageKind::hold;
    Temperature target;                             ///< of a ramp: where it arrives
    std::optional<Hours> length;                    ///< absent: lasts to the batch's end
    std::optional<TemperatureDifference> tolerance; ///< absent: the batch's
    std::optional<Hours> settleAllowed;             ///< on the clock from the stage's start

    bool operator==(const Stage&) const = default;
};

using Schedule = std::vector<Stage>;

struct Batch {
    std::string name;
    std::string setup;
    std::optional<Volume> volume;
    Instant pitched;
    std::optional<Instant> ended; ///< absent: still open
    std::string beerSensor;
    std::optional<std::string> ambientSensor;
    std::optional<TemperatureDifference> tolerance; ///< ±; absent only where each stage has its own
    std::optional<Milliseconds> gapLimit;
    Milliseconds grace{0};
    std::optional<Gravity> originalGravity;
    std::optional<Gravity> finalGravity;
    Schedule schedule;

    bool operator==(const Batch&) const = default;
};

} // namespace holdband
