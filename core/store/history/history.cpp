#include "core/store/history/history.h"

#include "core/store/history/entry_changes.h"
#include "core/store/sqlite/rows.h"

#include <algorithm>
#include <limits>
#include <map>
#include <utility>

namespace holdband::store {

namespace {

// Entries from another logbook have ids below 1; if there are any, the entries for creating and
// loading this logbook are left out.
constexpr std::string_view ofTheRecord =
    "WHERE id NOT IN (1, 2) OR (id = 2 AND verb <> 'description.loaded') OR "
    "NOT EXISTS (SELECT 1 FROM acts WHERE id < 1) ORDER BY id";

Done insertEntry(const Database& database, std::optional<std::int64_t> id, Instant at,
                 const HistoryEntry& entry, std::optional<std::int64_t> of)
{
    const std::string arguments = argumentsText(entry.arguments);
    return execute(database,
                   "INSERT INTO acts (id, at, verb, arguments, kind, of, why) "
                   "VALUES (?, ?, ?, ?, ?, ?, ?)",
                   id, toMs(at), codeOf(entry.verb), std::string_view(arguments),
                   nameOf(entry.kind), of, FreeText{entry.why});
}

} // namespace

Result<HistoryEntryId> addHistoryEntry(const Database& database, const HistoryEntry& entry,
                                       Instant at)
{
    const std::optional<std::int64_t> of = entry.of ? std::optional(entry.of->value) : std::nullopt;
    HOLDBAND_TRY(insertEntry(database, std::nullopt, at, entry, of));
    return HistoryEntryId{database.lastRowId()};
}

HistoryEntry historyEntryFrom(const Statement& row, int column)
{
    const std::string code = row.text(column);
    HistoryEntry entry{HistoryVerb::other, {code}};
    if (const auto verb = historyVerbOf(code))
        entry = {*verb, argumentsFrom(row.text(column + 1))};
    entry.why = row.text(column + 2);
    entry.kind = historyKindNamed(row.text(column + 3));
    if (const auto of = row.optionalInteger(column + 4))
        entry.of = HistoryEntryId{*of};
    return entry;
}

Result<std::vector<StoredHistoryEntry>> readHistory(const LogbookFile& logbook, int most,
                                                    std::optional<HistoryEntryId> before)
{
    const std::int64_t below = before ? before->value : std::numeric_limits<std::int64_t>::max();
    return query(
        logbook.database(),
        // The last undo or redo of an entry decides whether it is in force.
        "SELECT a.id, a.at, coalesce((SELECT l.kind FROM acts l "
        "WHERE l.of = a.id ORDER BY l.id DESC LIMIT 1), '') = 'undo', "
        "a.verb, a.arguments, a.why, a.kind, a.of "
        "FROM acts a WHERE a.id < ? ORDER BY a.id DESC LIMIT ?",
        [](const Statement& row) {
            return StoredHistoryEntry{
                {row.integer(0)}, row.instant(1), historyEntryFrom(row, 3), row.integer(2) != 0};
        },
        below, most);
}

namespace {

/// A correction by hand has the unit of its reading, which is in another row.
Done addUnit(const Database& database, ChangedRow& row)
{
    if (row.table != "hand_corrections")
        return {};
    const auto reading =
        std::find_if(row.values.begin(), row.values.end(),
                     [](const ChangedValue& value) { return value.column == "reading"; });
    if (reading == row.values.end())
        return {};
    const std::string& id = reading->after.empty() ? reading->before : reading->after;
    auto units = query(
        database, "SELECT unit FROM hand_readings WHERE id = CAST(? AS INTEGER)",
        [](const Statement& unit) { return unit.text(0); }, std::string_view(id));
    HOLDBAND_TRY(units);
    for (const std::string& unit : *units)
        row.values.push_back({"unit", unit, unit});
    return {};
}

} // namespace

Result<std::vector<ChangedRow>> readChangedRows(const LogbookFile& logbook, HistoryEntryId entry)
{
    auto changes = changesOf(logbook.database(), entry);
    HOLDBAND_TRY(changes);
    auto rows = rowsOf(logbook.database(), *changes);
    HOLDBAND_TRY(rows);
    for (ChangedRow& row : *rows)
        HOLDBAND_TRY(addUnit(logbook.database(), row));
    return rows;
}

Result<std::vector<PastHistoryEntry>> readHistoryEntries(const LogbookFile& logbook)
{
    std::map<HistoryEntryId, std::size_t> places;
    return query(
        logbook.database(),
        "SELECT id, at, verb, arguments, why, kind, of FROM acts " + std::string(ofTheRecord),
        [&places](const Statement& row) {
            places.emplace(HistoryEntryId{row.integer(0)}, places.size());
            PastHistoryEntry past{row.instant(1), historyEntryFrom(row, 2), {}};
            const auto of = std::exchange(past.entry.of, {});
            if (const auto place = of ? places.find(*of) : places.end(); place != places.end())
                past.of = place->second;
            return past;
        });
}

Result<std::string> revisionOf(const LogbookFile& logbook)
{
    // Remembered columns of logs have no entry. The sum, not the latest: the clock may go back.
    return logbook.database().text("SELECT (SELECT coalesce(max(id), 0) FROM acts) || '.' || "
                                   "count(*) || '.' || total(used_at) FROM log_maps");
}

Result<std::vector<HistoryEntryId>> readHistoryEntryIds(const LogbookFile& logbook)
{
    return query(logbook.database(), "SELECT id FROM acts " + std::string(ofTheRecord),
                 [](const Statement& row) { return HistoryEntryId{row.integer(0)}; });
}

Result<std::vector<HistoryEntryId>> addPastEntries(const Change& change,
                                                   const std::vector<PastHistoryEntry>& entries)
{
    const Database& database = change.database();
    std::vector<HistoryEntryId> ids;
    const std::int64_t begin = -static_cast<std::int64_t>(entries.size());
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const PastHistoryEntry& past = entries[i];
        const std::optional<std::int64_t> of =
            past.of && *past.of < i ? std::optional(begin + static_cast<std::int64_t>(*past.of))
                                    : std::nullopt;
        const HistoryEntryId id{begin + static_cast<std::int64_t>(i)};
        HOLDBAND_TRY(insertEntry(database, id.value, past.at, past.entry, of));
        ids.push_back(id);
    }
    return ids;
}

} // namespace holdband::store
