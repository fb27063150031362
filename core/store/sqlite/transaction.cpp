#include "core/store/sqlite/transaction.h"

#include "core/store/sqlite/database.h"
#include "core/store/sqlite/sqlite_error.h"
#include "core/text/phrase.h"

namespace holdband::store {

namespace {

/// The journal is gone, so that the change is in the file; but a power loss could bring the journal
/// back, and with it the state before.
Problem perhapsSaved(const std::string& path)
{
    return {ProblemKind::file,
            Phrase::tr("the change may have been saved, but the disk did not confirm it"), path,
            Phrase::tr("check the disk; then look whether the change is there")};
}

} // namespace

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
    Done committed = m_database->execute("COMMIT");
    if (committed)
        m_database = nullptr;
    else if (sqlite3_extended_errcode(m_database->raw()) == SQLITE_IOERR_DIR_FSYNC)
        return failure(perhapsSaved(m_database->path()));
    return committed;
}

} // namespace holdband::store
