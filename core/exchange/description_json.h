// The writers of a description's parts, each in its own file, and how they write a value; see
// description_parts.h for the readers. An absent value has no key. Not for use outside
// core/exchange.
#pragma once

#include "core/exchange/description.h"
#include "core/exchange/json_fields.h"
#include "core/text/times.h"

namespace holdband::exchange {

template <typename Value>
void put(Json& object, const char* key, const std::optional<Value>& value)
{
    if (value)
        object[key] = *value;
}

inline void put(Json& object, const char* key, const std::optional<Instant>& at)
{
    if (at)
        object[key] = rfc3339Utc(*at);
}

inline void put(Json& object, const char* key,
                const std::optional<TemperatureDifference>& difference)
{
    if (difference)
        object[key] = difference->kelvins();
}

inline void put(Json& object, const char* key, const std::optional<Energy>& energy)
{
    if (energy)
        object[key] = energy->kilowattHours();
}

inline void put(Json& object, const char* key, const std::optional<Hours>& hours)
{
    if (hours)
        object[key] = hours->count();
}

inline void putText(Json& object, const char* key, const std::string& text)
{
    if (!text.empty())
        object[key] = text;
}

inline double minutesOf(Milliseconds length)
{
    return static_cast<double>(length.count()) / 60000.0;
}

Json windowJson(const TariffWindow& window);
Json tariffChangeJson(const TariffChange& change);
Json roundJson(const RoundWindow& window);
Json setupJson(const Setup& setup);
Json sensorJson(const Sensor& sensor);
Json meterJson(const Meter& meter);
/// With the causes of its excursions.
Json batchWithCauses(const Batch& batch, const Description& description);
Json planJson(const NamedPlan& plan);
Json fileJson(const FileEntry& file);
Json readingJson(const DescribedReading& reading);
Json handReadingJson(const DescribedHandReading& reading);
Json correctionJson(const store::ValueCorrection& correction);
Json exclusionJson(const store::Exclusion& exclusion);
Json noteJson(const JournalNote& note);
Json weighingJson(const Weighing& weighing);
Json mapJson(const store::LogMap& map);
Json watchJson(const DescribedWatch& watch);
Json historyEntryJson(const store::PastHistoryEntry& past);

} // namespace holdband::exchange
