// Stages and excursions of a run's report.
#pragma once

#include "core/results/run/run_review.h"
#include "ui/report/compose/document.h"

namespace holdband::report {

void addStages(Document& document, const results::RunReview& review);
void addExcursions(Document& document, const results::RunReview& review);

} // namespace holdband::report
