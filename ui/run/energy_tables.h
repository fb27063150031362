// Energy and money, heat and gravity of a run as tables; each figure has an explanation.
#pragma once

#include "core/results/run/run_review.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

TableText energyTable(const results::RunReview& review);

/// The heat removed during the crash and its cost, an estimate. Empty if neither is known.
TableText heatTable(const results::RunReview& review);

/// Attenuation and alcohol with their formulas' names, and the gravities measured during the run.
TableText gravityTable(const results::RunReview& review);

} // namespace holdband::ui
