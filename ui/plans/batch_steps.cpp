#include "ui/plans/batch_steps.h"

#include "core/model/plan_in_force.h"
#include "core/text/phrase.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/words/words.h"

#include <algorithm>

namespace holdband::ui {

namespace {

QString timeWords(Instant at, const UnitFormat& format)
{
    return shown(localShortText(at, format.zone));
}

QString targetWords(const Stage& stage, const UnitFormat& format)
{
    const QString target =
        shown(temperatureText(stage.target, format.temperature(), 1, format.sign));
    return stage.kind == StageKind::ramp ? Words::tr("ramp to %1").arg(target)
                                         : Words::tr("hold at %1").arg(target);
}

Done notAhead(Instant at, Instant now)
{
    if (at > now)
        return dataProblem(Phrase::tr("that time is still to come"), {},
                           Phrase::tr("type the time it was done"));
    return {};
}

const ScheduledStage* inProgress(const std::vector<ScheduledStage>& scheduled, Instant at)
{
    const auto found =
        std::find_if(scheduled.begin(), scheduled.end(), [&](const ScheduledStage& stage) {
            return stage.start <= at && (!stage.end || at < *stage.end);
        });
    return found == scheduled.end() ? nullptr : &*found;
}

const ScheduledStage* beginningAt(const std::vector<ScheduledStage>& scheduled, Instant at)
{
    const auto found = std::find_if(scheduled.begin(), scheduled.end(),
                                    [&](const ScheduledStage& stage) { return stage.start == at; });
    return found == scheduled.end() ? nullptr : &*found;
}

Done mayEndStage(const Batch& batch, Instant at, Instant now)
{
    HOLDBAND_TRY(notAhead(at, now));
    if (batch.ended && at >= *batch.ended)
        return dataProblem(Phrase::tr("%1 has ended by then").with(batch.name));
    if (at <= batch.pitched)
        return dataProblem(Phrase::tr("%1 is not pitched by then").with(batch.name));
    if (!batch.stageEnds.empty() && at <= batch.stageEnds.back())
        return dataProblem(Phrase::tr("the stage before was ended later than that"));
    return {};
}

} // namespace

Result<Step> pitchStep(const Batch& batch, Instant at, Instant now, const UnitFormat& format)
{
    HOLDBAND_TRY(notAhead(at, now));
    if (batch.ended && at >= *batch.ended)
        return dataProblem(Phrase::tr("%1 would end before it is pitched").with(batch.name));
    Step step{batch, {}, {store::HistoryVerb::batchPitched, {batch.name}}};
    step.batch.pitched = at;
    step.words = Words::tr("%1 is pitched at %2.").arg(shown(batch.name), timeWords(at, format));
    if (!batch.schedule.empty())
        step.words += Words::tr(" %1 begins: %2.")
                          .arg(shown(batch.schedule.front().label),
                               targetWords(batch.schedule.front(), format));
    return step;
}

Result<Step> stageEndStep(const Batch& batch, Instant at, Instant now, const UnitFormat& format)
{
    HOLDBAND_TRY(mayEndStage(batch, at, now));
    const std::vector<ScheduledStage> before = stagesInForce(batch);
    const ScheduledStage* current = inProgress(before, at);
    if (!current)
        return dataProblem(Phrase::tr("no stage of %1 is in progress then").with(batch.name), {},
                           Phrase::tr("its plan is over: add a stage to it, or end the batch"));
    Step step{batch, {}, {}};
    step.batch.stageEnds.push_back(at);
    const std::vector<ScheduledStage> after = stagesInForce(step.batch);
    const ScheduledStage* next = beginningAt(after, at);
    if (!next)
        return dataProblem(
            Phrase::tr("%1 is the last stage of the plan").with(current->stage.label), {},
            Phrase::tr("add a stage to the plan, or end the batch"));
    const QString label = shown(current->stage.label);
    step.words = Words::tr("%1 ends at %2. %3 begins: %4.")
                     .arg(label, timeWords(at, format), shown(next->stage.label),
                          targetWords(next->stage, format));
    step.entry = {store::HistoryVerb::stageEnded, {batch.name, current->stage.label}};
    return step;
}

Result<Step> batchEndStep(const Batch& batch, Instant at, Instant now, const UnitFormat& format)
{
    HOLDBAND_TRY(notAhead(at, now));
    if (batch.ended)
        return dataProblem(Phrase::tr("%1 has ended already").with(batch.name), {},
                           Phrase::tr("change its end in its details"));
    if (at <= batch.pitched)
        return dataProblem(Phrase::tr("the batch would end before it is pitched"));
    Step step{batch, {}, {store::HistoryVerb::batchEnded, {batch.name}}};
    step.batch.ended = at;
    step.words = Words::tr("%1 ends at %2.").arg(shown(batch.name), timeWords(at, format));
    const auto scheduled = stagesInForce(batch);
    if (const ScheduledStage* current = inProgress(scheduled, at))
        step.words += Words::tr(" %1 is its last stage.").arg(shown(current->stage.label));
    return step;
}

Result<Step> reopenStep(const Batch& batch, const UnitFormat& format)
{
    if (!batch.ended)
        return dataProblem(Phrase::tr("%1 has not ended").with(batch.name));
    Step step{batch, {}, {store::HistoryVerb::batchReopened, {batch.name}}};
    step.batch.ended.reset();
    step.words = Words::tr("%1 is open again: its end at %2 was removed.")
                     .arg(shown(batch.name), timeWords(*batch.ended, format));
    return step;
}

PlanValue latestPlan(const Batch& batch)
{
    return {batch.planChanges.empty() ? batch.schedule : batch.planChanges.back().schedule,
            batch.tolerance};
}

Batch withPlanFrom(Batch batch, const PlanValue& plan, Instant from, const std::string& why)
{
    if (from <= batch.pitched)
        return withPlanInstead(std::move(batch), plan);
    std::erase_if(batch.planChanges, [&](const PlanChange& change) { return change.from >= from; });
    PlanChange change{from, why, plan.schedule};
    if (plan.tolerance != batch.tolerance) {
        for (Stage& stage : change.schedule) {
            if (!stage.tolerance)
                stage.tolerance = plan.tolerance;
        }
    }
    batch.planChanges.push_back(std::move(change));
    return batch;
}

Batch withPlanInstead(Batch batch, const PlanValue& plan)
{
    batch.schedule = plan.schedule;
    batch.tolerance = plan.tolerance;
    batch.planChanges.clear();
    return batch;
}

} // namespace holdband::ui
