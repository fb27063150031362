// The text of `forecast`.
#pragma once

#include "core/results/forecast/next_batch.h"

#include <string>

namespace holdband::app {

std::string forecastText(const results::NextBatch& review);

} // namespace holdband::app
