// The readers of a description's parts, each in its own file. Not for use outside core/exchange.
#pragma once

#include "core/exchange/description.h"
#include "core/exchange/json_fields.h"
#include "core/model/names.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::exchange {

/// Larger than any sensible number in a description.
inline constexpr double many = 1e9;

template <typename Choice>
std::optional<Choice> choice(Fields& fields, const char* key)
{
    const auto text = fields.text(key);
    if (!text)
        return std::nullopt;
    const auto found = choiceNamed<Choice>(*text);
    if (!found)
        fields.fail(key, Phrase::tr("\"%1\" is none of %2").with(*text, choicesText<Choice>()));
    return found;
}

/// Sorted by `from`, each once.
template <typename Value>
void checkIncreasing(Fields& fields, const char* key, const std::vector<Value>& values)
{
    const auto stuck =
        std::adjacent_find(values.begin(), values.end(),
                           [](const Value& a, const Value& b) { return a.from >= b.from; });
    if (stuck != values.end())
        fields.fail(key, Phrase::tr("these must be in order of their \"from\", each time once"));
}

/// Of a reading, or of all typed with a time of their own. Absent where the key is.
std::optional<Milliseconds> timeDoubt(Fields& fields);
void readSettings(Fields& fields, Description& into);
Setup readSetup(Fields fields);
Sensor readSensor(Fields fields);
Meter readMeter(Fields fields);
/// Reads the batch and the causes of its excursions.
void readBatch(Fields fields, Description& into);
NamedPlan readPlan(Fields fields);
FileEntry readFile(Fields fields);
DescribedReading readMeterReading(Fields fields);
DescribedHandReading readHandReading(Fields fields);
store::ValueCorrection readCorrection(Fields fields);
store::Exclusion readExclusion(Fields fields);
JournalNote readNote(Fields fields);
Weighing readWeighing(Fields fields);
store::LogMap readMap(Fields fields);
DescribedWatch readWatch(Fields fields);
store::PastHistoryEntry readHistoryEntry(Fields fields);

} // namespace holdband::exchange
