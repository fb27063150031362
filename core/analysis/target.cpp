#include "core/analysis/target.h"

#include <algorithm>
#include <cmath>

namespace holdband::analysis {

namespace {

/// Two targets typed in °F and °C count as equal below this difference, K.
constexpr double sameTarget = 1e-6;
constexpr double crashDepth = 5.0; ///< K

PlacedStage placeStage(const Batch& batch, const Stage& stage, const Stage* before, Span span)
{
    PlacedStage placed;
    placed.label = stage.label;
    placed.kind = stage.kind;
    placed.span = span;
    placed.startTarget = stage.target;
    placed.tolerance = stage.tolerance.value_or(batch.tolerance.value_or(TemperatureDifference{}));
    placed.settleAllowed =
        stage.settleAllowed ? toMilliseconds(*stage.settleAllowed) : defaultSettleAllowed;
    if (stage.kind == StageKind::ramp && before && stage.length) {
        const auto planned = static_cast<double>(toMilliseconds(*stage.length).count());
        placed.startTarget = before->target;
        placed.slopePerMs = (stage.target - before->target).kelvins() / planned;
    } else {
        placed.jumps = !before || std::abs((stage.target - before->target).kelvins()) > sameTarget;
    }
    return placed;
}

} // namespace

std::vector<PlacedStage> placeStages(const Batch& batch, Instant end)
{
    std::vector<PlacedStage> placed;
    Instant start = batch.pitched;
    const Stage* before = nullptr;
    for (const Stage& stage : batch.schedule) {
        if (start >= end)
            break;
        const Instant plannedEnd = stage.length ? start + toMilliseconds(*stage.length) : end;
        if (!placed.empty())
            placed.back().ended = true;
        placed.push_back(placeStage(batch, stage, before, {start, std::min(plannedEnd, end)}));
        placed.back().ended = batch.ended.has_value();
        start = plannedEnd;
        before = &stage;
    }
    return placed;
}

std::optional<std::size_t> crashStage(const std::vector<PlacedStage>& stages)
{
    for (std::size_t i = 1; i < stages.size(); ++i) {
        const PlacedStage& before = stages[i - 1];
        const double length = static_cast<double>((before.span.end - before.span.start).count());
        const double drop = before.targetCelsiusAt(length) - stages[i].startTarget.celsius();
        if (stages[i].kind == StageKind::hold && drop >= crashDepth - sameTarget)
            return i;
    }
    return std::nullopt;
}

} // namespace holdband::analysis
