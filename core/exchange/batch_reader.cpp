// Reads batches, their plans and the changes while they ran, and named plans.
#include "core/exchange/description_parts.h"
#include "core/store/records/plan_check.h"
#include "core/text/phrase.h"

#include <functional>

namespace holdband::exchange {

namespace {

std::optional<Gravity> readGravity(Fields& fields, const char* key)
{
    const auto value = fields.number(key, 0.9, 1.3);
    return value ? std::optional(Gravity::specific(*value)) : std::nullopt;
}

Stage readStage(Fields fields)
{
    Stage stage;
    stage.label = fields.requiredText("stage");
    stage.kind = choice<StageKind>(fields, "kind").value_or(StageKind::hold);
    stage.target = fields.requiredTemperature("target");
    stage.length = fields.hours("hours");
    stage.tolerance = fields.difference("tolerance", 0.0);
    stage.settleAllowed = fields.hours("settle_hours");
    stage.until = choice<StageUntil>(fields, "until").value_or(StageUntil::hours);
    stage.untilGravity = readGravity(fields, "until_gravity");
    fields.refuseUnknown();
    return stage;
}

std::optional<Volume> readVolume(Fields& fields)
{
    const auto litres = fields.number("volume_l", 0.0, many);
    const auto gallons = fields.number("volume_gal", 0.0, many);
    if (litres && gallons)
        fields.fail("volume_gal", Phrase::tr("the volume is given twice, in litres and in gallons"),
                    Phrase::tr("give it once"));
    if (litres)
        return Volume::litres(*litres);
    return gallons ? std::optional(Volume::usGallons(*gallons)) : std::nullopt;
}

void checkPlanOf(Fields& fields, const Batch& batch)
{
    if (fields.reading().failed())
        return;
    Batch planned = batch;
    Done checked = checkPlan(planned);
    for (const PlanChange& change : batch.planChanges) {
        planned.schedule = change.schedule;
        if (checked)
            checked = checkPlan(planned);
    }
    if (!checked) {
        const Problem& problem = checked.error();
        fields.reading().fail(fields.place(), problem.place + ": " + problem.what, problem.remedy);
    }
}

PlanChange readPlanChange(Fields fields)
{
    PlanChange change;
    change.from = fields.requiredTime("from");
    change.why = fields.text("why").value_or("");
    for (Fields& stage : fields.objects("schedule"))
        change.schedule.push_back(readStage(stage));
    fields.refuseUnknown();
    return change;
}

BeerUse readUse(Fields fields)
{
    BeerUse use;
    use.from = fields.requiredTime("from");
    use.sensor = fields.requiredText("sensor");
    use.vessel = fields.text("vessel").value_or("");
    fields.refuseUnknown();
    return use;
}

/// Three keys: the figure, and the ends of its range. Absent without the first.
std::optional<ForecastFigure> readForecastFigure(Fields& fields, const std::string& value,
                                                 const std::string& low, const std::string& high)
{
    constexpr double most = 1e6;
    const auto figure = fields.number(value.c_str(), 0.0, most);
    const auto least = fields.number(low.c_str(), 0.0, most);
    const auto greatest = fields.number(high.c_str(), 0.0, most);
    if (!figure)
        return std::nullopt;
    const ForecastFigure read{*figure, least.value_or(*figure), greatest.value_or(*figure)};
    if (read.low > read.value || read.high < read.value)
        fields.fail(value, Phrase::tr("the figure is outside its own range"));
    return read;
}

BatchForecast readForecast(Fields fields)
{
    BatchForecast forecast;
    forecast.made = fields.requiredTime("made");
    const auto energy = readForecastFigure(fields, "kwh", "kwh_low", "kwh_high");
    if (!energy)
        fields.fail("kwh", Phrase::tr("the key is missing"));
    forecast.energy = energy.value_or(ForecastFigure{});
    forecast.crashHours = readForecastFigure(fields, "crash_h", "crash_h_low", "crash_h_high");
    forecast.room = fields.temperature("room");
    fields.refuseUnknown();
    return forecast;
}

void readCourse(Fields& fields, Batch& into)
{
    if (auto forecast = fields.object("forecast"))
        into.forecast = readForecast(*forecast);
    into.vessel = fields.text("vessel").value_or("");
    into.splitFrom = fields.text("split_from");
    for (Fields& change : fields.objects("plan_changes"))
        into.planChanges.push_back(readPlanChange(change));
    checkIncreasing(fields, "plan_changes", into.planChanges);
    into.stageEnds = fields.times("stage_ends");
    if (std::adjacent_find(into.stageEnds.begin(), into.stageEnds.end(), std::greater_equal<>()) !=
        into.stageEnds.end())
        fields.fail("stage_ends", Phrase::tr("these must be in order of time, each once"));
    for (Fields& use : fields.objects("beer_uses"))
        into.beerUses.push_back(readUse(use));
    checkIncreasing(fields, "beer_uses", into.beerUses);
}

ExcursionCause readCause(Fields fields)
{
    ExcursionCause cause;
    cause.span = {fields.requiredTime("from"), fields.requiredTime("to")};
    if (cause.span.end < cause.span.start)
        fields.fail("to", Phrase::tr("the excursion ends before it begins"));
    const auto side = choice<Side>(fields, "side");
    if (!side)
        fields.fail("side", Phrase::tr("the key is missing"));
    cause.side = side.value_or(Side::above);
    cause.cause = choice<Cause>(fields, "cause");
    cause.note = fields.text("note").value_or("");
    if (!cause.cause && cause.note.empty())
        fields.fail("cause", Phrase::tr("there is neither a cause nor a note"));
    fields.refuseUnknown();
    return cause;
}

} // namespace

void readBatch(Fields fields, Description& into)
{
    Batch batch;
    batch.name = fields.requiredText("name");
    batch.setup = fields.requiredText("setup");
    batch.volume = readVolume(fields);
    batch.pitched = fields.requiredTime("pitched");
    batch.ended = fields.time("ended");
    batch.beerSensor = fields.requiredText("beer_sensor");
    batch.ambientSensor = fields.text("ambient_sensor");
    batch.tolerance = fields.difference("tolerance", 0.0);
    batch.gapLimit = fields.minutes("gap_limit_min");
    batch.ignoreShorterThan = fields.minutes("grace_min").value_or(Milliseconds{0});
    batch.bandTimes.dwell = fields.minutes("dwell_min").value_or(batch.bandTimes.dwell);
    batch.bandTimes.returnTime = fields.minutes("return_min").value_or(batch.bandTimes.returnTime);
    batch.originalGravity = readGravity(fields, "original_gravity");
    batch.finalGravity = readGravity(fields, "final_gravity");
    if (!fields.has("schedule"))
        fields.fail("schedule", Phrase::tr("the key is missing"));
    for (Fields& stage : fields.objects("schedule"))
        batch.schedule.push_back(readStage(stage));
    readCourse(fields, batch);
    for (Fields& cause : fields.objects("causes"))
        into.causes.push_back({batch.name, readCause(cause)});
    fields.refuseUnknown();
    checkPlanOf(fields, batch);
    into.batches.push_back(std::move(batch));
}

NamedPlan readPlan(Fields fields)
{
    NamedPlan plan;
    plan.name = fields.requiredText("name");
    plan.note = fields.text("note").value_or("");
    plan.tolerance = fields.difference("tolerance", 0.0);
    for (Fields& stage : fields.objects("schedule"))
        plan.schedule.push_back(readStage(stage));
    fields.refuseUnknown();
    return plan;
}

} // namespace holdband::exchange
