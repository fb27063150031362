#include "core/store/sqlite/database.h"

#include "core/store/sqlite/driver.h"
#include "core/store/sqlite/sqlite_error.h"
#include "core/text/phrase.h"

#include <QSqlDatabase>
#include <QSqlDriver>
#include <QSqlError>
#include <QSqlQuery>
#include <QThread>
#include <QVariant>
#include <atomic>
#include <filesystem>

namespace holdband::store {

namespace fs = std::filesystem;

namespace {

constexpr int busyWaitMs = 5000;

std::string ownName()
{
    static std::atomic<unsigned> count{0};
    return "holdband-" + std::to_string(++count);
}

/// Absolute, so that no name is mistaken for a URI ("file:…") or for a database in memory.
fs::path absolutePath(const std::string& path)
{
    std::error_code error;
    fs::path absolute = fs::absolute(path, error);
    return error ? fs::path(path) : absolute;
}

sqlite3* handleOf(const QSqlDatabase& connection)
{
    const QVariant handle = connection.driver()->handle();
    const bool is = handle.isValid() && qstrcmp(handle.typeName(), "sqlite3*") == 0;
    return is ? *static_cast<sqlite3* const*>(handle.constData()) : nullptr;
}

} // namespace

Problem invalidValue(const std::string& column, const std::string& path)
{
    return {ProblemKind::file,
            Phrase::tr("the file is damaged: it holds a value that can't be (%1)").with(column),
            path,
            {}};
}

Database::Database(std::string path) : m_path(std::move(path)), m_name(ownName()) {}

Result<std::unique_ptr<Database>> Database::open(const std::string& path, Access access,
                                                 bool create)
{
    HOLDBAND_TRY(checkDriverThere());
    std::unique_ptr<Database> database(new Database(path));
    HOLDBAND_TRY(database->connect(access, create));
    HOLDBAND_TRY(database->guard(access));
    return database;
}

Done Database::connect(Access access, bool create)
{
    const fs::path absolute = absolutePath(m_path);
    std::error_code unknown;
    // The driver makes a file that is not there.
    if (!create && !fs::exists(absolute, unknown))
        return failure(problem(SQLITE_CANTOPEN));
    m_connection = std::make_unique<QSqlDatabase>(
        QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QString::fromStdString(m_name)));
    m_connection->setDatabaseName(QString::fromStdString(absolute.string()));
    m_connection->setConnectOptions(
        QStringLiteral("QSQLITE_BUSY_TIMEOUT=%1%2")
            .arg(QString::number(busyWaitMs),
                 access == Access::read ? QStringLiteral(";QSQLITE_OPEN_READONLY") : QString()));
    if (!m_connection->open())
        return failure(problem(m_connection->lastError()));
    HOLDBAND_TRY(checkDriverFits(*m_connection));
    m_handle = handleOf(*m_connection);
    if (!m_handle)
        return fileProblem(Phrase::tr("the database can't be guarded"), m_path);
    sqlite3_extended_result_codes(m_handle, 1);
    sqlite3_limit(m_handle, SQLITE_LIMIT_LENGTH, mostBytesOfValue);
    return {};
}

Database::~Database()
{
    m_queries.clear();
    if (!m_connection)
        return;
    m_connection.reset(); // the last copy: else it would not be removed
    QSqlDatabase::removeDatabase(QString::fromStdString(m_name));
}

void Database::leaveThread() const
{
    m_queries.clear();
    m_connection->driver()->moveToThread(nullptr);
}

void Database::takeIntoThread() const
{
    m_connection->driver()->moveToThread(QThread::currentThread());
}

Done Database::guard(Access access) const
{
    const bool defensive =
        sqlite3_db_config(m_handle, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr) == SQLITE_OK &&
        sqlite3_db_config(m_handle, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr) == SQLITE_OK &&
        sqlite3_db_config(m_handle, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr) == SQLITE_OK &&
        sqlite3_db_config(m_handle, SQLITE_DBCONFIG_ENABLE_VIEW, 0, nullptr) == SQLITE_OK;
    if (!defensive)
        return fileProblem(Phrase::tr("the database can't be guarded"), m_path);
    HOLDBAND_TRY(execute("PRAGMA foreign_keys = ON; PRAGMA cell_size_check = ON;"));
    if (access == Access::read)
        return {};
    auto journal = text("PRAGMA journal_mode = DELETE");
    HOLDBAND_TRY(journal);
    // A cache spilled into the file during a change would lock readers out until its end.
    HOLDBAND_TRY(execute("PRAGMA synchronous = EXTRA; PRAGMA cache_spill = OFF"));
    auto durability = integer("PRAGMA synchronous");
    HOLDBAND_TRY(durability);
    if (*journal != "delete" || *durability != 3)
        return fileProblem(Phrase::tr("the file can't be written durably"), m_path);
    return {};
}

template <>
Result<Statement> Database::prepare(std::string_view sql) const
{
    if (auto waiting = m_queries.take(sql))
        return Statement(std::move(waiting), this);
    auto query = std::make_unique<QSqlQuery>(*m_connection);
    query->setForwardOnly(true);
    if (!query->prepare(QString::fromUtf8(sql.data(), static_cast<qsizetype>(sql.size()))))
        return failure(problem(query->lastError()));
    return Statement(QueryPool::made(sql, std::move(query)), this);
}

template <>
Result<BulkStatement> Database::prepare(std::string_view sql) const
{
    sqlite3_stmt* statement = nullptr;
    const int code =
        sqlite3_prepare_v2(m_handle, sql.data(), static_cast<int>(sql.size()), &statement, nullptr);
    if (code != SQLITE_OK)
        return failure(problem(code));
    return BulkStatement(statement, this);
}

Done Database::execute(const std::string& script) const
{
    const int code = sqlite3_exec(m_handle, script.c_str(), nullptr, nullptr, nullptr);
    if (code != SQLITE_OK)
        return failure(problem(code));
    return {};
}

Result<std::int64_t> Database::integer(std::string_view sql) const
{
    auto statement = prepare(sql);
    HOLDBAND_TRY(statement);
    HOLDBAND_TRY(statement->step());
    return statement->integer(0);
}

Result<std::string> Database::text(std::string_view sql) const
{
    auto statement = prepare(sql);
    HOLDBAND_TRY(statement);
    HOLDBAND_TRY(statement->step());
    return statement->text(0);
}

Problem Database::problem(int code) const
{
    const char* message = m_handle ? sqlite3_errmsg(m_handle) : sqlite3_errstr(code);
    return {ProblemKind::file, sqliteErrorText(code, message), m_path, sqliteErrorRemedy(code)};
}

Problem Database::problem(const QSqlError& error) const
{
    // Without a code it is Qt's own error, such as a parameter that was not bound.
    const QString message = error.nativeErrorCode().isEmpty() ? error.text() : error.databaseText();
    const int code = error.nativeErrorCode().toInt();
    return {ProblemKind::file, sqliteErrorText(code, message.toStdString()), m_path,
            sqliteErrorRemedy(code)};
}

} // namespace holdband::store
