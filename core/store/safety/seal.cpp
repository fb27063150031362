#include "core/store/safety/seal.h"

#include "core/digest.h"
#include "core/store/safety/integrity.h"
#include "core/store/sqlite/rows.h"
#include "core/store/sqlite/transaction.h"
#include "core/text/phrase.h"

#include <vector>

namespace holdband::store {

namespace {

/// Since this format the seal covers `log_maps` and `watches`.
constexpr std::int64_t firstWithSealedMaps = 9;

struct SealedTable {
    std::string name;
    bool hasIndex = false; ///< besides its own key
};

/// All but the bulk of readings and the records for undo, which have checksums of their own.
Result<std::vector<SealedTable>> sealedTables(const Database& database)
{
    auto version = database.integer("PRAGMA user_version");
    HOLDBAND_TRY(version);
    const std::string unsealedThen =
        *version < firstWithSealedMaps ? ", 'log_maps', 'watches'" : "";
    return query<BulkStatement>(
        database,
        "SELECT t.name, (SELECT count(*) FROM sqlite_schema i WHERE i.type = 'index' "
        "AND i.tbl_name = t.name) FROM sqlite_schema t "
        "WHERE t.type = 'table' AND t.name NOT LIKE 'sqlite_%' "
        "AND t.name NOT IN ('readings', 'aside_readings', 'reading_blocks', 'aside_blocks', "
        "'block_checksums', 'seal', 'act_changes'" +
            unsealedThen + ") ORDER BY t.name",
        [](const BulkStatement& row) {
            return SealedTable{row.text(0), row.integer(1) > 0};
        });
}

void addNumber(Digest& digest, std::int64_t number)
{
    digest.add({reinterpret_cast<const char*>(&number), sizeof number});
}

void addColumn(Digest& digest, sqlite3_stmt* statement, int column)
{
    const int type = sqlite3_column_type(statement, column);
    addNumber(digest, type);
    if (type == SQLITE_NULL)
        return;
    // Numbers are hashed as the text that SQLite makes of them, except reals, whose bits are
    // hashed.
    if (type == SQLITE_FLOAT) {
        const double value = sqlite3_column_double(statement, column);
        digest.add({reinterpret_cast<const char*>(&value), sizeof value});
        return;
    }
    if (type == SQLITE_INTEGER)
        return addNumber(digest, sqlite3_column_int64(statement, column));
    const void* bytes = sqlite3_column_blob(statement, column);
    const int size = sqlite3_column_bytes(statement, column);
    addNumber(digest, size);
    digest.add({static_cast<const char*>(bytes), static_cast<std::size_t>(size)});
}

Done addTable(Digest& digest, const Database& database, const std::string& table)
{
    // Without an ORDER BY, SQLite reads the table in the order of its key.
    auto statement = database.prepare<BulkStatement>("SELECT * FROM \"" + table + "\"");
    HOLDBAND_TRY(statement);
    digest.add(table);
    const int columns = sqlite3_column_count(statement->raw());
    for (auto row = statement->step();; row = statement->step()) {
        HOLDBAND_TRY(row);
        if (!*row)
            return {};
        for (int column = 0; column < columns; ++column)
            addColumn(digest, statement->raw(), column);
    }
}

Problem inTable(Problem problem, const std::string& table)
{
    problem.what = Phrase::tr("in the table %1: %2").with(table, problem.what);
    return problem;
}

Result<std::string> digestOf(const Database& database, const std::vector<SealedTable>& tables)
{
    Digest digest;
    for (const SealedTable& table : tables) {
        if (Done added = addTable(digest, database, table.name); !added)
            return failure(inTable(added.error(), table.name));
    }
    return digest.hex();
}

/// The digest reads each table by its key. A row that is looked up through an index is the same
/// only if the index fits its table.
Result<bool> indexesFit(const Database& database, const std::vector<SealedTable>& tables)
{
    for (const SealedTable& table : tables) {
        if (!table.hasIndex)
            continue;
        auto findings = integrityFindings(database, table.name);
        HOLDBAND_TRY(findings);
        if (!findings->empty())
            return false;
    }
    return true;
}

} // namespace

Done renewSeal(const Database& database)
{
    auto tables = sealedTables(database);
    HOLDBAND_TRY(tables);
    auto now = digestOf(database, *tables);
    HOLDBAND_TRY(now);
    auto statement =
        database.prepare<BulkStatement>("INSERT OR REPLACE INTO seal (id, digest) VALUES (1, ?)");
    HOLDBAND_TRY(statement);
    statement->bindAll(*now);
    return statement->run();
}

Result<bool> sealHolds(const Database& database)
{
    // Else what another program saves between two statements would look like damage.
    auto steady = Transaction::beginReading(database);
    HOLDBAND_TRY(steady);
    auto tables = sealedTables(database);
    HOLDBAND_TRY(tables);
    auto now = digestOf(database, *tables);
    HOLDBAND_TRY(now);
    auto stored = database.text("SELECT digest FROM seal WHERE id = 1");
    HOLDBAND_TRY(stored);
    if (*now != *stored)
        return false;
    return indexesFit(database, *tables);
}

} // namespace holdband::store
