// What can be done to a batch by one key: pitch it, turn it down, end it, take its end back; and
// how a plan changes while it runs. Each gives the batch as it will be and the words that say so.
// No widgets.
#pragma once

#include "core/model/batch.h"
#include "core/problem.h"
#include "core/store/history/history_entry.h"
#include "ui/forms/unit_format.h"
#include "ui/plans/plan_rows.h"

#include <QString>

namespace holdband::ui {

struct Step {
    Batch batch;
    QString words; ///< "Primary ends at 12 Mar 18:12. Crash begins: hold at 34.0 °F."
    store::HistoryEntry entry;
};

/// Problem (data): a time still to come.
Result<Step> pitchStep(const Batch& batch, Instant at, Instant now, const UnitFormat& manner);
/// Ends the stage in progress. Problem (data): a time still to come or before the last such end,
/// no stage in progress, or it is the last one.
Result<Step> stageEndStep(const Batch& batch, Instant at, Instant now, const UnitFormat& manner);
/// Problem (data): a time still to come or not after pitching, or the batch has ended.
Result<Step> batchEndStep(const Batch& batch, Instant at, Instant now, const UnitFormat& manner);
/// Takes the end back: the batch runs on. Problem (data): it has not ended.
Result<Step> reopenStep(const Batch& batch, const UnitFormat& manner);

/// The plan that holds last, as it was typed: stages counted from pitching.
PlanValue latestPlan(const Batch& batch);

/// From `from` on the new plan holds; targets before stay as they were. A band that changed is
/// written into the new stages, so that it does not move the past either. At or before pitching
/// it takes the place of the first plan.
Batch withPlanFrom(Batch batch, const PlanValue& plan, Instant from, const std::string& why);
/// The new plan holds as if it had been the first; earlier changes go.
Batch withPlanInstead(Batch batch, const PlanValue& plan);

} // namespace holdband::ui
