// What was planned and what was done, as words side by side.
#pragma once

#include "core/model/plan_in_force.h"
#include "ui/forms/unit_format.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

/// Stage, target, from, to.
TableWords scheduleTable(const std::vector<LaidStage>& laid, const Batch& batch,
                         const UnitFormat& manner);
/// As the batch was first planned, from pitching on.
std::vector<LaidStage> firstPlanned(const Batch& batch);
/// When the plan was changed and stages were ended by hand, a sentence each.
QStringList planHistory(const Batch& batch, const UnitFormat& manner);

} // namespace holdband::ui
