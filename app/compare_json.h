// A comparison as JSON; resources/json-schema/compare.json describes every key.
#pragma once

#include "core/results/comparison/side_by_side.h"

#include <string>

namespace holdband::app {

std::string compareJson(const results::SideBySide& review);

} // namespace holdband::app
