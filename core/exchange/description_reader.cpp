// Reads a description. One function for each kind of object in it.
#include "core/exchange/day_names.h"
#include "core/exchange/description.h"
#include "core/exchange/json_document.h"
#include "core/exchange/json_fields.h"
#include "core/logbook/names.h"
#include "core/logbook/plan_check.h"
#include "core/text/numbers.h"
#include "core/text/times.h"

#include <algorithm>
#include <functional>

namespace holdband::exchange {

namespace {

constexpr double many = 1e9;

template <typename Choice>
std::optional<Choice> choice(Fields& fields, const char* key)
{
    const auto text = fields.text(key);
    if (!text)
        return std::nullopt;
    const auto found = choiceNamed<Choice>(*text);
    if (!found)
        fields.fail(key, "\"" + *text + "\" is none of " + choicesText<Choice>());
    return found;
}

int minuteOfDay(Fields& fields, const char* key)
{
    const std::string text = fields.requiredText(key);
    int hour = -1;
    int minute = -1;
    if (text.size() == 5 && text[2] == ':') {
        const auto digits = [&](std::size_t at) {
            const auto number = scanDecimal(text.substr(at, 2));
            return number ? static_cast<int>(number->value) : -1;
        };
        hour = digits(0);
        minute = digits(3);
    }
    const bool valid = hour >= 0 && minute >= 0 && minute < 60 && hour * 60 + minute <= 1440;
    if (!valid)
        fields.fail(key, "\"" + text + "\" is no time of day", "write it as 16:00");
    return valid ? hour * 60 + minute : 0;
}

std::array<bool, 7> weekdays(Fields& fields)
{
    std::array<bool, 7> days{true, true, true, true, true, true, true};
    const Json* list = fields.raw("days");
    if (!list)
        return days;
    days.fill(false);
    if (!list->is_array())
        fields.fail("days", "here must stand a list of mon, tue, wed, thu, fri, sat, sun");
    if (!list->is_array())
        return days;
    for (const Json& item : *list) {
        const std::string name = item.is_string() ? item.get<std::string>() : "";
        const auto found = std::find(dayNames.begin(), dayNames.end(), name);
        if (found == dayNames.end())
            fields.fail("days", "\"" + name + "\" is none of mon, tue, wed, thu, fri, sat, sun");
        else
            days[static_cast<std::size_t>(found - dayNames.begin())] = true;
    }
    return days;
}

TariffWindow readWindow(Fields fields)
{
    TariffWindow window;
    window.days = weekdays(fields);
    window.fromMinute = minuteOfDay(fields, "from");
    window.toMinute = minuteOfDay(fields, "to");
    window.pricePerKwh = fields.requiredNumber("price_per_kwh", -many, many);
    fields.refuseUnknown();
    return window;
}

TariffChange readTariffChange(Fields fields)
{
    TariffChange change;
    change.from = fields.requiredTime("from");
    change.tariff.pricePerKwh = fields.number("price_per_kwh", -many, many);
    for (Fields& window : fields.objects("time_of_use"))
        change.tariff.windows.push_back(readWindow(window));
    fields.refuseUnknown();
    return change;
}

RoundWindow readRound(Fields fields)
{
    RoundWindow window;
    window.label = fields.requiredText("label");
    window.fromMinute = minuteOfDay(fields, "from");
    window.toMinute = minuteOfDay(fields, "to");
    if (!fields.reading().failed() && window.toMinute <= window.fromMinute)
        fields.fail("to", "a round's window ends after it begins, on the same day");
    fields.refuseUnknown();
    return window;
}

/// In order of `from`, each once.
template <typename Value>
void checkIncreasing(Fields& fields, const char* key, const std::vector<Value>& values)
{
    const auto stuck =
        std::adjacent_find(values.begin(), values.end(),
                           [](const Value& a, const Value& b) { return a.from >= b.from; });
    if (stuck != values.end())
        fields.fail(key, "these must stand in order of their \"from\", each time once");
}

void readRounds(Fields& fields, LogbookSettings& into)
{
    if (!fields.has("rounds"))
        return;
    into.rounds.clear();
    for (Fields& round : fields.objects("rounds"))
        into.rounds.push_back(readRound(round));
    const auto stuck = std::adjacent_find(
        into.rounds.begin(), into.rounds.end(),
        [](const RoundWindow& a, const RoundWindow& b) { return a.toMinute > b.fromMinute; });
    if (into.rounds.empty() || stuck != into.rounds.end())
        fields.fail("rounds", "there must be one at least, in order of the day, not overlapping");
}

void readSettings(Fields& fields, Description& into)
{
    into.namesCurrency = fields.has("currency");
    into.namesPrice =
        fields.has("price_per_kwh") || fields.has("time_of_use") || fields.has("tariff_changes");
    into.settings.zone = fields.text("zone").value_or("UTC");
    auto zone = Zone::named(into.settings.zone);
    if (!zone)
        fields.fail("zone", zone.error().what, zone.error().remedy);
    else
        fields.reading().zone = *zone;
    into.settings.units = choice<UnitSystem>(fields, "units").value_or(UnitSystem::metric);
    into.settings.currency = fields.text("currency").value_or("");
    into.settings.tariff.pricePerKwh = fields.number("price_per_kwh", -many, many);
    for (Fields& window : fields.objects("time_of_use"))
        into.settings.tariff.windows.push_back(readWindow(window));
    for (Fields& change : fields.objects("tariff_changes"))
        into.settings.tariffChanges.push_back(readTariffChange(change));
    checkIncreasing(fields, "tariff_changes", into.settings.tariffChanges);
    readRounds(fields, into.settings);
}

Part readPart(Fields fields)
{
    Part part;
    part.item = fields.requiredText("item");
    part.quantity = fields.number("quantity", 0.0, many).value_or(1.0);
    part.price = fields.number("price", -many, many).value_or(0.0);
    fields.refuseUnknown();
    return part;
}

Setup readSetup(Fields fields)
{
    Setup setup;
    setup.name = fields.requiredText("name");
    setup.kind = fields.text("kind").value_or("");
    setup.vessels = fields.integer("vessels", 1, 1000).value_or(1);
    if (const auto watts = fields.number("rated_power_w", 0.0, many))
        setup.ratedPower = Power::watts(*watts);
    for (Fields& part : fields.objects("parts"))
        setup.parts.push_back(readPart(part));
    auto ratings = fields.object("ratings");
    const Json* all = fields.raw("ratings");
    if (ratings && all->is_object()) {
        for (const auto& [criterion, value] : all->items())
            setup.ratings[criterion] = ratings->requiredNumber(criterion.c_str(), 1.0, 5.0);
    }
    setup.retired = fields.time("retired");
    fields.refuseUnknown();
    return setup;
}

Offset readOffset(Fields fields)
{
    Offset offset;
    offset.from = fields.requiredTime("from");
    const auto add = fields.difference("add", -1000.0);
    if (!add)
        fields.fail("add_c", "the key is missing", "give add_c or add_f");
    offset.add = add.value_or(TemperatureDifference{});
    offset.doubt = fields.difference("doubt", 0.0);
    offset.why = fields.text("why").value_or("");
    fields.refuseUnknown();
    return offset;
}

Sensor readSensor(Fields fields)
{
    Sensor sensor;
    sensor.name = fields.requiredText("name");
    if (!fields.has("reads"))
        fields.fail("reads", "the key is missing", "it is one of " + choicesText<Reads>());
    sensor.reads = choice<Reads>(fields, "reads").value_or(Reads::beer);
    sensor.setup = fields.text("setup");
    sensor.accuracy = fields.difference("accuracy", 0.0);
    sensor.placement = fields.text("placement").value_or("");
    sensor.readByHand = fields.flag("read_by_hand").value_or(false);
    sensor.retired = fields.time("retired");
    for (Fields& offset : fields.objects("offsets"))
        sensor.offsets.push_back(readOffset(offset));
    std::sort(sensor.offsets.begin(), sensor.offsets.end(),
              [](const Offset& a, const Offset& b) { return a.from < b.from; });
    const auto twice =
        std::adjacent_find(sensor.offsets.begin(), sensor.offsets.end(),
                           [](const Offset& a, const Offset& b) { return a.from == b.from; });
    if (twice != sensor.offsets.end())
        fields.fail("offsets", "two offsets begin at the same time", "keep one");
    fields.refuseUnknown();
    return sensor;
}

MeterMove readMove(Fields fields)
{
    MeterMove move{fields.requiredTime("from"), fields.text("setup")};
    fields.refuseUnknown();
    return move;
}

Meter readMeter(Fields fields)
{
    Meter meter;
    meter.name = fields.requiredText("name");
    meter.setup = fields.requiredText("setup");
    if (const auto kwh = fields.number("resolution_kwh", 0.0, many))
        meter.resolution = Energy::kilowattHours(*kwh);
    if (const auto kwh = fields.number("rolls_over_at_kwh", 1e-6, many))
        meter.rollsOverAt = Energy::kilowattHours(*kwh);
    if (const auto percent = fields.number("accuracy_pct", 0.0, 100.0))
        meter.accuracy = *percent / 100.0;
    meter.from = fields.time("from");
    meter.to = fields.time("to");
    if (meter.from && meter.to && *meter.to <= *meter.from)
        fields.fail("to", "the service ends before it begins");
    for (Fields& move : fields.objects("moves"))
        meter.moves.push_back(readMove(move));
    checkIncreasing(fields, "moves", meter.moves);
    meter.retired = fields.time("retired");
    fields.refuseUnknown();
    return meter;
}

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
        fields.fail("volume_gal", "the volume is given twice, in litres and in gallons",
                    "give it once");
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

void readCourse(Fields& fields, Batch& into)
{
    into.vessel = fields.text("vessel").value_or("");
    into.splitFrom = fields.text("split_from");
    for (Fields& change : fields.objects("plan_changes"))
        into.planChanges.push_back(readPlanChange(change));
    checkIncreasing(fields, "plan_changes", into.planChanges);
    into.stageEnds = fields.times("stage_ends");
    if (std::adjacent_find(into.stageEnds.begin(), into.stageEnds.end(), std::greater_equal<>()) !=
        into.stageEnds.end())
        fields.fail("stage_ends", "these must stand in order of time, each once");
    for (Fields& use : fields.objects("beer_uses"))
        into.beerUses.push_back(readUse(use));
    checkIncreasing(fields, "beer_uses", into.beerUses);
}

Batch readBatch(Fields fields)
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
    batch.grace = fields.minutes("grace_min").value_or(Milliseconds{0});
    batch.originalGravity = readGravity(fields, "original_gravity");
    batch.finalGravity = readGravity(fields, "final_gravity");
    if (!fields.has("schedule"))
        fields.fail("schedule", "the key is missing");
    for (Fields& stage : fields.objects("schedule"))
        batch.schedule.push_back(readStage(stage));
    readCourse(fields, batch);
    fields.refuseUnknown();
    checkPlanOf(fields, batch);
    return batch;
}

using TextMap = std::map<std::string, std::string>;

TextMap readTexts(Fields& fields, const char* key)
{
    TextMap texts;
    auto object = fields.object(key);
    const Json* all = fields.raw(key);
    if (!object || !all->is_object())
        return texts;
    for (const auto& [name, value] : all->items())
        texts[name] = object->requiredText(name.c_str());
    return texts;
}

void readLines(Fields& origin, FileOrigin& into)
{
    const Json* all = origin.raw("lines");
    if (!all || !all->is_object())
        return;
    for (const auto& [sensor, runs] : all->items()) {
        for (const Json& run : runs) {
            const bool shaped = run.is_array() && run.size() == 2 && run[0].is_string() &&
                                run[1].is_number_integer();
            const auto at = shaped ? parseTime(run[0].get<std::string>(), origin.reading().zone)
                                   : Result<Instant>(dataProblem("not a time and a line"));
            if (!at)
                return origin.fail("lines." + sensor, at.error().what);
            into.lines[sensor].emplace_back(*at, run[1].get<std::int64_t>());
        }
    }
}

FileOrigin readOrigin(Fields fields)
{
    FileOrigin origin;
    origin.file = fields.requiredText("file");
    origin.sha256 = fields.requiredText("sha256");
    origin.rowsRead = static_cast<std::int64_t>(fields.requiredNumber("rows", 0.0, 1e15));
    origin.headers = readTexts(fields, "headers");
    readLines(fields, origin);
    fields.refuseUnknown();
    return origin;
}

std::optional<DateOrder> readDateOrder(Fields& fields)
{
    const auto name = fields.text("date_order");
    if (!name)
        return std::nullopt;
    for (const auto& [order, known] : dateOrderNames) {
        if (*name == known)
            return order;
    }
    fields.fail("date_order", "\"" + *name + "\" is none of ymd, mdy, dmy");
    return std::nullopt;
}

FileEntry readFile(Fields fields)
{
    FileEntry file;
    file.file = fields.requiredText("file");
    file.time = fields.text("time");
    file.zone = fields.text("zone");
    if (const auto unit = fields.text("unit")) {
        if (*unit == "f")
            file.unit = TemperatureUnit::fahrenheit;
        else if (*unit == "c")
            file.unit = TemperatureUnit::celsius;
        else
            fields.fail("unit", "\"" + *unit + "\" is none of f, c");
    }
    file.dateOrder = readDateOrder(fields);
    if (!fields.has("columns"))
        fields.fail("columns", "the key is missing");
    file.columns = readTexts(fields, "columns");
    if (auto origin = fields.object("origin"))
        file.origin = readOrigin(*origin);
    fields.refuseUnknown();
    return file;
}

store::Replaced readReplaced(Fields fields)
{
    store::Replaced before;
    before.kwh = fields.requiredNumber("kwh", 0.0, many);
    before.decimals =
        fields.integer("decimals", 0, mostDecimals).value_or(fields.decimalsOf("kwh").value_or(0));
    before.until = fields.requiredTime("until");
    before.why = fields.text("why").value_or("");
    fields.refuseUnknown();
    return before;
}

DescribedReading readMeterReading(Fields fields)
{
    DescribedReading reading;
    reading.meter = fields.requiredText("meter");
    reading.inForce.at = fields.requiredTime("at");
    reading.inForce.registerReading =
        Energy::kilowattHours(fields.requiredNumber("kwh", 0.0, many));
    reading.inForce.decimals =
        fields.integer("decimals", 0, mostDecimals).value_or(fields.decimalsOf("kwh").value_or(0));
    reading.inForce.event = choice<MeterEvent>(fields, "event");
    reading.inForce.note = fields.text("note").value_or("");
    for (Fields& before : fields.objects("was"))
        reading.before.push_back(readReplaced(before));
    fields.refuseUnknown();
    return reading;
}

store::Exclusion readExclusion(Fields fields)
{
    store::Exclusion exclusion;
    exclusion.sensor = fields.requiredText("sensor");
    exclusion.span = {fields.requiredTime("from"), fields.requiredTime("to")};
    exclusion.why = fields.text("why").value_or("");
    if (exclusion.span.end < exclusion.span.start)
        fields.fail("to", "the stretch ends before it begins");
    fields.refuseUnknown();
    return exclusion;
}

JournalNote readNote(Fields fields)
{
    JournalNote note;
    note.at = fields.requiredTime("at");
    note.batch = fields.text("batch");
    note.text = fields.requiredText("text");
    fields.refuseUnknown();
    return note;
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

int decimalsOfValue(Fields& fields)
{
    return fields.integer("decimals", 0, mostDecimals)
        .value_or(fields.decimalsOf("value").value_or(0));
}

store::ReplacedHandReading readReplacedByHand(Fields fields)
{
    store::ReplacedHandReading before;
    before.value = fields.requiredNumber("value", -many, many);
    before.decimals = decimalsOfValue(fields);
    before.until = fields.requiredTime("until");
    before.why = fields.text("why").value_or("");
    fields.refuseUnknown();
    return before;
}

DescribedHandReading readHandReading(Fields fields)
{
    DescribedHandReading reading;
    const auto sensor = fields.text("sensor");
    const auto batch = fields.text("batch");
    if (sensor.has_value() == batch.has_value())
        fields.fail("sensor", "either a sensor or a batch must be named");
    reading.owner = sensor ? store::HandOwner{store::HandOwner::Kind::sensor, *sensor}
                           : store::HandOwner{store::HandOwner::Kind::batch, batch.value_or("")};
    reading.inForce.at = fields.requiredTime("at");
    reading.inForce.value = fields.requiredNumber("value", -many, many);
    reading.inForce.decimals = decimalsOfValue(fields);
    reading.inForce.unit = choice<ReadingUnit>(fields, "unit").value_or(ReadingUnit::celsius);
    reading.inForce.sample = fields.temperature("sample");
    reading.inForce.note = fields.text("note").value_or("");
    for (Fields& before : fields.objects("was"))
        reading.before.push_back(readReplacedByHand(before));
    fields.refuseUnknown();
    return reading;
}

store::ValueCorrection readCorrection(Fields fields)
{
    store::ValueCorrection correction;
    correction.sensor = fields.requiredText("sensor");
    correction.at = fields.requiredTime("at");
    correction.value = fields.requiredNumber("value", -many, many);
    correction.unit = choice<ReadingUnit>(fields, "unit").value_or(ReadingUnit::celsius);
    correction.corrected = fields.requiredTime("corrected");
    correction.why = fields.text("why").value_or("");
    fields.refuseUnknown();
    return correction;
}

template <typename Value, typename Read>
void readAll(Fields& fields, const char* key, std::vector<Value>& into, Read read)
{
    for (Fields& item : fields.objects(key))
        into.push_back(read(item));
}

} // namespace

Result<Description> parseDescription(const std::string& text, const std::string& fileName)
{
    auto document = parseJson(text, fileName);
    HOLDBAND_TRY(document);
    Reading reading{fileName, Zone::utc(), std::nullopt};
    Description description;
    Fields fields(*document, "", reading);
    if (!fields.has("holdband"))
        fields.fail("", "this is no Holdband description: the key \"holdband\" is missing");
    if (fields.number("holdband", 0.0, many).value_or(1.0) != 1.0)
        fields.fail("holdband", "this description is of a newer kind than this program knows",
                    "read it with a newer Holdband");
    readSettings(fields, description);
    readAll(fields, "setups", description.setups, readSetup);
    readAll(fields, "sensors", description.sensors, readSensor);
    readAll(fields, "meters", description.meters, readMeter);
    readAll(fields, "batches", description.batches, readBatch);
    readAll(fields, "files", description.files, readFile);
    readAll(fields, "meter_readings", description.meterReadings, readMeterReading);
    readAll(fields, "exclusions", description.exclusions, readExclusion);
    readAll(fields, "journal", description.journal, readNote);
    readAll(fields, "plans", description.plans, readPlan);
    readAll(fields, "hand_readings", description.handReadings, readHandReading);
    readAll(fields, "corrections", description.corrections, readCorrection);
    fields.refuseUnknown();
    if (reading.problem)
        return failure(*reading.problem);
    return description;
}

} // namespace holdband::exchange
