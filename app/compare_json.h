// A comparison as JSON; resources/json-schema/compare.json describes every key.
#pragma once

#include "app/json_values.h"
#include "core/results/comparison/side_by_side.h"

#include <optional>
#include <string>

namespace holdband::app {

/// "a", "b", "too close to call" or null.
Json aheadJson(const std::optional<analysis::Ahead>& ahead);

std::string compareJson(const results::SideBySide& review);

} // namespace holdband::app
