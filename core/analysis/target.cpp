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

/// How far the target of a stage lies below the end of the stage before it, K. Not for the first.
double dropInto(const std::vector<PlacedStage>& stages, std::size_t i)
{
    const PlacedStage& before = stages[i - 1];
    const double length = static_cast<double>((before.span.end - before.span.start).count());
    return before.targetCelsiusAt(length) - stages[i].startTarget.celsius();
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

std::vector<TargetTurn> targetTurns(const std::vector<PlacedStage>& stages)
{
    std::vector<TargetTurn> turns;
    for (std::size_t i = 1; i < stages.size(); ++i) {
        if (stages[i].jumps)
            turns.push_back({i, dropInto(stages, i) > 0.0 ? Turned::down : Turned::up});
    }
    return turns;
}

std::optional<std::size_t> crashStage(const std::vector<PlacedStage>& stages)
{
    for (std::size_t i = 1; i < stages.size(); ++i) {
        if (stages[i].kind == StageKind::hold && dropInto(stages, i) >= crashDepth - sameTarget)
            return i;
    }
    return std::nullopt;
}

} // namespace holdband::analysis
