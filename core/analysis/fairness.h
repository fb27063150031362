// What makes a comparison of two runs less than fair, found from their figures. No Qt, no SQL.
#pragma once

#include "core/analysis/comparison.h"

namespace holdband::analysis {

/// `anyCommon`: some elapsed time is metered in both; `widening`: how energies were compared.
std::vector<FairnessNote> fairnessNotes(const Contender& a, const Contender& b, bool anyCommon,
                                        const Widening& widening);

} // namespace holdband::analysis
