// A connection to one file: a QSqlDatabase with a name of its own, and the settings of every
// logbook. Every result code is checked; a failure is returned as a Problem that names the file,
// by SQLite's extended code. Not for use outside core/store.
#pragma once

#include "core/problem.h"
#include "core/store/sqlite/bulk_statement.h"
#include "core/store/sqlite/query_pool.h"
#include "core/store/sqlite/statement.h"

#include <memory>
#include <sqlite3.h>
#include <string>
#include <string_view>

class QSqlDatabase;
class QSqlError;

namespace holdband::store {

enum class Access { read, write };

/// Belongs to one thread. Statements must not outlive it.
class Database {
public:
    /// Opens an existing file, or creates one if `create` is set. Applies the settings of every
    /// logbook: defensive, no trusted schema, foreign keys, rollback journal, full durability.
    static Result<std::unique_ptr<Database>> open(const std::string& path, Access access,
                                                  bool create);
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    /// Hands the connection from the thread that made it to another one: the first leaves it, the
    /// second takes it. No statement may be open.
    void leaveThread() const;
    void takeIntoThread() const;

    const std::string& path() const { return m_path; }
    /// The same connection as SQLite knows it, for changesets, backups and file controls.
    sqlite3* raw() const { return m_handle; }

    /// A Statement, which may have been prepared before, or with prepare<BulkStatement> one of
    /// those.
    template <typename AnyStatement = Statement>
    Result<AnyStatement> prepare(std::string_view sql) const;
    /// Runs a script of several statements.
    Done execute(const std::string& script) const;
    /// The first column of the first row.
    Result<std::int64_t> integer(std::string_view sql) const;
    Result<std::string> text(std::string_view sql) const;
    std::int64_t lastRowId() const { return sqlite3_last_insert_rowid(m_handle); }
    std::int64_t changes() const { return sqlite3_changes64(m_handle); }

    /// Whether the last call of this connection failed because another program has the file to
    /// itself, as for a moment of each save.
    bool wasBusy() const { return (sqlite3_errcode(m_handle) & 0xff) == SQLITE_BUSY; }
    /// The Problem of the last failed call.
    Problem problem(int code) const;
    Problem problem(const QSqlError& error) const;

private:
    explicit Database(std::string path);
    Done connect(Access access, bool create);
    Done guard(Access access) const;
    friend class Statement;
    void giveBack(QueryPool::Query query) const { m_queries.giveBack(std::move(query)); }

    std::string m_path;
    std::string m_name; ///< of the connection
    std::unique_ptr<QSqlDatabase> m_connection;
    sqlite3* m_handle = nullptr;
    mutable QueryPool m_queries; ///< reading with a statement changes nothing else
};

template <>
Result<Statement> Database::prepare(std::string_view sql) const;
template <>
Result<BulkStatement> Database::prepare(std::string_view sql) const;

} // namespace holdband::store
