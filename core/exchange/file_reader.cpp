// Reads the entries for log files in a description.
#include "core/exchange/description_parts.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

namespace holdband::exchange {

namespace {

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
            const auto at = shaped
                                ? parseTime(run[0].get<std::string>(), origin.reading().zone)
                                : Result<Instant>(dataProblem(Phrase::tr("not a time and a line")));
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
    fields.fail("date_order", Phrase::tr("\"%1\" is none of %2").with(*name, "ymd, mdy, dmy"));
    return std::nullopt;
}

/// Reads the layout of the log.
void readLayout(Fields& fields, FileEntry& file)
{
    file.file = fields.requiredText("file");
    file.time = fields.text("time");
    file.zone = fields.text("zone");
    if (const auto unit = fields.text("unit")) {
        if (*unit == "f")
            file.unit = TemperatureUnit::fahrenheit;
        else if (*unit == "c")
            file.unit = TemperatureUnit::celsius;
        else
            fields.fail("unit", Phrase::tr("\"%1\" is none of %2").with(*unit, "f, c"));
    }
    file.dateOrder = readDateOrder(fields);
    if (!fields.has("columns"))
        fields.fail("columns", Phrase::tr("the key is missing"));
    file.columns = readTexts(fields, "columns");
}

} // namespace

FileEntry readFile(Fields fields)
{
    FileEntry file;
    const bool registersOnly = !fields.has("file") && fields.has("origin");
    if (!registersOnly)
        readLayout(fields, file);
    if (auto origin = fields.object("origin"))
        file.origin = readOrigin(*origin);
    file.withdrawn = fields.time("taken_back");
    fields.refuseUnknown();
    return file;
}

} // namespace holdband::exchange
