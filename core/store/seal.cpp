#include "core/store/seal.h"

#include <QCryptographicHash>
#include <vector>

namespace holdband::store {

namespace {

Result<std::vector<std::string>> sealedTables(const Database& database)
{
    auto statement = database.prepare(
        "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' "
        "AND name NOT IN ('readings', 'aside_readings', 'seal', 'act_changes', 'log_maps', "
        "'watches') "
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

void addNumber(QCryptographicHash& hash, std::int64_t number)
{
    hash.addData(QByteArrayView(reinterpret_cast<const char*>(&number), sizeof number));
}

void addColumn(QCryptographicHash& hash, sqlite3_stmt* statement, int column)
{
    const int type = sqlite3_column_type(statement, column);
    addNumber(hash, type);
    if (type == SQLITE_NULL)
        return;
    // Numbers are hashed as the text SQLite makes of them except reals, whose bits count.
    if (type == SQLITE_FLOAT) {
        const double value = sqlite3_column_double(statement, column);
        hash.addData(QByteArrayView(reinterpret_cast<const char*>(&value), sizeof value));
        return;
    }
    if (type == SQLITE_INTEGER)
        return addNumber(hash, sqlite3_column_int64(statement, column));
    const void* bytes = sqlite3_column_blob(statement, column);
    const int size = sqlite3_column_bytes(statement, column);
    addNumber(hash, size);
    hash.addData(QByteArrayView(static_cast<const char*>(bytes), size));
}

Done addTable(QCryptographicHash& hash, const Database& database, const std::string& table)
{
    // Without an ORDER BY, SQLite walks the table in the order of its key.
    auto statement = database.prepare("SELECT * FROM \"" + table + "\"");
    HOLDBAND_TRY(statement);
    hash.addData(QByteArrayView(table.data(), static_cast<qsizetype>(table.size())));
    const int columns = sqlite3_column_count(statement->raw());
    for (auto row = statement->step();; row = statement->step()) {
        HOLDBAND_TRY(row);
        if (!*row)
            return {};
        for (int column = 0; column < columns; ++column)
            addColumn(hash, statement->raw(), column);
    }
}

Result<std::string> digest(const Database& database)
{
    auto tables = sealedTables(database);
    HOLDBAND_TRY(tables);
    QCryptographicHash hash(QCryptographicHash::Sha256);
    for (const std::string& table : *tables)
        HOLDBAND_TRY(addTable(hash, database, table));
    return hash.result().toHex().toStdString();
}

} // namespace

Done renewSeal(const Database& database)
{
    auto now = digest(database);
    HOLDBAND_TRY(now);
    auto statement = database.prepare("INSERT OR REPLACE INTO seal (id, digest) VALUES (1, ?)");
    HOLDBAND_TRY(statement);
    statement->bindAll(*now);
    return statement->run();
}

Result<bool> sealHolds(const Database& database)
{
    auto now = digest(database);
    HOLDBAND_TRY(now);
    auto kept = database.text("SELECT digest FROM seal WHERE id = 1");
    HOLDBAND_TRY(kept);
    return *now == *kept;
}

} // namespace holdband::store
