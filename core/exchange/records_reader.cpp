// Reads what was measured and noted: readings, their corrections, exclusions, notes.
#include "core/exchange/description_parts.h"

#include "core/store/history/history_migration.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <limits>

namespace holdband::exchange {

namespace {

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

std::optional<std::size_t> readIndex(Fields& fields, const char* key)
{
    const auto index = fields.integer(key, 0, std::numeric_limits<int>::max());
    return index ? std::optional(static_cast<std::size_t>(*index)) : std::nullopt;
}

/// Reads how the reading was added to the record, and whether it was deleted.
void readCourse(Fields& fields, DescribedReading& reading)
{
    if (const auto file = readIndex(fields, "from_file"))
        reading.source = DescribedSource{
            *file, fields.integer("line", 0, std::numeric_limits<int>::max()).value_or(0)};
    reading.leftOut = fields.flag("left_out").value_or(false);
    reading.leftOutBy = readIndex(fields, "left_out_by");
    if (reading.leftOutBy && !reading.leftOut)
        fields.fail("left_out_by", Phrase::tr("the reading is not left out"));
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

} // namespace

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
    reading.inForce.timeDoubt = timeDoubt(fields);
    for (Fields& before : fields.objects("was"))
        reading.before.push_back(readReplaced(before));
    readCourse(fields, reading);
    fields.refuseUnknown();
    return reading;
}

DescribedHandReading readHandReading(Fields fields)
{
    DescribedHandReading reading;
    const auto sensor = fields.text("sensor");
    const auto batch = fields.text("batch");
    if (sensor.has_value() == batch.has_value())
        fields.fail("sensor", Phrase::tr("either a sensor or a batch must be named"));
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
    reading.leftOut = fields.flag("left_out").value_or(false);
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

store::Exclusion readExclusion(Fields fields)
{
    store::Exclusion exclusion;
    exclusion.sensor = fields.requiredText("sensor");
    exclusion.span = {fields.requiredTime("from"), fields.requiredTime("to")};
    exclusion.why = fields.text("why").value_or("");
    if (exclusion.span.end < exclusion.span.start)
        fields.fail("to", Phrase::tr("the stretch ends before it begins"));
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

store::LogMap readMap(Fields fields)
{
    store::LogMap map;
    map.shape = fields.requiredText("shape");
    map.spec = fields.requiredText("map");
    map.used = fields.requiredTime("used");
    fields.refuseUnknown();
    return map;
}

DescribedWatch readWatch(Fields fields)
{
    DescribedWatch watch;
    watch.path = fields.requiredText("path");
    watch.spec = fields.text("map").value_or("");
    fields.refuseUnknown();
    return watch;
}

namespace {

store::HistoryKind readHistoryKind(Fields& fields)
{
    const std::string name = fields.text("kind").value_or("edit");
    const auto kind = choiceNamed<store::HistoryKind>(name);
    if (!kind)
        fields.fail(
            "kind",
            Phrase::tr("\"%1\" is none of %2").with(name, choicesText<store::HistoryKind>()));
    return kind.value_or(store::HistoryKind::own);
}

std::vector<std::string> readArguments(Fields& fields, const Json& list)
{
    const auto isText = [](const Json& each) { return each.is_string(); };
    if (!list.is_array() || !std::all_of(list.begin(), list.end(), isText)) {
        fields.fail("arguments", Phrase::tr("expected a list of texts"));
        return {};
    }
    std::vector<std::string> arguments;
    for (const Json& each : list)
        arguments.push_back(each.get<std::string>());
    return arguments;
}

/// With arguments, `what` is the code of a verb; without, a sentence written by an older version.
store::HistoryEntry readVerb(Fields& fields, store::HistoryKind kind)
{
    const std::string what = fields.requiredText("what");
    const Json* arguments = fields.raw("arguments");
    if (!arguments)
        return store::entryFromSentence(what, kind);
    const auto verb = store::historyVerbOf(what);
    if (!verb)
        fields.fail("what", Phrase::tr("\"%1\" is no change that this version knows").with(what));
    return {verb.value_or(store::HistoryVerb::other), readArguments(fields, *arguments), {}, kind};
}

} // namespace

store::PastHistoryEntry readHistoryEntry(Fields fields)
{
    store::PastHistoryEntry past;
    past.at = fields.requiredTime("at");
    past.entry = readVerb(fields, readHistoryKind(fields));
    past.entry.why = fields.text("why").value_or("");
    past.of = readIndex(fields, "of");
    fields.refuseUnknown();
    return past;
}

} // namespace holdband::exchange
