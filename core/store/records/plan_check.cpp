#include "core/store/records/plan_check.h"

#include "core/text/phrase.h"
#include "core/text/places.h"

namespace holdband {

namespace {

constexpr double longestHours = 10.0 * 366.0 * 24.0;
constexpr double coldestTarget = -50.0; ///< °C: beyond, a unit or a digit is wrong
constexpr double hottestTarget = 100.0; ///< °C

std::string placeOf(const Batch& batch, const Stage& stage, std::size_t index)
{
    return batchPlace(batch.name) + ", " +
           Phrase::tr("stage %1 (%2)").with(std::to_string(index + 1), stage.label);
}

Done checkLengths(const Batch& batch, const Stage& stage, std::size_t index)
{
    const std::string place = placeOf(batch, stage, index);
    const bool last = index + 1 == batch.schedule.size();
    if (!stage.length && !last && stage.until == StageUntil::hours)
        return dataProblem(Phrase::tr("only the last stage may be without hours"), place,
                           Phrase::tr("give its hours, or let it last until you turn it down"));
    if (stage.until != StageUntil::hours && stage.kind == StageKind::ramp)
        return dataProblem(Phrase::tr("a ramp ends by its hours"), place,
                           Phrase::tr("give its hours"));
    if (!stage.length && stage.kind == StageKind::ramp)
        return dataProblem(Phrase::tr("a ramp needs hours"), place, Phrase::tr("give its hours"));
    if (stage.length && !(stage.length->count() > 0.0 && stage.length->count() <= longestHours))
        return dataProblem(Phrase::tr("the hours must be above 0 and below ten years"), place);
    if (stage.settleAllowed &&
        !(stage.settleAllowed->count() >= 0.0 && stage.settleAllowed->count() <= longestHours))
        return dataProblem(
            Phrase::tr("the settling allowed must be 0 hours or more, and below ten years"), place);
    return {};
}

Done checkStage(const Batch& batch, std::size_t index)
{
    const Stage& stage = batch.schedule[index];
    const std::string place = placeOf(batch, stage, index);
    if (index == 0 && stage.kind == StageKind::ramp)
        return dataProblem(Phrase::tr("a ramp needs a stage before it"), place,
                           Phrase::tr("begin with a hold"));
    if (!stage.tolerance && !batch.tolerance)
        return dataProblem(Phrase::tr("neither the stage nor the batch has a tolerance"), place,
                           Phrase::tr("give the batch one, such as 3 °F"));
    const TemperatureDifference tolerance = stage.tolerance ? *stage.tolerance : *batch.tolerance;
    if (!(tolerance.kelvins() > 0.0))
        return dataProblem(Phrase::tr("the tolerance must be above 0"), place);
    const double target = stage.target.celsius();
    if (!(target >= coldestTarget && target <= hottestTarget))
        return dataProblem(Phrase::tr("the target must be within -50 … 100 °C"), place,
                           Phrase::tr("check the number and its unit"));
    return checkLengths(batch, stage, index);
}

} // namespace

Done checkPlan(const Batch& batch)
{
    const std::string place = batchPlace(batch.name);
    if (batch.schedule.empty())
        return dataProblem(Phrase::tr("the schedule has no stage"), place,
                           Phrase::tr("give at least one"));
    if (batch.ended && *batch.ended <= batch.pitched)
        return dataProblem(Phrase::tr("the batch ends before it is pitched"), place,
                           Phrase::tr("check both times and their zone"));
    if (batch.gapLimit && batch.gapLimit->count() <= 0)
        return dataProblem(Phrase::tr("the gap limit must be above 0 minutes"), place);
    if (batch.ignoreShorterThan.count() < 0)
        return dataProblem(
            Phrase::tr("the time below which excursions are ignored must be 0 minutes or more"),
            place);
    if (batch.bandTimes.dwell.count() < 0 || batch.bandTimes.returnTime.count() < 0)
        return dataProblem(Phrase::tr("the time inside after which the beer is settled, or an "
                                      "excursion ends, must be 0 minutes or more"),
                           place);
    for (std::size_t i = 0; i < batch.schedule.size(); ++i) {
        if (Done checked = checkStage(batch, i); !checked)
            return checked;
    }
    return {};
}

} // namespace holdband
