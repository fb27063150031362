// A plan as typed rows: the text of each stage, and the schedule that it means. No widgets.
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
    planBegins, ///< computed, not typed
    planColumnCount,
};

/// A schedule and the band for stages that don't have their own.
struct PlanValue {
    Schedule schedule;
    std::optional<TemperatureDifference> tolerance;

    bool operator==(const PlanValue&) const = default;
};

/// What ends a stage, as the text of a choice: "after its hours", "when turned down", "at a
/// gravity".
QString untilText(StageUntil until);

std::vector<EditColumn> planColumns(const UnitFormat& format);
std::vector<EditRow> planRows(const Schedule& schedule, const UnitFormat& format);

/// The stage that a row means. Cells not edited since `origin` was shown give its values bit for
/// bit. Problem (data): an invalid cell.
Result<Stage> stageOf(const EditRow& row, const Schedule& origin, const UnitFormat& format);

/// The full plan, checked by the rules of `checkPlan`. The Problem's place is the stage.
Result<Schedule> scheduleOf(const std::vector<EditRow>& rows, const Schedule& origin,
                            const std::optional<TemperatureDifference>& tolerance,
                            const UnitFormat& format);

/// When each stage begins, as text: "day 1", "day 13, 12 Mar 18:00" if the pitching is known; "once
/// … is turned down" after a stage without a known end.
QStringList stageBeginnings(const Schedule& schedule, std::optional<Instant> pitched,
                            const UnitFormat& format);

/// Questions about unusual targets: below freezing or above 110 °F.
QStringList planQuestions(const Schedule& schedule, const UnitFormat& format);

} // namespace holdband::ui
