// Writes a description. One function for each kind of object in it, as in the reader.
#include "core/exchange/day_names.h"
#include "core/exchange/description.h"
#include "core/exchange/json_fields.h"
#include "core/model/names.h"
#include "core/text/numbers.h"
#include "core/text/times.h"

#include <cmath>

namespace holdband::exchange {

namespace {

template <typename Value>
void put(Json& object, const char* key, const std::optional<Value>& value)
{
    if (value)
        object[key] = *value;
}

void put(Json& object, const char* key, const std::optional<Instant>& at)
{
    if (at)
        object[key] = rfc3339Utc(*at);
}

void put(Json& object, const char* key, const std::optional<TemperatureDifference>& difference)
{
    if (difference)
        object[key] = difference->kelvins();
}

void put(Json& object, const char* key, const std::optional<Energy>& energy)
{
    if (energy)
        object[key] = energy->kilowattHours();
}

void put(Json& object, const char* key, const std::optional<Hours>& hours)
{
    if (hours)
        object[key] = hours->count();
}

void putText(Json& object, const char* key, const std::string& text)
{
    if (!text.empty())
        object[key] = text;
}

/// Percent from a fraction, without the rounding error of the multiplication.
double percentOf(double fraction)
{
    constexpr double places = 1e10;
    return std::round(fraction * 100.0 * places) / places;
}

std::string clockOf(int minute)
{
    const auto two = [](int number) {
        return std::string(number < 10 ? "0" : "") + std::to_string(number);
    };
    return two(minute / 60) + ":" + two(minute % 60);
}

Json windowJson(const TariffWindow& window)
{
    Json json;
    json["days"] = Json::array();
    for (std::size_t day = 0; day < window.days.size(); ++day) {
        if (window.days[day])
            json["days"].push_back(dayNames[day]);
    }
    json["from"] = clockOf(window.fromMinute);
    json["to"] = clockOf(window.toMinute);
    json["price_per_kwh"] = window.pricePerKwh;
    return json;
}

Json tariffChangeJson(const TariffChange& change)
{
    Json json;
    json["from"] = rfc3339Utc(change.from);
    put(json, "price_per_kwh", change.tariff.pricePerKwh);
    for (const TariffWindow& window : change.tariff.windows)
        json["time_of_use"].push_back(windowJson(window));
    return json;
}

Json roundJson(const RoundWindow& window)
{
    return {{"label", window.label},
            {"from", clockOf(window.fromMinute)},
            {"to", clockOf(window.toMinute)}};
}

Json setupJson(const Setup& setup)
{
    Json json;
    json["name"] = setup.name;
    putText(json, "kind", setup.kind);
    json["vessels"] = setup.vessels;
    if (setup.ratedPower)
        json["rated_power_w"] = setup.ratedPower->watts();
    for (const Part& part : setup.parts)
        json["parts"].push_back(
            {{"item", part.item}, {"quantity", part.quantity}, {"price", part.price}});
    for (const auto& [criterion, rating] : setup.ratings)
        json["ratings"][criterion] = rating;
    put(json, "retired", setup.retired);
    return json;
}

Json sensorJson(const Sensor& sensor)
{
    Json json;
    json["name"] = sensor.name;
    json["reads"] = nameOf(sensor.reads);
    put(json, "setup", sensor.setup);
    put(json, "accuracy_c", sensor.accuracy);
    putText(json, "placement", sensor.placement);
    for (const Offset& offset : sensor.offsets) {
        Json item;
        item["from"] = rfc3339Utc(offset.from);
        item["add_c"] = offset.add.kelvins();
        put(item, "doubt_c", offset.doubt);
        putText(item, "why", offset.why);
        json["offsets"].push_back(std::move(item));
    }
    if (sensor.readByHand)
        json["read_by_hand"] = true;
    put(json, "retired", sensor.retired);
    return json;
}

Json meterJson(const Meter& meter)
{
    Json json;
    json["name"] = meter.name;
    json["setup"] = meter.setup;
    put(json, "resolution_kwh", meter.resolution);
    put(json, "rolls_over_at_kwh", meter.rollsOverAt);
    if (meter.accuracy)
        json["accuracy_pct"] = percentOf(*meter.accuracy);
    put(json, "from", meter.from);
    put(json, "to", meter.to);
    for (const MeterMove& move : meter.moves) {
        Json item;
        item["from"] = rfc3339Utc(move.from);
        put(item, "setup", move.setup);
        json["moves"].push_back(std::move(item));
    }
    put(json, "retired", meter.retired);
    return json;
}

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

double minutesOf(Milliseconds length)
{
    return static_cast<double>(length.count()) / 60000.0;
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

Json originJson(const FileOrigin& origin)
{
    Json json;
    json["file"] = origin.file;
    json["sha256"] = origin.sha256;
    json["rows"] = origin.rowsRead;
    for (const auto& [sensor, header] : origin.headers)
        json["headers"][sensor] = header;
    for (const auto& [sensor, runs] : origin.lines) {
        for (const auto& [at, line] : runs)
            json["lines"][sensor].push_back({rfc3339Utc(at), line});
    }
    return json;
}

Json fileJson(const FileEntry& file)
{
    Json json;
    putText(json, "file", file.file);
    put(json, "time", file.time);
    put(json, "zone", file.zone);
    if (file.unit)
        json["unit"] = *file.unit == TemperatureUnit::fahrenheit ? "f" : "c";
    for (const auto& [order, name] : dateOrderNames) {
        if (file.dateOrder == order)
            json["date_order"] = name;
    }
    for (const auto& [sensor, header] : file.columns)
        json["columns"][sensor] = header;
    if (file.origin)
        json["origin"] = originJson(*file.origin);
    put(json, "taken_back", file.withdrawn);
    return json;
}

/// Decimals are written only if the number itself does not show them: 5.00 is written 5.0.
void putRegister(Json& json, double kwh, int decimals)
{
    json["kwh"] = kwh;
    const auto shown = scanDecimal(shortestText(kwh));
    if (!shown || shown->decimals != decimals)
        json["decimals"] = decimals;
}

Json readingJson(const DescribedReading& reading)
{
    Json json;
    json["meter"] = reading.meter;
    json["at"] = rfc3339Utc(reading.inForce.at);
    putRegister(json, reading.inForce.registerReading.kilowattHours(), reading.inForce.decimals);
    if (reading.inForce.event)
        json["event"] = nameOf(*reading.inForce.event);
    putText(json, "note", reading.inForce.note);
    if (reading.inForce.timeDoubt && !reading.source) // imported ones have none anyhow
        json["time_doubt_min"] = minutesOf(*reading.inForce.timeDoubt);
    for (const store::Replaced& before : reading.before) {
        Json item;
        putRegister(item, before.kwh, before.decimals);
        item["until"] = rfc3339Utc(before.until);
        putText(item, "why", before.why);
        json["was"].push_back(std::move(item));
    }
    if (reading.source) {
        json["from_file"] = reading.source->file;
        json["line"] = reading.source->line;
    }
    if (reading.leftOut)
        json["left_out"] = true;
    put(json, "left_out_by", reading.leftOutBy);
    return json;
}

/// Decimals are written as for registers, if the number does not show them.
void putTyped(Json& json, double value, int decimals)
{
    json["value"] = value;
    const auto shown = scanDecimal(shortestText(value));
    if (!shown || shown->decimals != decimals)
        json["decimals"] = decimals;
}

Json handReadingJson(const DescribedHandReading& reading)
{
    Json json;
    const bool ofSensor = reading.owner.kind == store::HandOwner::Kind::sensor;
    json[ofSensor ? "sensor" : "batch"] = reading.owner.name;
    json["at"] = rfc3339Utc(reading.inForce.at);
    putTyped(json, reading.inForce.value, reading.inForce.decimals);
    json["unit"] = nameOf(reading.inForce.unit);
    if (reading.inForce.sample)
        json["sample_c"] = reading.inForce.sample->celsius();
    putText(json, "note", reading.inForce.note);
    for (const store::ReplacedHandReading& before : reading.before) {
        Json item;
        putTyped(item, before.value, before.decimals);
        item["until"] = rfc3339Utc(before.until);
        putText(item, "why", before.why);
        json["was"].push_back(std::move(item));
    }
    if (reading.leftOut)
        json["left_out"] = true;
    return json;
}

Json correctionJson(const store::ValueCorrection& correction)
{
    Json json;
    json["sensor"] = correction.sensor;
    json["at"] = rfc3339Utc(correction.at);
    json["value"] = correction.value;
    json["unit"] = nameOf(correction.unit);
    json["corrected"] = rfc3339Utc(correction.corrected);
    putText(json, "why", correction.why);
    return json;
}

Json exclusionJson(const store::Exclusion& exclusion)
{
    return {{"sensor", exclusion.sensor},
            {"from", rfc3339Utc(exclusion.span.start)},
            {"to", rfc3339Utc(exclusion.span.end)},
            {"why", exclusion.why}};
}

Json noteJson(const JournalNote& note)
{
    Json json;
    json["at"] = rfc3339Utc(note.at);
    put(json, "batch", note.batch);
    json["text"] = note.text;
    return json;
}

Json weighingJson(const Weighing& weighing)
{
    Json json = Json::object();
    if (!weighing.weights.empty())
        json["weights"] = weighing.weights;
    if (weighing.referenceLift)
        json["reference_lift_c"] = weighing.referenceLift->kelvins();
    if (weighing.referenceHours)
        json["reference_hours"] = weighing.referenceHours->count();
    put(json, "batches_per_year", weighing.batchesPerYear);
    put(json, "other_price_per_kwh", weighing.otherPricePerKwh);
    if (weighing.quietAfter)
        json["quiet_after_hours"] = weighing.quietAfter->count();
    return json;
}

Json mapJson(const store::LogMap& map)
{
    return {{"shape", map.shape}, {"map", map.spec}, {"used", rfc3339Utc(map.used)}};
}

Json watchJson(const DescribedWatch& watch)
{
    Json json{{"path", watch.path}};
    putText(json, "map", watch.spec);
    return json;
}

Json historyEntryJson(const store::PastHistoryEntry& past)
{
    const store::HistoryEntry& entry = past.entry;
    Json json{{"at", rfc3339Utc(past.at)},
              {"what", store::codeOf(entry.verb)},
              {"arguments", entry.arguments}};
    putText(json, "why", entry.why);
    if (entry.kind != store::HistoryKind::edit)
        json["kind"] = nameOf(entry.kind);
    put(json, "of", past.of);
    return json;
}

template <typename Value, typename Make>
void putAll(Json& document, const char* key, const std::vector<Value>& values, Make make)
{
    document[key] = Json::array();
    for (const Value& value : values)
        document[key].push_back(make(value));
}

} // namespace

std::string writeDescription(const Description& description)
{
    Json document;
    const LogbookSettings& settings = description.settings;
    document["holdband"] = 1;
    document["zone"] = settings.zone;
    document["units"] = nameOf(settings.units);
    putText(document, "currency", settings.currency);
    put(document, "price_per_kwh", settings.tariff.pricePerKwh);
    if (!settings.tariff.windows.empty())
        putAll(document, "time_of_use", settings.tariff.windows, windowJson);
    if (!settings.tariffChanges.empty())
        putAll(document, "tariff_changes", settings.tariffChanges, tariffChangeJson);
    if (settings.timeDoubt != Milliseconds{0})
        document["time_doubt_min"] = minutesOf(settings.timeDoubt);
    if (settings.rounds != usualRounds())
        putAll(document, "rounds", settings.rounds, roundJson);
    putAll(document, "setups", description.setups, setupJson);
    putAll(document, "sensors", description.sensors, sensorJson);
    putAll(document, "meters", description.meters, meterJson);
    putAll(document, "batches", description.batches,
           [&](const Batch& batch) { return batchWithCauses(batch, description); });
    putAll(document, "files", description.files, fileJson);
    putAll(document, "meter_readings", description.meterReadings, readingJson);
    if (!description.exclusions.empty())
        putAll(document, "exclusions", description.exclusions, exclusionJson);
    if (!description.journal.empty())
        putAll(document, "journal", description.journal, noteJson);
    if (!description.plans.empty())
        putAll(document, "plans", description.plans, planJson);
    if (!description.handReadings.empty())
        putAll(document, "hand_readings", description.handReadings, handReadingJson);
    if (!description.corrections.empty())
        putAll(document, "corrections", description.corrections, correctionJson);
    if (description.weighing != Weighing{})
        document["weighing"] = weighingJson(description.weighing);
    if (!description.logMaps.empty())
        putAll(document, "column_maps", description.logMaps, mapJson);
    if (!description.watches.empty())
        putAll(document, "watches", description.watches, watchJson);
    if (!description.history.empty())
        putAll(document, "history", description.history, historyEntryJson);
    return document.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace holdband::exchange
