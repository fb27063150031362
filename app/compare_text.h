// Prints a comparison on the command line.
#pragma once

#include "core/results/comparison/side_by_side.h"

#include <string>

namespace holdband::app {

std::string compareText(const results::SideBySide& review);

} // namespace holdband::app
