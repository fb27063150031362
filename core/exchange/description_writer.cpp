// Writes a description: the document and its settings.
#include "core/exchange/description_json.h"
#include "core/model/names.h"

namespace holdband::exchange {

namespace {

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
