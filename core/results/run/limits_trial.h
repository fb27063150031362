// Tries other limits on a run without changing the record: the same judging with another tolerance,
// gap limit, shortest excursion that counts, or time inside that ends settling or an excursion.
// Needs no store and may be called from any thread.
#pragma once

#include "core/results/run/run_review.h"

#include <optional>

namespace holdband::results {

struct Limits {
    /// ±, of all stages. Absent: each stage has its own, as when they differ.
    std::optional<TemperatureDifference> tolerance;
    Milliseconds ignoreShorterThan{0};
    std::optional<Milliseconds> gapLimit; ///< absent: by default, from the readings
    BandTimes bandTimes = {};

    bool operator==(const Limits&) const = default;
};

/// The limits that the batch was judged with.
Limits limitsOf(const RunReview& review);

struct LimitsTrial {
    VerdictText words;
    /// With the guard bands for the sensor's uncertainty; its statistics are without quantiles.
    analysis::JudgedBatch judged;
};

/// With limitsOf(review) the result equals the review. Beer enters a wider band earlier, so that a
/// stage may settle for less time and have more hold time.
LimitsTrial tryLimits(const RunReview& review, const Limits& limits);

/// The history entry for changed limits.
store::HistoryEntry limitsEntry(const std::string& batch);

/// Saves the limits in the batch: a tolerance replaces those of all stages, of the plan and of its
/// changes. Problem (data): no such batch, or an invalid limit (a tolerance of 0, a negative
/// shortest excursion or time inside, a gap limit of 0).
Done saveLimits(const store::Change& change, const std::string& batch, const Limits& limits);

} // namespace holdband::results
