// Stretches of a batch's beer readings that somebody left out by hand, and what they would have
// made of the verdict. Section 1 of the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/verdict.h"

#include <optional>
#include <vector>

namespace holdband::analysis {

struct LeftOutFigures {
    std::vector<LeftOut> stretches; ///< inside the judged time, in order of time
    double ms = 0.0;                ///< clock time; where two overlap it counts once
    std::size_t readings = 0;       ///< that lie in them
    Verdict verdictWithThem = Verdict::notEnoughData;
    bool changesVerdict = false; ///< the verdict would be another with them
};

/// Absent where nothing of the judged time was left out. `stages` and `rules` are those of
/// `judged`; the gap limit is the batch's own, or the usual one of all the readings.
std::optional<LeftOutFigures> leftOutFigures(const JudgedBatch& judged, const JudgingInput& input,
                                             const JudgingRules& rules,
                                             const JudgingSettings& settings);

} // namespace holdband::analysis
