// Writes log files, readings, the journal, weights, column maps, watches and the history.
#include "core/exchange/description_json.h"
#include "core/model/names.h"
#include "core/text/numbers.h"

#include <cmath>

namespace holdband::exchange {

namespace {

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

} // namespace

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

namespace {

/// Decimals are written only if the number itself does not show them: 5.00 is written 5.0.
void putRegister(Json& json, double kwh, int decimals)
{
    json["kwh"] = kwh;
    const auto shown = scanDecimal(shortestText(kwh));
    if (!shown || shown->decimals != decimals)
        json["decimals"] = decimals;
}

} // namespace

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

namespace {

/// Decimals are written as for registers, if the number does not show them.
void putTyped(Json& json, double value, int decimals)
{
    json["value"] = value;
    const auto shown = scanDecimal(shortestText(value));
    if (!shown || shown->decimals != decimals)
        json["decimals"] = decimals;
}

} // namespace

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

} // namespace holdband::exchange
