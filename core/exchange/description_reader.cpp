// Reads a description. Its parts are read by the files that end in _reader.
#include "core/exchange/description_parts.h"
#include "core/exchange/json_document.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::exchange {

namespace {

template <typename Value, typename Read>
void readAll(Fields& fields, const char* key, std::vector<Value>& into, Read read)
{
    for (Fields& item : fields.objects(key))
        into.push_back(read(item));
}

/// What belongs to a record is found by its name. `item`: of the last of the values.
template <typename Value>
void refuseSameName(const std::vector<Value>& values, Fields& item)
{
    if (values.empty())
        return;
    const std::string& name = values.back().name;
    const auto same = std::find_if(values.begin(), values.end() - 1,
                                   [&](const Value& value) { return value.name == name; });
    if (same != values.end() - 1)
        item.fail("name", Phrase::tr("\"%1\" is the name of two records").with(name),
                  Phrase::tr("give one of them another name"));
}

template <typename Value, typename Read>
void readAllNamed(Fields& fields, const char* key, std::vector<Value>& into, Read read)
{
    for (Fields& item : fields.objects(key)) {
        into.push_back(read(item));
        refuseSameName(into, item);
    }
}

/// Errors are left in `reading`.
Description readDocument(const Json& document, Reading& reading,
                         const DescriptionDefaults& defaults)
{
    Description description;
    description.settings.zone = defaults.zone;
    description.settings.units = defaults.units;
    Fields fields(document, "", reading);
    if (!fields.has("holdband"))
        fields.fail("",
                    Phrase::tr("this is no Holdband description: the key \"holdband\" is missing"));
    if (fields.number("holdband", 0.0, many).value_or(1.0) != 1.0)
        fields.fail("holdband",
                    Phrase::tr("this description is of a newer kind than this program knows"),
                    Phrase::tr("read it with a newer Holdband"));
    readSettings(fields, description);
    readAllNamed(fields, "setups", description.setups, readSetup);
    readAllNamed(fields, "sensors", description.sensors, readSensor);
    readAllNamed(fields, "meters", description.meters, readMeter);
    for (Fields& batch : fields.objects("batches")) {
        readBatch(batch, description);
        refuseSameName(description.batches, batch);
    }
    readAll(fields, "files", description.files, readFile);
    readAll(fields, "meter_readings", description.meterReadings, readMeterReading);
    readAll(fields, "exclusions", description.exclusions, readExclusion);
    readAll(fields, "journal", description.journal, readNote);
    readAllNamed(fields, "plans", description.plans, readPlan);
    readAll(fields, "hand_readings", description.handReadings, readHandReading);
    readAll(fields, "corrections", description.corrections, readCorrection);
    if (const auto weighing = fields.object("weighing"))
        description.weighing = readWeighing(*weighing);
    readAll(fields, "column_maps", description.logMaps, readMap);
    readAll(fields, "watches", description.watches, readWatch);
    readAll(fields, "history", description.history, readHistoryEntry);
    fields.refuseUnknown();
    return description;
}

} // namespace

Result<Description> parseDescription(const std::string& text, const std::string& fileName,
                                     const DescriptionDefaults& defaults)
{
    auto document = parseJson(text, fileName);
    HOLDBAND_TRY(document);
    Reading reading{fileName, Zone::utc(), std::nullopt};
    Description description = readDocument(*document, reading, defaults);
    if (reading.problem)
        return failure(*reading.problem);
    return description;
}

Result<KnownKeys> keysReadFrom(const std::string& text)
{
    auto document = parseJson(text, "");
    HOLDBAND_TRY(document);
    Reading reading{"", Zone::utc(), std::nullopt};
    readDocument(*document, reading, {});
    if (reading.problem)
        return failure(*reading.problem);
    return reading.knownKeys;
}

} // namespace holdband::exchange
