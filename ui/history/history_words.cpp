#include "ui/history/history_words.h"

#include "core/text/times.h"
#include "ui/words/words.h"

#include <charconv>
#include <map>
#include <set>

namespace holdband::ui {

namespace {

/// What the store's tables hold, for people.
const std::map<std::string, QString>& tableNames()
{
    static const std::map<std::string, QString> names{
        {"batches", QStringLiteral("batch")},
        {"beer_uses", QStringLiteral("probe and vessel")},
        {"causes", QStringLiteral("cause of an excursion")},
        {"changed_stages", QStringLiteral("stage of a changed plan")},
        {"exclusions", QStringLiteral("stretch left out")},
        {"hand_corrections", QStringLiteral("correction by hand")},
        {"hand_readings", QStringLiteral("reading by hand")},
        {"import_columns", QStringLiteral("imported column")},
        {"imports", QStringLiteral("import")},
        {"journal", QStringLiteral("journal note")},
        {"meter_corrections", QStringLiteral("corrected register")},
        {"meter_moves", QStringLiteral("move of a meter")},
        {"meter_readings", QStringLiteral("register reading")},
        {"meters", QStringLiteral("meter")},
        {"offsets", QStringLiteral("offset")},
        {"parts", QStringLiteral("part")},
        {"plan_changes", QStringLiteral("change of plan")},
        {"plan_stages", QStringLiteral("stage of a named plan")},
        {"plans", QStringLiteral("named plan")},
        {"ratings", QStringLiteral("rating")},
        {"round_windows", QStringLiteral("round")},
        {"sensors", QStringLiteral("sensor")},
        {"settings", QStringLiteral("setting")},
        {"setups", QStringLiteral("setup")},
        {"source_lines", QStringLiteral("line of a file")},
        {"stage_ends", QStringLiteral("end of a stage")},
        {"stages", QStringLiteral("stage")},
        {"tariff_changes", QStringLiteral("price")},
        {"tariff_change_windows", QStringLiteral("price window")},
        {"tariff_windows", QStringLiteral("price window")},
        {"value_corrections", QStringLiteral("corrected reading")},
        {"weighing", QStringLiteral("what is weighed by")},
        {"weights", QStringLiteral("weight of a criterion")},
    };
    return names;
}

QString tableName(const std::string& table)
{
    const auto found = tableNames().find(table);
    return found == tableNames().end() ? shown(table) : found->second;
}

/// Row ids and digests say nothing to people.
bool isInner(const std::string& column)
{
    static const std::set<std::string> inner{"id",       "act",     "import",      "checksum",
                                             "position", "setup",   "plan_change", "sha256",
                                             "meter",    "reading", "batch",       "plan"};
    return inner.contains(column);
}

bool isInstant(const std::string& column)
{
    static const std::set<std::string> instants{"at",         "from_at",      "to_at",    "pitched",
                                                "ended",      "corrected_at", "first_at", "last_at",
                                                "retired_at", "taken_back_at"};
    return instants.contains(column);
}

QString valueText(const std::string& column, const std::string& value, const Zone& zone)
{
    if (column == "set_aside" && !value.empty())
        return value == "0" ? QStringLiteral("no") : QStringLiteral("yes");
    std::int64_t ms = 0;
    const char* end = value.data() + value.size();
    if (!value.empty() && isInstant(column) && std::from_chars(value.data(), end, ms).ptr == end)
        return shown(localText(instantFromMs(ms), zone));
    return shown(value);
}

QString columnName(const std::string& column)
{
    return shown(column).replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString kindText(const store::HistoryEntry& entry)
{
    if (entry.takenBack)
        return QStringLiteral("taken back");
    return entry.kind == store::ActKind::own ? QStringLiteral("by itself") : QString();
}

} // namespace

TableWords actWords(const std::vector<store::HistoryEntry>& entries, const Zone& zone)
{
    TableWords words;
    words.header = {QStringLiteral("when"), QStringLiteral("what"), QStringLiteral("why"),
                    QStringLiteral("stands")};
    words.numeric = {false, false, false, false};
    for (const store::HistoryEntry& entry : entries)
        words.rows.push_back({{shown(localText(entry.at, zone)), {}, false},
                              {shown(entry.what), {}, false},
                              {shown(entry.why), {}, false},
                              {kindText(entry), {}, false}});
    return words;
}

TableWords rowWords(const std::vector<store::ChangedRow>& rows, const Zone& zone)
{
    TableWords words;
    words.header = {QStringLiteral("of"), QStringLiteral("value"), QStringLiteral("before"),
                    QStringLiteral("after")};
    words.numeric = {false, false, false, false};
    for (const store::ChangedRow& row : rows) {
        for (const store::ChangedValue& value : row.values) {
            const bool same = value.before == value.after; // a key, told with each changed row
            if (isInner(value.column) || same)
                continue;
            words.rows.push_back({{tableName(row.table), {}, false},
                                  {columnName(value.column), {}, false},
                                  {valueText(value.column, value.before, zone), {}, false},
                                  {valueText(value.column, value.after, zone), {}, false}});
        }
    }
    return words;
}

} // namespace holdband::ui
