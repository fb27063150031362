// Criteria with weights and scores, their total, and what would change the result. Section 6 of the
// method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/comparison.h"

#include <optional>
#include <vector>

namespace holdband::analysis {

inline constexpr double leastScore = 1.0;
inline constexpr double mostScore = 5.0;
inline constexpr double equalScore = 3.0;

/// 1 … 5, more is better.
struct Scores {
    double a = equalScore; ///< points
    double b = equalScore; ///< points
};

/// Scores for a measured criterion: the side ahead gets 5, the other 5 divided by how many times
/// worse it is, at least 1; both get 3 where neither is ahead. Absent where either side has no
/// figure.
std::optional<Scores> scoresOf(const Measure& measure);

struct WeighedCriterion {
    double weight = 1.0;          ///< ≥ 0
    std::optional<Scores> scores; ///< absent: the criterion is not counted
};

struct Turn {
    bool byRemoval = false; ///< without this criterion the lead changes or disappears
    /// With this weight instead both sides are equal; beyond it the lead changes.
    std::optional<double> weightToTie;
};

struct JudgedSheet {
    std::optional<Scores> totals; ///< weighted means, 1 … 5; absent where all weights are 0
    Ahead lead = Ahead::tooClose; ///< tooClose: equal totals
    std::vector<Turn> turns;      ///< one for each criterion
};

JudgedSheet judge(const std::vector<WeighedCriterion>& criteria);

} // namespace holdband::analysis
