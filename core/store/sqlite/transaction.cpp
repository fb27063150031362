#include "core/store/sqlite/transaction.h"

#include "core/store/sqlite/database.h"
#include "core/store/sqlite/sqlite_error.h"

namespace holdband::store {

Result<Transaction> Transaction::begin(const Database& database)
{
    HOLDBAND_TRY(database.execute("BEGIN IMMEDIATE"));
    return Transaction(&database);
}

Result<Transaction> Transaction::beginReading(const Database& database)
{
    if (sqlite3_get_autocommit(database.raw()) == 0)
        return Transaction(nullptr);
    HOLDBAND_TRY(database.execute("BEGIN"));
    return Transaction(&database);
}

Transaction::~Transaction()
{
    // A failed statement may already have rolled back; then there is nothing to undo.
    if (m_database && sqlite3_get_autocommit(m_database->raw()) == 0)
        sqlite3_exec(m_database->raw(), "ROLLBACK", nullptr, nullptr, nullptr);
}

Done Transaction::commit()
{
    if (!m_database)
        return {};
    // If the file has been deleted or replaced, a change to it would be lost when the program
    // ends.
    int moved = 0;
    sqlite3_file_control(m_database->raw(), "main", SQLITE_FCNTL_HAS_MOVED, &moved);
    if (moved != 0)
        return fileProblem(lostItsName(), m_database->path(),
                           Phrase::tr("move it back, or open the one that is there now"));
    HOLDBAND_TRY(m_database->execute("COMMIT"));
    m_database = nullptr;
    return {};
}

} // namespace holdband::store
