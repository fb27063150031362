// The one-key steps of a batch: pitch it, turn it down, end it, reopen it; and how a plan changes
// while it runs. Each returns the new batch and a text about the change. No widgets.
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

/// Problem (data): a time in the future.
Result<Step> pitchStep(const Batch& batch, Instant at, Instant now, const UnitFormat& format);
/// Ends the stage in progress. Problem (data): a time in the future or before the last such end, no
/// stage in progress, or it is the last one.
Result<Step> stageEndStep(const Batch& batch, Instant at, Instant now, const UnitFormat& format);
/// Problem (data): a time in the future or not after pitching, or the batch has ended.
Result<Step> batchEndStep(const Batch& batch, Instant at, Instant now, const UnitFormat& format);
/// Removes the end: the batch continues. Problem (data): it has not ended.
Result<Step> reopenStep(const Batch& batch, const UnitFormat& format);

/// The latest plan, as typed: stages counted from pitching.
PlanValue latestPlan(const Batch& batch);

/// The new plan applies from `from` on; earlier targets are unchanged. A changed band is written
/// into the new stages, so that the band of the past does not change. At or before pitching the new
/// plan replaces the first one.
Batch withPlanFrom(Batch batch, const PlanValue& plan, Instant from, const std::string& why);
/// The new plan replaces the first one and all later changes.
Batch withPlanInstead(Batch batch, const PlanValue& plan);

} // namespace holdband::ui
