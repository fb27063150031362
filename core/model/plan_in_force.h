// The targets that a batch really had: the plan, its changes while the batch ran, and the stages
// that the brewer ended by hand, placed on the time line. No Qt.
#pragma once

#include "core/model/batch.h"

#include <optional>
#include <vector>

namespace holdband {

/// A stage on the time line.
struct ScheduledStage {
    Stage stage;
    Instant start;
    std::optional<Instant> end; ///< absent: lasts until it is ended, or to the batch's end
    Temperature startTarget;    ///< of a ramp: its target at the start; of a hold: its target

    bool operator==(const ScheduledStage&) const = default;
};

/// The stages of one schedule from pitching on. Each lasts its hours, or until the first of
/// `stageEnds` (increasing) that falls into it; a stage that the brewer must end is the last one
/// placed until it is ended.
std::vector<ScheduledStage> layOut(const Schedule& schedule, Instant pitched,
                                   const std::vector<Instant>& stageEnds);

/// The stages that really applied: each plan until the next change of plan. A stage that continues
/// unchanged over a change is one stage; a stage cut short by a change or by the brewer ends there,
/// a ramp with the target that it had reached.
std::vector<ScheduledStage> stagesInForce(const Batch& batch);

/// The same as a schedule with hours, the form that the analysis takes.
Schedule scheduleInForce(const Batch& batch);

/// The target at an instant, °C; absent outside all stages. A ramp without end has none.
std::optional<Temperature> targetAt(const std::vector<ScheduledStage>& scheduled, Instant at);

} // namespace holdband
