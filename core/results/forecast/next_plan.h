// The plan of the batch that a forecast is about: a named plan, like a past batch, or drawn.
#pragma once

#include "core/analysis/target.h"
#include "core/model/batch.h"
#include "core/store/logbook_file.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

struct NextPlan {
    std::string name; ///< of the plan, or of the batch that it is like; empty for a drawn one
    Schedule schedule;
    std::optional<TemperatureDifference> tolerance; ///< absent: usualTolerance
    std::optional<Volume> volume;
    std::optional<Gravity> originalGravity;
    std::optional<Gravity> finalGravity;
    bool shared = false; ///< another batch will run on the setup meanwhile

    bool operator==(const NextPlan&) const = default;
};

/// Where neither the plan nor its stages say: ±3 °F.
inline constexpr TemperatureDifference usualTolerance = TemperatureDifference::kelvins(5.0 / 3.0);
/// The length of a last stage that doesn't say how long it is.
inline constexpr Hours usualLastStage{72.0};

/// Problem (data): no plan of that name (with suggestions).
Result<NextPlan> planNamed(const store::LogbookFile& logbook, const std::string& name);

/// The plan as it really applied, with the batch's volume and gravities; an ended batch's last
/// stage lasts as long as it did.
NextPlan planOf(const Batch& batch);
/// The same by name. Problem (data): no batch of that name (with suggestions).
Result<NextPlan> planLike(const store::LogbookFile& logbook, const std::string& batch);

struct PlacedPlan {
    std::vector<analysis::PlacedStage> stages;
    bool lastLengthAssumed = false;
    bool toleranceAssumed = false;

    Milliseconds length() const { return stages.back().span.end - stages.front().span.start; }
    /// The same, beginning at another instant.
    std::vector<analysis::PlacedStage> at(Instant start) const;
};

/// Problem (data): the plan makes no sense, or a stage before the last has no length.
Result<PlacedPlan> placedPlan(const NextPlan& plan, Instant start);

} // namespace holdband::results
