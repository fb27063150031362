// Writes batches, their plans and the changes while they ran, and named plans.
#include "core/exchange/description_json.h"
#include "core/model/names.h"

namespace holdband::exchange {

namespace {

Json stageJson(const Stage& stage)
{
    Json json;
    json["stage"] = stage.label;
    json["kind"] = nameOf(stage.kind);
    json["target_c"] = stage.target.celsius();
    put(json, "hours", stage.length);
    put(json, "tolerance_c", stage.tolerance);
    put(json, "settle_hours", stage.settleAllowed);
    if (stage.until != StageUntil::hours)
        json["until"] = nameOf(stage.until);
    if (stage.untilGravity)
        json["until_gravity"] = stage.untilGravity->specific();
    return json;
}

void putSchedule(Json& json, const Schedule& schedule)
{
    for (const Stage& stage : schedule)
        json["schedule"].push_back(stageJson(stage));
}

Json forecastJson(const BatchForecast& forecast)
{
    Json json;
    json["made"] = rfc3339Utc(forecast.made);
    json["kwh"] = forecast.energy.value;
    json["kwh_low"] = forecast.energy.low;
    json["kwh_high"] = forecast.energy.high;
    if (forecast.crashHours) {
        json["crash_h"] = forecast.crashHours->value;
        json["crash_h_low"] = forecast.crashHours->low;
        json["crash_h_high"] = forecast.crashHours->high;
    }
    if (forecast.room)
        json["room_c"] = forecast.room->celsius();
    return json;
}

/// Writes what happened to the batch's plan, sensors and vessels while it ran.
void putCourse(Json& json, const Batch& batch)
{
    putText(json, "vessel", batch.vessel);
    put(json, "split_from", batch.splitFrom);
    if (batch.forecast)
        json["forecast"] = forecastJson(*batch.forecast);
    for (const PlanChange& change : batch.planChanges) {
        Json item;
        item["from"] = rfc3339Utc(change.from);
        putText(item, "why", change.why);
        putSchedule(item, change.schedule);
        json["plan_changes"].push_back(std::move(item));
    }
    for (const Instant at : batch.stageEnds)
        json["stage_ends"].push_back(rfc3339Utc(at));
    for (const BeerUse& use : batch.beerUses) {
        Json item{{"from", rfc3339Utc(use.from)}, {"sensor", use.sensor}};
        putText(item, "vessel", use.vessel);
        json["beer_uses"].push_back(std::move(item));
    }
}

Json batchJson(const Batch& batch)
{
    Json json;
    json["name"] = batch.name;
    json["setup"] = batch.setup;
    if (batch.volume)
        json["volume_l"] = batch.volume->litres();
    json["pitched"] = rfc3339Utc(batch.pitched);
    put(json, "ended", batch.ended);
    json["beer_sensor"] = batch.beerSensor;
    put(json, "ambient_sensor", batch.ambientSensor);
    put(json, "tolerance_c", batch.tolerance);
    if (batch.gapLimit)
        json["gap_limit_min"] = minutesOf(*batch.gapLimit);
    json["grace_min"] = minutesOf(batch.ignoreShorterThan);
    json["dwell_min"] = minutesOf(batch.bandTimes.dwell);
    json["return_min"] = minutesOf(batch.bandTimes.returnTime);
    if (batch.originalGravity)
        json["original_gravity"] = batch.originalGravity->specific();
    if (batch.finalGravity)
        json["final_gravity"] = batch.finalGravity->specific();
    putSchedule(json, batch.schedule);
    putCourse(json, batch);
    return json;
}

Json causeJson(const ExcursionCause& cause)
{
    Json json{{"from", rfc3339Utc(cause.span.start)},
              {"to", rfc3339Utc(cause.span.end)},
              {"side", nameOf(cause.side)}};
    if (cause.cause)
        json["cause"] = nameOf(*cause.cause);
    putText(json, "note", cause.note);
    return json;
}

} // namespace

Json batchWithCauses(const Batch& batch, const Description& description)
{
    Json json = batchJson(batch);
    for (const DescribedCause& described : description.causes) {
        if (described.batch == batch.name)
            json["causes"].push_back(causeJson(described.cause));
    }
    return json;
}

Json planJson(const NamedPlan& plan)
{
    Json json;
    json["name"] = plan.name;
    putText(json, "note", plan.note);
    put(json, "tolerance_c", plan.tolerance);
    putSchedule(json, plan.schedule);
    return json;
}

} // namespace holdband::exchange
