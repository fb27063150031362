// What a batch's targets really were: the plan, its changes while the batch ran, and the stages
// that the brewer ended by hand, laid out on the time line. No Qt.
#pragma once

#include "core/model/batch.h"

#include <optional>
#include <vector>

namespace holdband {

/// A stage on the time line.
struct LaidStage {
    Stage stage;
    Instant start;
    std::optional<Instant> end; ///< absent: lasts until it is ended, or to the batch's end
    Temperature startTarget;    ///< of a ramp: where it starts from; of a hold: its target

    bool operator==(const LaidStage&) const = default;
};

/// The stages of one schedule from pitching on. Each lasts its hours, or until the first of
/// `stageEnds` (increasing) that falls into it; one that waits for the brewer is the last laid out
/// while it has not been ended.
std::vector<LaidStage> layOut(const Schedule& schedule, Instant pitched,
                              const std::vector<Instant>& stageEnds);

/// The stages that held: up to each change of plan the plan before it, from it on the new one. A
/// stage that goes on unchanged over a change is one stage; one that a change or the brewer cut
/// short ends there, a ramp with the target that it had reached.
std::vector<LaidStage> laidInForce(const Batch& batch);

/// The same as a schedule with hours, as the analysis takes it.
Schedule scheduleInForce(const Batch& batch);

/// The target at an instant, °C; absent outside all stages. A ramp without end has none.
std::optional<Temperature> targetAt(const std::vector<LaidStage>& laid, Instant at);

} // namespace holdband
