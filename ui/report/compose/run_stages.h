// Stages and excursions of a run's report.
#pragma once

#include "core/results/run/run_review.h"
#include "ui/report/compose/document.h"

namespace holdband::report {

void addStages(Document& document, const review::RunReview& review);
void addExcursions(Document& document, const review::RunReview& review);

} // namespace holdband::report
