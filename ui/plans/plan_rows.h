// A plan as typed rows: what a person writes for each stage, and the schedule that it means. No
// widgets.
#pragma once

#include "core/model/batch.h"
#include "core/problem.h"
#include "ui/forms/edit_table_model.h"
#include "ui/forms/unit_format.h"

namespace holdband::ui {

enum PlanColumn : int {
    planStage,
    planKind,
    planTarget,
    planLasts,
    planEnds,
    planGravity,
    planBand,
    planSettling,
    planBegins, ///< worked out, not typed
    planColumnCount,
};

/// A schedule and the band that holds where a stage has none of its own.
struct PlanValue {
    Schedule schedule;
    std::optional<TemperatureDifference> tolerance;

    bool operator==(const PlanValue&) const = default;
};

/// What ends a stage, as it is chosen: "after its hours", "when turned down", "at a gravity".
QString untilWords(StageUntil until);

std::vector<EditColumn> planColumns(const UnitFormat& manner);
std::vector<EditRow> planRows(const Schedule& schedule, const UnitFormat& manner);

/// The stage that a row means. What was not touched since `origin` was shown stays as it was to
/// the bit. Problem (data): a cell that can't stand.
Result<Stage> stageOf(const EditRow& row, const Schedule& origin, const UnitFormat& manner);

/// The whole plan, checked: `checkPlan`'s rules. The Problem's place is the stage.
Result<Schedule> scheduleOf(const std::vector<EditRow>& rows, const Schedule& origin,
                            const std::optional<TemperatureDifference>& tolerance,
                            const UnitFormat& manner);

/// When each stage begins, in words: "day 1", "day 13, 12 Mar 18:00" where the pitching is known;
/// "once … is turned down" behind a stage without a known end.
QStringList stageBeginnings(const Schedule& schedule, std::optional<Instant> pitched,
                            const UnitFormat& manner);

/// What is unusual enough to ask about: targets below freezing or above 110 °F.
QStringList planQuestions(const Schedule& schedule, const UnitFormat& manner);

} // namespace holdband::ui
