// The sentence that answers a comparison, and the one for what is not decided. Not for use outside
// core/results.
#pragma once

#include "core/results/comparison/side_by_side.h"

namespace holdband::results {

/// "Cabinet is cheaper to build and cheaper to run; Loop is cold sooner."
std::string answerOf(const SideBySide& review, const std::vector<GlancePair>& pairs);

/// "Too close to call: energy and cost. Not decided: work."; may be empty.
std::string openOf(const SideBySide& review, const std::vector<GlancePair>& pairs);

} // namespace holdband::results
