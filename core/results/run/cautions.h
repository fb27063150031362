// The usual cautions for a kind of setup. Sources: OSHA and NIOSH limits for carbon dioxide; NEC
// 210.8(A)(2) and 210.23(A)(1); EPA section 608; the rest is common practice, no source.
#pragma once

#include "core/model/equipment.h"

#include <string>
#include <vector>

namespace holdband::results {

/// One sentence each; the last one refers to local codes and licensed people.
std::vector<std::string> cautionsFor(const Setup& setup);

} // namespace holdband::results
