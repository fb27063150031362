// Stretches of a batch's beer readings that the user left out by hand, and whether the verdict
// would be different with them. Section 1 of the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/verdict.h"

#include <optional>
#include <vector>

namespace holdband::analysis {

struct LeftOutFigures {
    std::vector<LeftOut> stretches; ///< inside the judged time, in order of time
    double ms = 0.0;                ///< clock time; overlaps count once
    std::size_t readings = 0;       ///< inside the stretches
    Verdict verdictWithThem = Verdict::notEnoughData;
    bool changesVerdict = false; ///< the verdict would be different with them
};

/// Absent where no judged time was left out. `stages` and `rules` are those of `judged`; the gap
/// limit is the batch's own, or the default for all the readings.
std::optional<LeftOutFigures> leftOutFigures(const JudgedBatch& judged, const JudgingInput& input,
                                             const JudgingRules& rules,
                                             const JudgingSettings& settings);

} // namespace holdband::analysis
