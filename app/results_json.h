// The results as JSON, with fixed names: numbers unrounded, times RFC 3339 UTC, durations in hours,
// temperatures °C, differences K; null where a figure can't be computed.
#pragma once

#include "core/results/overview/batch_list.h"
#include "core/results/run/run_review.h"

#include <string>

namespace holdband::app {

std::string verdictJson(const results::RunReview& review);
std::string energyJson(const results::RunReview& review);
std::string batchesJson(const results::BatchList& list);

} // namespace holdband::app
