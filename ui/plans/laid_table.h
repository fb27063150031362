// What was planned and what was done, as words side by side.
#pragma once

#include "core/model/plan_in_force.h"
#include "ui/forms/manner.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

/// Stage, target, from, to.
TableWords laidTable(const std::vector<LaidStage>& laid, const Batch& batch, const Manner& manner);
/// As the batch was first planned, from pitching on.
std::vector<LaidStage> firstPlanned(const Batch& batch);
/// When the plan was changed and stages were ended by hand, a sentence each.
QStringList planHistory(const Batch& batch, const Manner& manner);

} // namespace holdband::ui
