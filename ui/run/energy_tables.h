// Energy and money, heat and gravity of a run as tables; each figure says how it came about.
#pragma once

#include "core/results/run/run_review.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

TableWords energyTable(const results::RunReview& review);

/// Heat moved over the crash and what it cost, an estimate. Empty where neither is known.
TableWords heatTable(const results::RunReview& review);

/// Attenuation and alcohol with their formulas' names, and the gravities measured on the way.
TableWords gravityTable(const results::RunReview& review);

} // namespace holdband::ui
