// Criteria with weights and scores, their total, and what would turn it. Section 6 of the method in
// DEVELOPERS.md. No Qt, no SQL.
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

/// The rule for what was measured: the one ahead gets 5, the other 5 divided by how many times
/// worse it is, at least 1; both get 3 where nobody is ahead. Absent where either has no figure.
std::optional<Scores> scoresOf(const Measure& measure);

struct WeighedCriterion {
    double weight = 1.0;          ///< ≥ 0
    std::optional<Scores> scores; ///< absent: it does not take part
};

struct Turn {
    bool byRemoval = false;            ///< without this criterion the lead changes or is gone
    std::optional<double> weightToTie; ///< at this other weight both are equal, beyond it it turns
};

struct JudgedSheet {
    std::optional<Scores> totals; ///< weighted means, 1 … 5; absent where no weight is left
    Ahead lead = Ahead::tooClose; ///< tooClose: equal totals
    std::vector<Turn> turns;      ///< one for each criterion
};

JudgedSheet judge(const std::vector<WeighedCriterion>& criteria);

} // namespace holdband::analysis
