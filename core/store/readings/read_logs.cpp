#include "core/store/readings/read_logs.h"

#include "core/store/sqlite/rows.h"

#include <string_view>

namespace holdband::store {

namespace {

/// The import and those before it, back to the one with the file's first rows.
constexpr std::string_view importsOfLog =
    "WITH RECURSIVE parts(import) AS (SELECT ?1 UNION ALL SELECT r.before FROM parts p "
    "JOIN read_logs r ON r.import = p.import WHERE r.before IS NOT NULL) ";

Result<bool> allInForce(const Database& database, std::int64_t import)
{
    auto missing = query<BulkStatement>(
        database,
        std::string(importsOfLog) +
            "SELECT count(*) FROM parts p WHERE NOT EXISTS (SELECT 1 FROM imports i "
            "WHERE i.id = p.import AND i.taken_back_at IS NULL)",
        [](const BulkStatement& row) { return row.integer(0); }, import);
    HOLDBAND_TRY(missing);
    return missing->front() == 0;
}

Done addReadingCounts(const Database& database, StoredLog& stored)
{
    auto counts = query<BulkStatement>(
        database,
        std::string(importsOfLog) +
            "SELECT s.name, sum(c.readings) FROM parts p JOIN import_columns c "
            "ON c.import = p.import JOIN sensors s ON s.id = c.sensor GROUP BY s.name",
        [&](const BulkStatement& row) {
            stored.readings[row.text(0)] = row.integer(1);
            return true;
        },
        stored.import.value);
    return counts ? Done() : Done(failure(counts.error()));
}

} // namespace

Done addReadLog(const Change& change, ImportId import, std::optional<ImportId> before,
                const ReadLog& log)
{
    return execute(change.database(),
                   "INSERT OR REPLACE INTO read_logs (import, before, asked, head, bytes, lines) "
                   "VALUES (?, ?, ?, ?, ?, ?)",
                   import.value, before ? std::optional(before->value) : std::nullopt,
                   std::string_view(log.asked), std::string_view(log.head), log.bytes, log.lines);
}

Result<std::optional<StoredLog>> longestStoredLog(const LogbookFile& logbook,
                                                  const std::string& asked, const std::string& head,
                                                  std::int64_t bytes)
{
    const Database& database = logbook.database();
    auto logs = query<BulkStatement>(
        database,
        "SELECT r.import, r.bytes, r.lines, i.sha256, i.rows_read FROM read_logs r "
        "JOIN imports i ON i.id = r.import "
        "WHERE r.asked = ? AND r.head = ? AND r.bytes <= ? ORDER BY r.bytes DESC, r.import DESC",
        [&](const BulkStatement& row) {
            StoredLog stored;
            stored.log = {asked, head, row.integer(1), row.integer(2)};
            stored.import = {row.integer(0)};
            stored.sha256 = row.text(3);
            stored.rowsRead = row.integer(4);
            return stored;
        },
        std::string_view(asked), std::string_view(head), bytes);
    HOLDBAND_TRY(logs);
    for (StoredLog& log : *logs) {
        auto inForce = allInForce(database, log.import.value);
        HOLDBAND_TRY(inForce);
        if (!*inForce)
            continue;
        HOLDBAND_TRY(addReadingCounts(database, log));
        return std::optional(std::move(log));
    }
    return std::optional<StoredLog>();
}

Result<bool> hasLogAskedAs(const LogbookFile& logbook, const std::string& asked)
{
    auto rows = query<BulkStatement>(
        logbook.database(), "SELECT 1 FROM read_logs WHERE asked = ? LIMIT 1",
        [](const BulkStatement&) { return true; }, std::string_view(asked));
    HOLDBAND_TRY(rows);
    return !rows->empty();
}

} // namespace holdband::store
