// The planned and the real stages, as text side by side.
#pragma once

#include "core/model/plan_in_force.h"
#include "ui/forms/unit_format.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

/// Stage, target, from, to.
TableText scheduleTable(const std::vector<ScheduledStage>& scheduled, const Batch& batch,
                        const UnitFormat& format);
/// The first plan, from pitching on.
std::vector<ScheduledStage> firstPlanned(const Batch& batch);
/// When the plan was changed and stages were ended by hand, one sentence each.
QStringList planHistory(const Batch& batch, const UnitFormat& format);

} // namespace holdband::ui
