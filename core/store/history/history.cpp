#include "core/store/history/history.h"

#include "core/store/history/act_changes.h"
#include "core/store/history/act_words.h"
#include "core/store/sqlite/rows.h"

#include <array>
#include <limits>
#include <map>
#include <utility>

namespace holdband::store {

namespace {

constexpr std::array<std::pair<HistoryKind, std::string_view>, 4> kindNames{{
    {HistoryKind::edit, "edit"},
    {HistoryKind::own, "own"},
    {HistoryKind::undo, "undo"},
    {HistoryKind::redo, "redo"},
}};

// What came from another logbook stands below 1; then making this one and loading it are no part of
// the record.
constexpr std::string_view ofTheRecord =
    "WHERE id NOT IN (1, 2) OR (id = 2 AND what NOT LIKE 'loaded %') OR "
    "NOT EXISTS (SELECT 1 FROM acts WHERE id < 1) ORDER BY id";

} // namespace

std::string_view nameOf(HistoryKind kind)
{
    for (const auto& [value, name] : kindNames) {
        if (value == kind)
            return name;
    }
    return {};
}

HistoryKind historyKindNamed(std::string_view name)
{
    for (const auto& [value, known] : kindNames) {
        if (known == name)
            return value;
    }
    return HistoryKind::own;
}

Result<std::vector<StoredHistoryEntry>> readHistory(const LogbookFile& logbook, int most,
                                                    std::optional<HistoryEntryId> before)
{
    const std::int64_t below = before ? before->value : std::numeric_limits<std::int64_t>::max();
    return query(
        logbook.database(),
        // The last undo or redo of an act tells whether it stands.
        "SELECT a.id, a.at, a.what, a.why, a.kind, coalesce((SELECT l.kind FROM acts l "
        "WHERE l.of = a.id ORDER BY l.id DESC LIMIT 1), '') = 'undo' "
        "FROM acts a WHERE a.id < ? ORDER BY a.id DESC LIMIT ?",
        [](const Statement& row) {
            return StoredHistoryEntry{{row.integer(0)},
                                      row.instant(1),
                                      actForPeople(row.text(2)),
                                      row.text(3),
                                      historyKindNamed(row.text(4)),
                                      row.integer(5) != 0};
        },
        below, most);
}

Result<std::vector<ChangedRow>> readChangedRows(const LogbookFile& logbook, HistoryEntryId act)
{
    auto changes = changesOf(logbook.database(), act);
    HOLDBAND_TRY(changes);
    return rowsOf(logbook.database(), *changes);
}

Result<std::vector<PastHistoryEntry>> readHistoryEntries(const LogbookFile& logbook)
{
    std::map<std::int64_t, std::size_t> places;
    return query(
        logbook.database(),
        "SELECT id, at, what, why, kind, of FROM acts " + std::string(ofTheRecord),
        [&places](const Statement& row) {
            places.emplace(row.integer(0), places.size());
            PastHistoryEntry act{
                row.instant(1), row.text(2), row.text(3), historyKindNamed(row.text(4)), {}};
            const auto of = places.find(row.optionalInteger(5).value_or(0));
            if (!row.isNull(5) && of != places.end())
                act.of = of->second;
            return act;
        });
}

Result<std::string> revisionOf(const LogbookFile& logbook)
{
    // What is remembered of logs is no act.
    return logbook.database().text("SELECT (SELECT coalesce(max(id), 0) FROM acts) || '.' || "
                                   "count(*) || '.' || coalesce(max(used_at), 0) FROM log_maps");
}

Result<std::vector<HistoryEntryId>> readHistoryEntryIds(const LogbookFile& logbook)
{
    return query(logbook.database(), "SELECT id FROM acts " + std::string(ofTheRecord),
                 [](const Statement& row) { return HistoryEntryId{row.integer(0)}; });
}

Result<std::vector<HistoryEntryId>> addPastEntries(const Change& change,
                                                   const std::vector<PastHistoryEntry>& acts)
{
    const Database& database = change.database();
    std::vector<HistoryEntryId> ids;
    const std::int64_t begin = -static_cast<std::int64_t>(acts.size());
    for (std::size_t i = 0; i < acts.size(); ++i) {
        const PastHistoryEntry& act = acts[i];
        const std::optional<std::int64_t> of =
            act.of && *act.of < i ? std::optional(begin + static_cast<std::int64_t>(*act.of))
                                  : std::nullopt;
        HOLDBAND_TRY(execute(database,
                             "INSERT INTO acts (id, at, what, kind, of, why) "
                             "VALUES (?, ?, ?, ?, ?, ?)",
                             begin + static_cast<std::int64_t>(i), toMs(act.at),
                             std::string_view(act.what), nameOf(act.kind), of,
                             std::string_view(act.why)));
        ids.push_back({begin + static_cast<std::int64_t>(i)});
    }
    return ids;
}

} // namespace holdband::store
