// Other limits tried on a run without changing the record: the same judging with another tolerance,
// grace or gap limit. Needs no store and may be called from any thread.
#pragma once

#include "core/results/run/run_review.h"

#include <optional>

namespace holdband::results {

struct Limits {
    /// ±, of all stages. Absent: each stage keeps its own, as where they differ.
    std::optional<TemperatureDifference> tolerance;
    Milliseconds grace{0};
    std::optional<Milliseconds> gapLimit; ///< absent: by default, from the readings

    bool operator==(const Limits&) const = default;
};

/// Those by which the batch was judged.
Limits limitsOf(const RunReview& review);

struct LimitsTrial {
    VerdictWords words;
    /// With the guard bands of the sensor's doubt; its statistics are without quantiles.
    analysis::JudgedBatch judged;
};

/// With limitsOf(review) the same as the review. A wider band is entered earlier, so that a stage
/// may settle for less time and have more hold time.
LimitsTrial tryLimits(const RunReview& review, const Limits& limits);

/// For the history.
store::HistoryEntry limitsEntry(const std::string& batch);

/// Writes the limits into the batch: a tolerance replaces those of all stages, planned and changed.
/// Problem (data): no such batch, or a limit that no batch may have (a tolerance of 0, a negative
/// grace, a gap limit of 0).
Done keepLimits(const store::Change& change, const std::string& batch, const Limits& limits);

} // namespace holdband::results
