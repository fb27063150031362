#include "core/model/plan_in_force.h"

#include <algorithm>

namespace holdband {

namespace {

/// The target of a stage's ramp at an instant inside it.
Temperature rampAt(const ScheduledStage& scheduled, Instant at)
{
    const double whole = scheduled.stage.length ? scheduled.stage.length->count() : 0.0;
    if (!(whole > 0.0))
        return scheduled.stage.target;
    const double share = std::clamp(hoursBetween(scheduled.start, at) / whole, 0.0, 1.0);
    return scheduled.startTarget + (scheduled.stage.target - scheduled.startTarget) * share;
}

Temperature targetOf(const ScheduledStage& scheduled, Instant at)
{
    return scheduled.stage.kind == StageKind::ramp ? rampAt(scheduled, at) : scheduled.stage.target;
}

/// Ends the stage at an instant inside it.
void cutAt(ScheduledStage& scheduled, Instant at)
{
    if (scheduled.end && *scheduled.end <= at)
        return;
    scheduled.stage.target = targetOf(scheduled, at);
    scheduled.end = at;
    scheduled.stage.length = Hours{at - scheduled.start};
}

/// Lets the stage begin at an instant inside it, from the target that applied until then.
void beginAt(ScheduledStage& scheduled, Instant at, Temperature heldUntilThen)
{
    scheduled.start = at;
    if (scheduled.stage.kind == StageKind::ramp)
        scheduled.startTarget = heldUntilThen;
    if (scheduled.end)
        scheduled.stage.length = Hours{*scheduled.end - at};
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
    std::erase_if(old, [&](const ScheduledStage& scheduled) { return scheduled.start >= at; });
    std::erase_if(fresh, [&](const ScheduledStage& scheduled) {
        return scheduled.end && *scheduled.end <= at;
    });
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
    std::vector<ScheduledStage> scheduled;
    Instant start = pitched;
    Temperature before;
    for (const Stage& stage : schedule) {
        ScheduledStage next{stage, start, plannedEnd(stage, start),
                            stage.kind == StageKind::ramp ? before : stage.target};
        const auto ended = std::upper_bound(stageEnds.begin(), stageEnds.end(), start);
        if (ended != stageEnds.end() && (!next.end || *ended < *next.end))
            cutAt(next, *ended);
        scheduled.push_back(next);
        if (!next.end)
            break;
        start = *next.end;
        before = next.stage.target;
    }
    return scheduled;
}

std::vector<ScheduledStage> stagesInForce(const Batch& batch)
{
    std::vector<ScheduledStage> scheduled = layOut(batch.schedule, batch.pitched, batch.stageEnds);
    for (const PlanChange& change : batch.planChanges)
        scheduled = changedAt(std::move(scheduled),
                              layOut(change.schedule, batch.pitched, batch.stageEnds), change.from);
    return scheduled;
}

Schedule scheduleInForce(const Batch& batch)
{
    Schedule schedule;
    for (ScheduledStage& scheduled : stagesInForce(batch)) {
        if (!scheduled.end)
            scheduled.stage.length.reset();
        schedule.push_back(std::move(scheduled.stage));
    }
    return schedule;
}

std::optional<Temperature> targetAt(const std::vector<ScheduledStage>& scheduled, Instant at)
{
    for (const ScheduledStage& stage : scheduled) {
        if (stage.start <= at && (!stage.end || at < *stage.end))
            return targetOf(stage, at);
    }
    return std::nullopt;
}

} // namespace holdband
