// The JSON of `forecast`.
#pragma once

#include "core/results/forecast/next_batch.h"

#include <string>

namespace holdband::app {

std::string forecastJson(const results::NextBatch& review);

} // namespace holdband::app
