// Plain values for a batch and its plan. No Qt.
#pragma once

#include "core/model/batch_forecast.h"
#include "core/quantity/gravity.h"
#include "core/quantity/instant.h"
#include "core/quantity/temperature.h"
#include "core/quantity/volume.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband {

enum class StageKind { hold, ramp };

/// What ends a stage: its hours, or the brewer, who turns the target down by hand, perhaps once a
/// gravity is reached.
enum class StageUntil { hours, turnedDown, gravity };

struct Stage {
    std::string label;
    StageKind kind = StageKind::hold;
    Temperature target; ///< of a ramp: the target at its end
    /// Absent in the last stage: it lasts to the batch's end. For a stage that the brewer ends: its
    /// expected length, if known; it still lasts until it is ended.
    std::optional<Hours> length;
    std::optional<TemperatureDifference> tolerance; ///< absent: the batch's
    std::optional<Hours> settleAllowed;             ///< on the clock from the stage's start
    StageUntil until = StageUntil::hours;
    std::optional<Gravity> untilGravity = {}; ///< where `until` is gravity

    bool operator==(const Stage&) const = default;
};

using Schedule = std::vector<Stage>;

/// A schedule to be used again under a name.
struct NamedPlan {
    std::string name;
    std::string note;
    std::optional<TemperatureDifference> tolerance;
    Schedule schedule;

    bool operator==(const NamedPlan&) const = default;
};

/// A plan that replaced the one before while the batch ran. Targets before `from` are unchanged;
/// stages are counted from pitching, as in the first plan.
struct PlanChange {
    Instant from;
    std::string why;
    Schedule schedule;

    bool operator==(const PlanChange&) const = default;
};

/// From `from` on, the batch's beer was in that vessel and was read by that sensor.
struct BeerUse {
    Instant from;
    std::string sensor;
    std::string vessel; ///< may be empty

    bool operator==(const BeerUse&) const = default;
};

/// When the beer has arrived in a band, and when an excursion is over.
struct BandTimes {
    /// The beer has arrived once it has stayed inside for this long; 0: as soon as it is inside.
    Milliseconds dwell = std::chrono::minutes{60};
    /// An excursion is over once the beer has been back inside for this long without a break.
    Milliseconds returnTime = std::chrono::minutes{15};

    bool operator==(const BandTimes&) const = default;
};

struct Batch {
    std::string name;
    std::string setup;
    std::optional<Volume> volume;
    Instant pitched;
    std::optional<Instant> ended; ///< absent: still open
    std::string beerSensor;       ///< from pitching on
    std::string vessel;           ///< from pitching on; may be empty
    std::optional<std::string> ambientSensor;
    std::optional<TemperatureDifference> tolerance; ///< ±; absent only if each stage has its own
    std::optional<Milliseconds> gapLimit;
    Milliseconds ignoreShorterThan{0};
    BandTimes bandTimes = {};
    std::optional<Gravity> originalGravity;
    std::optional<Gravity> finalGravity;
    Schedule schedule; ///< as first planned
    /// Increasing in `from`. These are the planned changes; scheduleInForce (plan_in_force.h) gives
    /// the targets that really applied.
    std::vector<PlanChange> planChanges = {};
    /// Increasing: the brewer ended the stage in progress here.
    std::vector<Instant> stageEnds = {};
    std::vector<BeerUse> beerUses = {}; ///< increasing in `from`: after the first sensor and vessel
    /// The batch from which this beer was moved into a second vessel.
    std::optional<std::string> splitFrom = {};
    std::optional<BatchForecast> forecast = {}; ///< made when it was pitched

    bool operator==(const Batch&) const = default;
};

} // namespace holdband
