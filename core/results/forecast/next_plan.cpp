#include "core/results/forecast/next_plan.h"

#include "core/model/plan_in_force.h"
#include "core/store/records/batches.h"
#include "core/store/records/plan_check.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::results {

namespace {

/// Gives every stage hours, as a plan needs them that nobody ends by hand.
Done giveLengths(Schedule& schedule, PlacedPlan& placed)
{
    for (std::size_t i = 0; i < schedule.size(); ++i) {
        Stage& stage = schedule[i];
        stage.until = StageUntil::hours;
        stage.untilGravity.reset();
        if (stage.length)
            continue;
        if (i + 1 < schedule.size())
            return dataProblem(
                Phrase::tr("the stage \"%1\" doesn't say how long it is").with(stage.label), {},
                Phrase::tr("give it an expected length"));
        stage.length = usualLastStage;
        placed.lastLengthAssumed = true;
    }
    return {};
}

bool everyStageHasATolerance(const Schedule& schedule)
{
    return std::all_of(schedule.begin(), schedule.end(),
                       [](const Stage& stage) { return stage.tolerance.has_value(); });
}

Milliseconds lengthOf(const Schedule& schedule)
{
    Milliseconds sum{0};
    for (const Stage& stage : schedule)
        sum += toMilliseconds(*stage.length);
    return sum;
}

} // namespace

Result<NextPlan> planNamed(const store::LogbookFile& logbook, const std::string& name)
{
    auto plans = store::readPlans(logbook);
    HOLDBAND_TRY(plans);
    std::vector<std::string> known;
    for (const NamedPlan& plan : *plans) {
        if (plan.name == name)
            return NextPlan{plan.name, plan.schedule, plan.tolerance, {}, {}, {}};
        known.push_back(plan.name);
    }
    return dataProblem(Phrase::tr("no plan is called \"%1\"").with(name), {},
                       suggestion(name, known));
}

Result<NextPlan> planLike(const store::LogbookFile& logbook, const std::string& name)
{
    auto batch = store::readBatch(logbook, name);
    HOLDBAND_TRY(batch);
    return planOf(*batch);
}

NextPlan planOf(const Batch& batch)
{
    NextPlan plan{batch.name,   scheduleInForce(batch), batch.tolerance,
                  batch.volume, batch.originalGravity,  batch.finalGravity};
    if (!batch.ended || plan.schedule.empty())
        return plan;
    const std::vector<ScheduledStage> stages = stagesInForce(batch);
    std::size_t ran = 0;
    while (ran < stages.size() && stages[ran].start < *batch.ended)
        ++ran;
    plan.schedule.resize(std::max<std::size_t>(1, std::min(ran, plan.schedule.size())));
    const ScheduledStage& last = stages[plan.schedule.size() - 1];
    plan.schedule.back().length = Hours{hoursBetween(last.start, *batch.ended)};
    return plan;
}

std::vector<analysis::PlacedStage> PlacedPlan::at(Instant start) const
{
    std::vector<analysis::PlacedStage> moved = stages;
    const Milliseconds shift = start - stages.front().span.start;
    for (analysis::PlacedStage& stage : moved)
        stage.span = {stage.span.start + shift, stage.span.end + shift};
    return moved;
}

Result<PlacedPlan> placedPlan(const NextPlan& plan, Instant start)
{
    PlacedPlan placed;
    Batch batch;
    batch.schedule = plan.schedule;
    batch.pitched = start;
    batch.tolerance = plan.tolerance;
    if (!plan.tolerance && !everyStageHasATolerance(plan.schedule)) {
        batch.tolerance = usualTolerance;
        placed.toleranceAssumed = true;
    }
    HOLDBAND_TRY(giveLengths(batch.schedule, placed));
    HOLDBAND_TRY(checkPlan(batch));
    batch.ended = start + lengthOf(batch.schedule);
    placed.stages = analysis::placeStages(batch, *batch.ended);
    return placed;
}

} // namespace holdband::results
