// A comparison as JSON. The keys of shared use come first and are fixed; the further ones are
// described in the README.
#pragma once

#include "core/results/comparison/side_by_side.h"

#include <string>

namespace holdband::app {

std::string compareJson(const review::SideBySide& review);

} // namespace holdband::app
