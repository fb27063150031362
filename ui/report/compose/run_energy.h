// Energy, money, heat and gravity of a run's report.
#pragma once

#include "core/results/run/run_review.h"
#include "ui/report/compose/document.h"

namespace holdband::report {

/// The total, before the crash, the crash, each stage; rates and money; each day.
void addEnergy(Document& document, const results::RunReview& review);
/// The heat check of the crash, and the gravities.
void addBeer(Document& document, const results::RunReview& review);

} // namespace holdband::report
