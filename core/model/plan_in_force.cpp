#include "core/model/plan_in_force.h"

#include <algorithm>

namespace holdband {

namespace {

/// The target of a stage's ramp at an instant inside it.
Temperature rampAt(const ScheduledStage& laid, Instant at)
{
    const double whole = laid.stage.length ? laid.stage.length->count() : 0.0;
    if (!(whole > 0.0))
        return laid.stage.target;
    const double share = std::clamp(hoursBetween(laid.start, at) / whole, 0.0, 1.0);
    return laid.startTarget + (laid.stage.target - laid.startTarget) * share;
}

Temperature standsAt(const ScheduledStage& laid, Instant at)
{
    return laid.stage.kind == StageKind::ramp ? rampAt(laid, at) : laid.stage.target;
}

/// Ends the stage at an instant inside it.
void cutAt(ScheduledStage& laid, Instant at)
{
    if (laid.end && *laid.end <= at)
        return;
    laid.stage.target = standsAt(laid, at);
    laid.end = at;
    laid.stage.length = Hours{at - laid.start};
}

/// Lets the stage begin at an instant inside it, from the target that applied until then.
void beginAt(ScheduledStage& laid, Instant at, Temperature heldUntilThen)
{
    laid.start = at;
    if (laid.stage.kind == StageKind::ramp)
        laid.startTarget = heldUntilThen;
    if (laid.end)
        laid.stage.length = Hours{*laid.end - at};
}

bool goesOn(const ScheduledStage& before, const ScheduledStage& after)
{
    Stage a = before.stage;
    Stage b = after.stage;
    a.length.reset();
    b.length.reset();
    return a == b && a.kind == StageKind::hold;
}

std::optional<Instant> plannedEnd(const Stage& stage, Instant start)
{
    if (stage.until != StageUntil::hours || !stage.length)
        return std::nullopt;
    return start + toMilliseconds(*stage.length);
}

/// From `at` on the new stages replace the old ones.
std::vector<ScheduledStage> changedAt(std::vector<ScheduledStage> old,
                                      std::vector<ScheduledStage> fresh, Instant at)
{
    std::erase_if(old, [&](const ScheduledStage& laid) { return laid.start >= at; });
    std::erase_if(fresh, [&](const ScheduledStage& laid) { return laid.end && *laid.end <= at; });
    if (old.empty() || fresh.empty())
        return old.empty() ? fresh : old;
    ScheduledStage& last = old.back();
    ScheduledStage& first = fresh.front();
    if (first.start < at && goesOn(last, first)) {
        last.end = first.end;
        last.stage.length =
            first.end ? std::optional(Hours{*first.end - last.start}) : first.stage.length;
        fresh.erase(fresh.begin());
    } else {
        cutAt(last, at);
        if (first.start < at)
            beginAt(first, at, last.stage.target);
    }
    old.insert(old.end(), fresh.begin(), fresh.end());
    return old;
}

} // namespace

std::vector<ScheduledStage> layOut(const Schedule& schedule, Instant pitched,
                                   const std::vector<Instant>& stageEnds)
{
    std::vector<ScheduledStage> laid;
    Instant start = pitched;
    Temperature before;
    for (const Stage& stage : schedule) {
        ScheduledStage next{stage, start, plannedEnd(stage, start),
                            stage.kind == StageKind::ramp ? before : stage.target};
        const auto ended = std::upper_bound(stageEnds.begin(), stageEnds.end(), start);
        if (ended != stageEnds.end() && (!next.end || *ended < *next.end))
            cutAt(next, *ended);
        laid.push_back(next);
        if (!next.end)
            break;
        start = *next.end;
        before = next.stage.target;
    }
    return laid;
}

std::vector<ScheduledStage> stagesInForce(const Batch& batch)
{
    std::vector<ScheduledStage> laid = layOut(batch.schedule, batch.pitched, batch.stageEnds);
    for (const PlanChange& change : batch.planChanges)
        laid = changedAt(std::move(laid), layOut(change.schedule, batch.pitched, batch.stageEnds),
                         change.from);
    return laid;
}

Schedule scheduleInForce(const Batch& batch)
{
    Schedule schedule;
    for (ScheduledStage& laid : stagesInForce(batch)) {
        if (!laid.end)
            laid.stage.length.reset();
        schedule.push_back(std::move(laid.stage));
    }
    return schedule;
}

std::optional<Temperature> targetAt(const std::vector<ScheduledStage>& laid, Instant at)
{
    for (const ScheduledStage& stage : laid) {
        if (stage.start <= at && (!stage.end || at < *stage.end))
            return standsAt(stage, at);
    }
    return std::nullopt;
}

} // namespace holdband
