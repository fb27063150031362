#include "core/store/sqlite/sqlite.h"

#include "core/text/phrase.h"

#include <cmath>
#include <filesystem>

namespace holdband::store {

namespace {

constexpr int busyWaitMs = 5000;

Phrase lostItsName()
{
    return Phrase::tr("the logbook was deleted, moved or replaced while it was open; nothing was "
                      "saved");
}

std::string describe(int code, const char* message)
{
    if (code == SQLITE_READONLY_DBMOVED)
        return lostItsName();
    switch (code & 0xff) {
    case SQLITE_NOTADB:
        return Phrase::tr("this is no logbook (it is not an SQLite file)");
    case SQLITE_CORRUPT:
        return Phrase::tr("the file is damaged");
    case SQLITE_FULL:
        return Phrase::tr("the disk is full; nothing was changed");
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return Phrase::tr("the file can't be written");
    case SQLITE_CANTOPEN:
        return Phrase::tr("the file can't be opened");
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return Phrase::tr("another program is using the file");
    case SQLITE_IOERR:
        return Phrase::tr("reading or writing the file failed (%1)").with(message);
    default:
        return message;
    }
}

std::string absolutePath(const std::string& path)
{
    std::error_code error;
    const std::filesystem::path absolute = std::filesystem::absolute(path, error);
    return error ? path : absolute.string();
}

} // namespace

void Statement::note(int code)
{
    if (m_bindError == SQLITE_OK)
        m_bindError = code;
}

void Statement::bind(int index, std::int64_t value)
{
    note(sqlite3_bind_int64(raw(), index, value));
}

void Statement::bind(int index, double value)
{
    note(sqlite3_bind_double(raw(), index, value));
}

void Statement::bind(int index, std::string_view value)
{
    note(sqlite3_bind_text64(raw(), index, value.data(), value.size(), SQLITE_TRANSIENT,
                             SQLITE_UTF8));
}

void Statement::bindBytes(int index, std::string_view bytes)
{
    note(sqlite3_bind_blob64(raw(), index, bytes.data(), bytes.size(), SQLITE_TRANSIENT));
}

Result<bool> Statement::step()
{
    if (m_bindError != SQLITE_OK)
        return failure(m_database->problem(m_bindError));
    if (!m_impossible.empty())
        return fileProblem(Phrase::tr("the file is damaged: it holds a value that can't be (%1)")
                               .with(m_impossible),
                           m_database->path());
    const int code = sqlite3_step(raw());
    if (code == SQLITE_ROW)
        return true;
    if (code == SQLITE_DONE)
        return false;
    return failure(m_database->problem(code));
}

Done Statement::run()
{
    auto stepped = step();
    reset();
    HOLDBAND_TRY(stepped);
    return {};
}

void Statement::reset()
{
    sqlite3_reset(raw());
    sqlite3_clear_bindings(raw());
    m_bindError = SQLITE_OK;
    m_impossible.clear();
}

bool Statement::isNull(int column) const
{
    return sqlite3_column_type(raw(), column) == SQLITE_NULL;
}

std::int64_t Statement::integer(int column) const
{
    return sqlite3_column_int64(raw(), column);
}

double Statement::real(int column) const
{
    const double value = sqlite3_column_double(raw(), column);
    if (std::isfinite(value))
        return value;
    noteImpossible(column);
    return 0.0;
}

Instant Statement::instant(int column) const
{
    const Instant at = instantFromMs(integer(column));
    if (at >= earliestInstant && at <= latestInstant)
        return at;
    noteImpossible(column);
    return {};
}

void Statement::noteImpossible(int column) const
{
    const char* name = sqlite3_column_name(raw(), column);
    if (m_impossible.empty())
        m_impossible = name ? name : "?";
}

std::string Statement::text(int column) const
{
    const auto* bytes = reinterpret_cast<const char*>(sqlite3_column_text(raw(), column));
    return bytes ? std::string(bytes, static_cast<std::size_t>(sqlite3_column_bytes(raw(), column)))
                 : std::string();
}

std::string Statement::bytes(int column) const
{
    const auto* bytes = static_cast<const char*>(sqlite3_column_blob(raw(), column));
    return bytes ? std::string(bytes, static_cast<std::size_t>(sqlite3_column_bytes(raw(), column)))
                 : std::string();
}

std::optional<std::int64_t> Statement::optionalInteger(int column) const
{
    return isNull(column) ? std::nullopt : std::optional(integer(column));
}

std::optional<double> Statement::optionalReal(int column) const
{
    return isNull(column) ? std::nullopt : std::optional(real(column));
}

std::optional<Instant> Statement::optionalInstant(int column) const
{
    return isNull(column) ? std::nullopt : std::optional(instant(column));
}

Result<std::unique_ptr<Database>> Database::open(const std::string& path, Access access,
                                                 bool create)
{
    int flags = access == Access::read ? SQLITE_OPEN_READONLY : SQLITE_OPEN_READWRITE;
    if (create)
        flags |= SQLITE_OPEN_CREATE;
    sqlite3* handle = nullptr;
    // Absolute, so that no name is mistaken for a URI ("file:…") or for a database in memory.
    const std::string absolute = absolutePath(path);
    const int code = sqlite3_open_v2(absolute.c_str(), &handle,
                                     flags | SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE, nullptr);
    std::unique_ptr<Database> database(new Database(path, handle));
    if (code != SQLITE_OK)
        return failure(database->problem(code));
    HOLDBAND_TRY(database->guard(access));
    return database;
}

Database::~Database()
{
    sqlite3_close_v2(m_handle);
}

Done Database::guard(Access access) const
{
    sqlite3_busy_timeout(m_handle, busyWaitMs);
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

Result<Statement> Database::prepare(std::string_view sql) const
{
    sqlite3_stmt* statement = nullptr;
    const int code =
        sqlite3_prepare_v2(m_handle, sql.data(), static_cast<int>(sql.size()), &statement, nullptr);
    if (code != SQLITE_OK)
        return failure(problem(code));
    return Statement(statement, this);
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
    return {ProblemKind::file, describe(code, sqlite3_errmsg(m_handle)), m_path, {}};
}

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
