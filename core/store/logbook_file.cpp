#include "core/store/logbook_file.h"

#include "core/store/backup.h"
#include "core/store/equipment.h"
#include "core/store/schema.h"
#include "core/store/seal.h"

#include <QFileInfo>
#include <QLockFile>
#include <filesystem>

namespace holdband::store {

namespace fs = std::filesystem;

namespace {

std::string lockPath(const std::string& path)
{
    std::error_code ignored;
    const fs::path real = fs::weakly_canonical(path, ignored);
    return (ignored ? fs::path(path) : real).string() + ".lock";
}

Problem heldElsewhere(const std::string& path, const QLockFile& lock)
{
    qint64 pid = 0;
    QString host;
    QString program;
    std::string holder = "another program";
    if (lock.getLockInfo(&pid, &host, &program))
        holder = program.toStdString() + " (process " + std::to_string(pid) + " on " +
                 host.toStdString() + ")";
    return {ProblemKind::file, "the logbook is open for writing in " + holder, path,
            "close it there first; reading commands work meanwhile"};
}

Result<std::unique_ptr<QLockFile>> lockForWriting(const std::string& path)
{
    auto lock = std::make_unique<QLockFile>(QString::fromStdString(lockPath(path)));
    lock->setStaleLockTime(0); // a lock goes stale only when its process is gone
    if (lock->tryLock(0))
        return lock;
    if (lock->error() == QLockFile::LockFailedError)
        return failure(heldElsewhere(path, *lock));
    return fileProblem("the folder can't be written, so the logbook can't be locked", path,
                       "check the folder's permissions");
}

Done checkRegularFile(const std::string& path)
{
    std::error_code error;
    const fs::file_status status = fs::status(path, error);
    if (!fs::exists(status))
        return fileProblem("there is no such logbook", path, "make one with `holdband new`");
    if (fs::is_directory(status))
        return fileProblem("this is a folder, no logbook", path);
    if (!fs::is_regular_file(status))
        return fileProblem("this is no regular file", path);
    if (fs::file_size(path, error) == 0)
        return fileProblem("the file is empty: it is no logbook", path,
                           "make one with `holdband new`");
    return {};
}

/// A reader can't roll back what a killed writer left behind; a writer can, unless one is at work.
Result<std::unique_ptr<Database>> openForReading(const std::string& path)
{
    auto database = Database::open(path, Access::read, false);
    HOLDBAND_TRY(database);
    if ((*database)->integer("SELECT count(*) FROM sqlite_schema") ||
        !fs::exists(path + "-journal"))
        return database;
    auto lock = lockForWriting(path);
    HOLDBAND_TRY(lock);
    {
        auto writer = Database::open(path, Access::write, false);
        HOLDBAND_TRY(writer);
        HOLDBAND_TRY((*writer)->integer("SELECT count(*) FROM sqlite_schema"));
    }
    return Database::open(path, Access::read, false);
}

Done bringUpToDate(const Database& database)
{
    const auto& steps = schemaSteps();
    auto version = database.integer("PRAGMA user_version");
    HOLDBAND_TRY(version);
    if (*version == steps.back().version)
        return {};
    HOLDBAND_TRY(
        backupTo(database, database.path() + ".format" + std::to_string(*version) + ".backup"));
    return migrate(database, steps);
}

} // namespace

Instant systemNow()
{
    return std::chrono::floor<Milliseconds>(std::chrono::system_clock::now());
}

LogbookFile::LogbookFile(std::unique_ptr<Database> database, std::unique_ptr<QLockFile> lock,
                         Access access, Clock clock)
    : m_lock(std::move(lock)), m_database(std::move(database)), m_access(access),
      m_clock(std::move(clock))
{
}

LogbookFile::~LogbookFile() = default;

Result<std::unique_ptr<LogbookFile>>
LogbookFile::create(const std::string& path, const LogbookSettings& settings, Clock clock)
{
    std::error_code error;
    if (fs::exists(fs::symlink_status(path, error)))
        return fileProblem("something stands there already; nothing was changed", path,
                           "choose another name");
    auto lock = lockForWriting(path);
    HOLDBAND_TRY(lock);
    const auto build = [&]() -> Result<std::unique_ptr<LogbookFile>> {
        auto database = Database::open(path, Access::write, true);
        HOLDBAND_TRY(database);
        HOLDBAND_TRY(migrate(**database, schemaSteps()));
        std::unique_ptr<LogbookFile> file(new LogbookFile(std::move(*database), std::move(*lock),
                                                          Access::write, std::move(clock)));
        auto change = Change::begin(*file, "made the logbook");
        HOLDBAND_TRY(change);
        HOLDBAND_TRY(writeSettings(*change, settings));
        HOLDBAND_TRY(change->commit());
        return file;
    };
    auto built = build();
    if (!built)
        fs::remove(path, error);
    return built;
}

Result<std::unique_ptr<LogbookFile>> LogbookFile::open(const std::string& path, Access access,
                                                       Clock clock)
{
    HOLDBAND_TRY(checkRegularFile(path));
    std::unique_ptr<QLockFile> lock;
    if (access == Access::write) {
        auto locked = lockForWriting(path);
        HOLDBAND_TRY(locked);
        lock = std::move(*locked);
    }
    auto database =
        access == Access::write ? Database::open(path, access, false) : openForReading(path);
    HOLDBAND_TRY(database);
    HOLDBAND_TRY(checkIdentity(**database, schemaSteps().back().version));
    if (access == Access::write)
        HOLDBAND_TRY(bringUpToDate(**database));
    return std::unique_ptr<LogbookFile>(
        new LogbookFile(std::move(*database), std::move(lock), access, std::move(clock)));
}

Result<Change> Change::begin(const LogbookFile& file, const std::string& what)
{
    auto transaction = Transaction::begin(file.database());
    HOLDBAND_TRY(transaction);
    auto statement = file.database().prepare("INSERT INTO acts (at, what) VALUES (?, ?)");
    HOLDBAND_TRY(statement);
    const Instant now = file.now();
    statement->bindAll(toMs(now), what);
    HOLDBAND_TRY(statement->run());
    return Change(file, std::move(*transaction), ActId{file.database().lastRowId()}, now);
}

Done Change::commit()
{
    HOLDBAND_TRY(renewSeal(database()));
    return m_transaction.commit();
}

} // namespace holdband::store
