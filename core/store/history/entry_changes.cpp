#include "core/store/history/entry_changes.h"

#include "core/digest.h"
#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"

#include <utility>

namespace holdband::store {

namespace {

std::string digestOf(const Changeset& changes)
{
    return holdband::digestOf(std::string_view(changes.data(), changes.size()));
}

} // namespace

Done storeChanges(const Database& database, HistoryEntryId entry, const Changeset& changes)
{
    auto statement = database.prepare<BulkStatement>(
        "INSERT INTO act_changes (act, changes, digest) VALUES (?, ?, ?)");
    HOLDBAND_TRY(statement);
    const std::string digest = digestOf(changes);
    statement->bind(1, entry.value);
    statement->bindBytes(2, changes);
    statement->bind(3, std::string_view(digest));
    return statement->run();
}

Result<Changeset> changesOf(const Database& database, HistoryEntryId entry)
{
    auto rows = query<BulkStatement>(
        database, "SELECT changes, digest FROM act_changes WHERE act = ?",
        [](const BulkStatement& row) { return std::pair(row.bytes(0), row.text(1)); }, entry.value);
    HOLDBAND_TRY(rows);
    if (rows->empty())
        return Changeset();
    auto& [changes, digest] = rows->front();
    if (digestOf(changes) != digest)
        return fileProblem(Phrase::tr("the record of what was changed is damaged"), database.path(),
                           Phrase::tr("`holdband check` says what else is"));
    return std::move(changes);
}

Result<std::vector<HistoryEntryId>> damagedChanges(const Database& database)
{
    std::vector<HistoryEntryId> damaged;
    auto rows =
        query<BulkStatement>(database, "SELECT act, changes, digest FROM act_changes ORDER BY act",
                             [&](const BulkStatement& row) {
                                 if (digestOf(row.bytes(1)) != row.text(2))
                                     damaged.push_back({row.integer(0)});
                                 return true;
                             });
    HOLDBAND_TRY(rows);
    return damaged;
}

} // namespace holdband::store
