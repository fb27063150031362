// A batch's forecast from when it was pitched, beside what came.
#pragma once

#include "core/results/run/run_review.h"

#include <string>
#include <vector>

namespace holdband::results {

/// Sentences on its energy and on its crash; empty without a forecast.
std::vector<std::string> forecastOutcome(const RunReview& review);

} // namespace holdband::results
