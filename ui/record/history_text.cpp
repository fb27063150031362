#include "ui/record/history_text.h"

#include "core/model/names.h"
#include "core/store/history/history_text.h"
#include "core/text/durations.h"
#include "core/text/numbers.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/words/words.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <map>
#include <set>

namespace holdband::ui {

namespace {

/// The names of the store's tables for people.
std::map<std::string, QString> tableNames()
{
    return {
        {"batches", Words::tr("batch")},
        {"beer_uses", Words::tr("probe and vessel")},
        {"causes", Words::tr("cause of an excursion")},
        {"changed_stages", Words::tr("stage of a changed plan")},
        {"exclusions", Words::tr("stretch left out")},
        {"hand_corrections", Words::tr("correction by hand")},
        {"hand_readings", Words::tr("reading by hand")},
        {"import_columns", Words::tr("imported column")},
        {"imports", Words::tr("import")},
        {"journal", Words::tr("journal note")},
        {"meter_corrections", Words::tr("corrected register")},
        {"meter_moves", Words::tr("move of a meter")},
        {"meter_readings", Words::tr("register reading")},
        {"meters", Words::tr("meter")},
        {"offsets", Words::tr("offset")},
        {"parts", Words::tr("part")},
        {"plan_changes", Words::tr("change of plan")},
        {"plan_stages", Words::tr("stage of a named plan")},
        {"plans", Words::tr("named plan")},
        {"ratings", Words::tr("rating")},
        {"round_windows", Words::tr("round")},
        {"sensors", Words::tr("sensor")},
        {"settings", Words::tr("setting")},
        {"setups", Words::tr("setup")},
        {"source_lines", Words::tr("line of a file")},
        {"stage_ends", Words::tr("end of a stage")},
        {"stages", Words::tr("stage")},
        {"tariff_changes", Words::tr("price")},
        {"tariff_change_windows", Words::tr("price window")},
        {"tariff_windows", Words::tr("price window")},
        {"value_corrections", Words::tr("corrected reading")},
        {"weighing", Words::tr("what is weighed by")},
        {"weights", Words::tr("weight of a criterion")},
    };
}

QString tableName(const std::string& table)
{
    const auto names = tableNames();
    const auto found = names.find(table);
    return found == names.end() ? shown(table) : found->second;
}

/// Row ids and digests mean nothing to people.
bool isInner(const std::string& column)
{
    static const std::set<std::string> inner{"id",       "act",     "import",      "checksum",
                                             "position", "setup",   "plan_change", "sha256",
                                             "meter",    "reading", "batch",       "plan"};
    return inner.contains(column);
}

bool isInstant(const std::string& column)
{
    static const std::set<std::string> instants{
        "at",       "from_at", "to_at",      "pitched",       "ended",      "corrected_at",
        "first_at", "last_at", "retired_at", "taken_back_at", "forecast_at"};
    return instants.contains(column);
}

/// The kind of a column's number, from the end of its name.
enum class Kind { plain, celsius, kelvins, litres, watts, hours, milliseconds };

constexpr std::pair<std::string_view, Kind> kindEndings[] = {
    {"_c", Kind::celsius}, {"_k", Kind::kelvins}, {"_l", Kind::litres},
    {"_w", Kind::watts},   {"_h", Kind::hours},   {"_ms", Kind::milliseconds}};

std::pair<std::string_view, Kind> endingOf(std::string_view column)
{
    for (const auto& each : kindEndings) {
        if (column.ends_with(each.first))
            return each;
    }
    return {{}, Kind::plain};
}

/// A number of the store in the logbook's units.
std::string quantityText(Kind kind, double number, const UnitFormat& format)
{
    switch (kind) {
    case Kind::celsius:
        return temperatureText(Temperature::celsius(number), format.temperature(), 1, format.sign);
    case Kind::kelvins:
        return differenceText(TemperatureDifference::kelvins(number), format.temperature(), 2,
                              format.sign);
    case Kind::litres:
        return volumeText(Volume::litres(number), format.units, format.sign);
    case Kind::watts:
        return powerText(Power::watts(number), 0, format.sign);
    case Kind::hours:
        return durationText(Hours{number}, format.sign);
    case Kind::milliseconds:
        return durationText(Hours{number / msPerHour}, format.sign);
    case Kind::plain:
        break;
    }
    return shortestText(number, format.sign);
}

QString valueText(const std::string& column, const std::string& value, const UnitFormat& format)
{
    if (column == "set_aside" && !value.empty())
        return value == "0" ? Words::tr("no") : Words::tr("yes");
    std::int64_t ms = 0;
    const char* end = value.data() + value.size();
    if (!value.empty() && isInstant(column) && std::from_chars(value.data(), end, ms).ptr == end)
        return shown(localText(instantFromMs(ms), format.zone));
    const Kind kind = endingOf(column).second;
    const auto number = kind == Kind::plain ? std::nullopt : scanDecimal(value);
    return number ? shown(quantityText(kind, number->value, format)) : shown(value);
}

/// The unit of the row's value, if it is a temperature.
std::optional<TemperatureUnit> temperatureUnitOf(const store::ChangedRow& row)
{
    const auto found = std::find_if(row.values.begin(), row.values.end(),
                                    [](const auto& value) { return value.column == "unit"; });
    if (found == row.values.end())
        return std::nullopt;
    const auto unit = choiceNamed<ReadingUnit>(found->after.empty() ? found->before : found->after);
    if (unit == ReadingUnit::celsius)
        return TemperatureUnit::celsius;
    return unit == ReadingUnit::fahrenheit ? std::optional(TemperatureUnit::fahrenheit)
                                           : std::nullopt;
}

/// A temperature that was stored as it was typed or logged, in the logbook's unit.
QString temperatureWords(const std::string& value, TemperatureUnit stored, const UnitFormat& format)
{
    const auto number = scanDecimal(value);
    if (!number)
        return shown(value);
    const TemperatureUnit own = format.temperature();
    if (stored != own)
        return shown(temperatureText(temperatureFrom(number->value, stored), own, 1, format.sign));
    return shown(shortestText(number->value, format.sign)) + QLatin1Char(' ') +
           shown(unitText(own));
}

/// The store's columns, as columnName looks them up.
[[maybe_unused]] constexpr const char* columnText[] = {
    QT_TRANSLATE_NOOP("Words", "accuracy"),
    QT_TRANSLATE_NOOP("Words", "add"),
    QT_TRANSLATE_NOOP("Words", "ambient sensor"),
    QT_TRANSLATE_NOOP("Words", "at"),
    QT_TRANSLATE_NOOP("Words", "beer sensor"),
    QT_TRANSLATE_NOOP("Words", "cause"),
    QT_TRANSLATE_NOOP("Words", "corrected at"),
    QT_TRANSLATE_NOOP("Words", "criterion"),
    QT_TRANSLATE_NOOP("Words", "days"),
    QT_TRANSLATE_NOOP("Words", "decimals"),
    QT_TRANSLATE_NOOP("Words", "ended"),
    QT_TRANSLATE_NOOP("Words", "ends by"),
    QT_TRANSLATE_NOOP("Words", "event"),
    QT_TRANSLATE_NOOP("Words", "file"),
    QT_TRANSLATE_NOOP("Words", "final gravity"),
    QT_TRANSLATE_NOOP("Words", "first at"),
    QT_TRANSLATE_NOOP("Words", "first line"),
    QT_TRANSLATE_NOOP("Words", "forecast at"),
    QT_TRANSLATE_NOOP("Words", "forecast crash"),
    QT_TRANSLATE_NOOP("Words", "forecast crash high"),
    QT_TRANSLATE_NOOP("Words", "forecast crash low"),
    QT_TRANSLATE_NOOP("Words", "forecast high kwh"),
    QT_TRANSLATE_NOOP("Words", "forecast kwh"),
    QT_TRANSLATE_NOOP("Words", "forecast low kwh"),
    QT_TRANSLATE_NOOP("Words", "forecast room"),
    QT_TRANSLATE_NOOP("Words", "from at"),
    QT_TRANSLATE_NOOP("Words", "from minute"),
    QT_TRANSLATE_NOOP("Words", "gap limit"),
    QT_TRANSLATE_NOOP("Words", "header"),
    QT_TRANSLATE_NOOP("Words", "hours"),
    QT_TRANSLATE_NOOP("Words", "item"),
    QT_TRANSLATE_NOOP("Words", "key"),
    QT_TRANSLATE_NOOP("Words", "kind"),
    QT_TRANSLATE_NOOP("Words", "kwh"),
    QT_TRANSLATE_NOOP("Words", "label"),
    QT_TRANSLATE_NOOP("Words", "last at"),
    QT_TRANSLATE_NOOP("Words", "line"),
    QT_TRANSLATE_NOOP("Words", "name"),
    QT_TRANSLATE_NOOP("Words", "note"),
    QT_TRANSLATE_NOOP("Words", "original gravity"),
    QT_TRANSLATE_NOOP("Words", "path"),
    QT_TRANSLATE_NOOP("Words", "pitched"),
    QT_TRANSLATE_NOOP("Words", "place"),
    QT_TRANSLATE_NOOP("Words", "placement"),
    QT_TRANSLATE_NOOP("Words", "price"),
    QT_TRANSLATE_NOOP("Words", "price per kwh"),
    QT_TRANSLATE_NOOP("Words", "quantity"),
    QT_TRANSLATE_NOOP("Words", "rated power"),
    QT_TRANSLATE_NOOP("Words", "rating"),
    QT_TRANSLATE_NOOP("Words", "readings"),
    QT_TRANSLATE_NOOP("Words", "reads"),
    QT_TRANSLATE_NOOP("Words", "resolution kwh"),
    QT_TRANSLATE_NOOP("Words", "retired at"),
    QT_TRANSLATE_NOOP("Words", "rolls over at kwh"),
    QT_TRANSLATE_NOOP("Words", "rows read"),
    QT_TRANSLATE_NOOP("Words", "sample"),
    QT_TRANSLATE_NOOP("Words", "sensor"),
    QT_TRANSLATE_NOOP("Words", "settle hours"),
    QT_TRANSLATE_NOOP("Words", "shape"),
    QT_TRANSLATE_NOOP("Words", "side"),
    QT_TRANSLATE_NOOP("Words", "spec"),
    QT_TRANSLATE_NOOP("Words", "stage"),
    QT_TRANSLATE_NOOP("Words", "target"),
    QT_TRANSLATE_NOOP("Words", "text"),
    QT_TRANSLATE_NOOP("Words", "to at"),
    QT_TRANSLATE_NOOP("Words", "to minute"),
    QT_TRANSLATE_NOOP("Words", "tolerance"),
    QT_TRANSLATE_NOOP("Words", "unit"),
    QT_TRANSLATE_NOOP("Words", "until gravity"),
    QT_TRANSLATE_NOOP("Words", "used at"),
    QT_TRANSLATE_NOOP("Words", "value"),
    QT_TRANSLATE_NOOP("Words", "vessel"),
    QT_TRANSLATE_NOOP("Words", "vessels"),
    QT_TRANSLATE_NOOP("Words", "volume"),
    QT_TRANSLATE_NOOP("Words", "weight"),
    QT_TRANSLATE_NOOP("Words", "what"),
    QT_TRANSLATE_NOOP("Words", "why")};

/// Columns of the file with other names than the screen.
constexpr std::array<std::pair<std::string_view, const char*>, 6> olderNames{
    {{"doubt", QT_TRANSLATE_NOOP("Words", "uncertainty")},
     {"dwell", QT_TRANSLATE_NOOP("Words", "settled after")},
     {"grace", QT_TRANSLATE_NOOP("Words", "ignore shorter than")},
     {"return", QT_TRANSLATE_NOOP("Words", "excursion ends after")},
     {"set_aside", QT_TRANSLATE_NOOP("Words", "deleted")},
     {"taken_back_at", QT_TRANSLATE_NOOP("Words", "withdrawn at")}}};

QString columnName(const std::string& column)
{
    const std::size_t ending = endingOf(column).first.size(); // the value has its unit
    const std::string name = column.substr(0, column.size() - ending);
    const auto older = std::find_if(olderNames.begin(), olderNames.end(),
                                    [&](const auto& each) { return each.first == name; });
    if (older != olderNames.end())
        return Words::tr(older->second);
    return Words::tr(QByteArray::fromStdString(name).replace('_', ' ').constData());
}

QString kindText(const store::StoredHistoryEntry& entry)
{
    if (entry.undone)
        return Words::tr("undone");
    return entry.entry.kind == store::HistoryKind::own ? Words::tr("automatic") : QString();
}

} // namespace

TableText historyTable(const std::vector<store::StoredHistoryEntry>& entries, const Zone& zone)
{
    TableText words;
    words.header = {Words::tr("when"), Words::tr("what"), Words::tr("why"), Words::tr("state")};
    words.numeric = {false, false, false, false};
    for (const store::StoredHistoryEntry& entry : entries)
        words.rows.push_back({{shown(localText(entry.at, zone)), {}, false},
                              {shown(store::historyText(entry.entry)), {}, false},
                              {shown(entry.entry.why), {}, false},
                              {kindText(entry), {}, false}});
    return words;
}

TableText rowText(const std::vector<store::ChangedRow>& rows, const UnitFormat& format)
{
    TableText words;
    words.header = {Words::tr("of"), Words::tr("value"), Words::tr("before"), Words::tr("after")};
    words.numeric = {false, false, false, false};
    for (const store::ChangedRow& row : rows) {
        const auto unit = temperatureUnitOf(row);
        const auto text = [&](const std::string& column, const std::string& value) {
            return unit && column == "value" ? temperatureWords(value, *unit, format)
                                             : valueText(column, value, format);
        };
        for (const store::ChangedValue& value : row.values) {
            const bool same = value.before == value.after;    // a key, shown with each changed row
            const bool said = unit && value.column == "unit"; // beside the value
            if (isInner(value.column) || same || said)
                continue;
            words.rows.push_back({{tableName(row.table), {}, false},
                                  {columnName(value.column), {}, false},
                                  {text(value.column, value.before), {}, false},
                                  {text(value.column, value.after), {}, false}});
        }
    }
    return words;
}

} // namespace holdband::ui
