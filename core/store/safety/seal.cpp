#include "core/store/safety/seal.h"

#include "core/digest.h"

#include <vector>

namespace holdband::store {

namespace {

Result<std::vector<std::string>> sealedTables(const Database& database)
{
    auto statement = database.prepare<BulkStatement>(
        "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' "
        "AND name NOT IN ('readings', 'aside_readings', 'block_checksums', 'seal', "
        "'act_changes', 'log_maps', 'watches') "
        "ORDER BY name");
    HOLDBAND_TRY(statement);
    std::vector<std::string> names;
    for (auto row = statement->step();; row = statement->step()) {
        HOLDBAND_TRY(row);
        if (!*row)
            return names;
        names.push_back(statement->text(0));
    }
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

Result<std::string> digestOf(const Database& database)
{
    auto tables = sealedTables(database);
    HOLDBAND_TRY(tables);
    Digest digest;
    for (const std::string& table : *tables)
        HOLDBAND_TRY(addTable(digest, database, table));
    return digest.hex();
}

} // namespace

Done renewSeal(const Database& database)
{
    auto now = digestOf(database);
    HOLDBAND_TRY(now);
    auto statement =
        database.prepare<BulkStatement>("INSERT OR REPLACE INTO seal (id, digest) VALUES (1, ?)");
    HOLDBAND_TRY(statement);
    statement->bindAll(*now);
    return statement->run();
}

Result<bool> sealHolds(const Database& database)
{
    auto now = digestOf(database);
    HOLDBAND_TRY(now);
    auto stored = database.text("SELECT digest FROM seal WHERE id = 1");
    HOLDBAND_TRY(stored);
    return *now == *stored;
}

} // namespace holdband::store
