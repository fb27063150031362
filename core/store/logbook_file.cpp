#include "core/store/logbook_file.h"

#include "core/store/history/entry_changes.h"
#include "core/store/history/history.h"
#include "core/store/history/history_migration.h"
#include "core/store/readings/rows_to_blocks.h"
#include "core/store/records/equipment.h"
#include "core/store/records/zone_offsets.h"
#include "core/store/safety/backup.h"
#include "core/store/safety/daily_backup.h"
#include "core/store/safety/new_file.h"
#include "core/store/safety/seal.h"
#include "core/store/safety/writer_lock.h"
#include "core/store/sqlite/rows.h"
#include "core/store/sqlite/schema.h"
#include "core/store/sqlite/schema_check.h"
#include "core/text/phrase.h"

#include <filesystem>
#include <span>

namespace holdband::store {

namespace fs = std::filesystem;

namespace {

Done refuseNoName(const std::string& path)
{
    if (!path.empty())
        return {};
    return failure({ProblemKind::call,
                    Phrase::tr("the logbook has no name"),
                    {},
                    Phrase::tr("give the logbook's path")});
}

Done checkRegularFile(const std::string& path)
{
    HOLDBAND_TRY(refuseNoName(path));
    std::error_code error;
    const fs::file_status status = fs::status(path, error);
    if (error && status.type() != fs::file_type::not_found)
        return fileProblem(Phrase::tr("the file can't be opened: %1").with(error.message()), path,
                           Phrase::tr("check its name"));
    if (!fs::exists(status))
        return fileProblem(Phrase::tr("there is no such logbook"), path,
                           Phrase::tr("make one with `holdband new`"));
    if (fs::is_directory(status))
        return fileProblem(Phrase::tr("this is a folder, no logbook"), path);
    if (!fs::is_regular_file(status))
        return fileProblem(Phrase::tr("this is no regular file"), path);
    if (fs::file_size(path, error) == 0)
        return fileProblem(Phrase::tr("the file is empty: it is no logbook"), path,
                           Phrase::tr("make one with `holdband new`"));
    return {};
}

constexpr std::int64_t firstWithBlockSums = 5;

bool hasJournal(const std::string& path)
{
    std::error_code unknown; // set if the name is too long to have a journal
    return fs::exists(realPath(path) + "-journal", unknown);
}

/// A reader can't roll back the changes of a killed writer; a writer can, unless another one is
/// active.
Result<std::unique_ptr<Database>> openForReading(const std::string& path)
{
    auto database = Database::open(path, Access::read, false);
    HOLDBAND_TRY(database);
    const Done readable = (*database)->execute("SELECT count(*) FROM sqlite_schema");
    if (!readable && (*database)->wasBusy()) // its program is alive: there is nothing to roll back
        return failure(readable.error());
    if (readable || !hasJournal(path))
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

/// A reader can't bring an older format up to date; a writer can.
Done bringUpToDateFor(const std::string& path, const Database& reader)
{
    auto version = reader.integer("PRAGMA user_version");
    HOLDBAND_TRY(version);
    if (*version == 0 || *version >= schemaSteps().back().version)
        return {};
    auto writer = LogbookFile::open(path, Access::write);
    HOLDBAND_TRY(writer);
    return {};
}

/// Before the step that drops the rows of an older format.
Done bringReadingsUpToDate(const Database& database, std::int64_t version)
{
    if (version >= firstWithBlocks)
        return {};
    HOLDBAND_TRY(applySteps(database, std::span(schemaSteps()).first(firstWithBlocks - 1)));
    if (version < firstWithBlockSums)
        HOLDBAND_TRY(sumRows(database));
    return moveRowsToBlocks(database);
}

Done bringUpToDate(const Database& database)
{
    const auto& steps = schemaSteps();
    auto version = database.integer("PRAGMA user_version");
    HOLDBAND_TRY(version);
    if (*version == steps.back().version)
        return {};
    HOLDBAND_TRY(
        backupBeside(database, database.path() + ".format" + std::to_string(*version) + ".backup"));
    auto sound = sealHolds(database);
    HOLDBAND_TRY(sound);
    auto transaction = Transaction::begin(database);
    HOLDBAND_TRY(transaction);
    HOLDBAND_TRY(bringReadingsUpToDate(database, *version));
    HOLDBAND_TRY(applySteps(database, steps));
    if (*version < firstWithVerbs)
        HOLDBAND_TRY(convertSentences(database));
    HOLDBAND_TRY(storeZoneOffsets(database));
    if (*sound) // a file damaged before the migration must still be reported as damaged
        HOLDBAND_TRY(renewSeal(database));
    HOLDBAND_TRY(transaction->commit());
    if (*version < firstWithBlocks) {
        // The rows took more room. Without space for it the file stays large, which harms nobody.
        static_cast<void>(database.execute("VACUUM"));
    }
    return {};
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

void LogbookFile::useBackups(BackupOptions options)
{
    m_backups = std::make_unique<DailyBackup>(std::move(options));
}

void LogbookFile::beforeChange() const
{
    if (m_backups)
        m_backups->beforeChange(*this);
}

Result<bool> LogbookFile::isSealed() const
{
    auto version = m_database->integer("PRAGMA data_version");
    HOLDBAND_TRY(version);
    if (!m_seal || m_seal->dataVersion != *version) {
        auto holds = sealHolds(*m_database);
        HOLDBAND_TRY(holds);
        m_seal = {*version, *holds};
    }
    return m_seal->holds;
}

Result<std::unique_ptr<LogbookFile>>
LogbookFile::create(const std::string& path, const LogbookSettings& settings, Clock clock)
{
    HOLDBAND_TRY(refuseNoName(path));
    HOLDBAND_TRY(refuseTakenName(path, Phrase::tr("choose another name")));
    auto lock = lockForWriting(path);
    HOLDBAND_TRY(lock);
    HOLDBAND_TRY(refuseTakenName(
        path,
        Phrase::tr(
            "choose another name"))); // another program may have made it before we got the lock
    clearAbandoned(path);
    HOLDBAND_TRY(writeBeside(
        path, [&](const std::string& unfinished) { return makeFile(unfinished, settings, clock); },
        nameNewFile));
    auto database = Database::open(path, Access::write, false);
    if (!database)
        return fileProblem(Phrase::tr("the new logbook is written, but it can't be opened now"),
                           path, Phrase::tr("check the disk, then open it"));
    return std::unique_ptr<LogbookFile>(
        new LogbookFile(std::move(*database), std::move(*lock), Access::write, std::move(clock)));
}

/// The file is closed when this returns.
Done LogbookFile::makeFile(const std::string& path, const LogbookSettings& settings,
                           const Clock& clock)
{
    auto database = Database::open(path, Access::write, true);
    HOLDBAND_TRY(database);
    HOLDBAND_TRY(migrate(**database, schemaSteps()));
    HOLDBAND_TRY((*database)->execute("VACUUM")); // the steps drop tables of earlier ones
    HOLDBAND_TRY(renewSeal(**database));
    const LogbookFile file(std::move(*database), nullptr, Access::write, clock);
    auto change = Change::begin(file, {HistoryVerb::logbookCreated, {}, {}, HistoryKind::own});
    HOLDBAND_TRY(change);
    HOLDBAND_TRY(writeSettings(*change, settings));
    return change->commit();
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
    HOLDBAND_TRY(checkSchema(**database));
    HOLDBAND_TRY(access == Access::write ? bringUpToDate(**database)
                                         : bringUpToDateFor(path, **database));
    return std::unique_ptr<LogbookFile>(
        new LogbookFile(std::move(*database), std::move(lock), access, std::move(clock)));
}

Result<Change> Change::begin(const LogbookFile& file, const HistoryEntry& entry)
{
    file.beforeChange();
    auto transaction = Transaction::begin(file.database());
    HOLDBAND_TRY(transaction);
    auto sealed = file.isSealed();
    HOLDBAND_TRY(sealed);
    const Instant now = file.now();
    auto id = addHistoryEntry(file.database(), entry, now);
    HOLDBAND_TRY(id);
    std::unique_ptr<Recording> recording;
    if (entry.kind == HistoryKind::edit || entry.kind == HistoryKind::own) {
        auto begun = Recording::begin(file.database());
        HOLDBAND_TRY(begun);
        recording = std::make_unique<Recording>(std::move(*begun));
    }
    return Change(file, std::move(*transaction), *id, now, *sealed, std::move(recording));
}

Done Change::storeRecord()
{
    if (!m_recording)
        return {};
    auto changes = m_recording->take();
    HOLDBAND_TRY(changes);
    const bool nothing = changes->empty() && !m_recording->wasPaused();
    m_recording.reset();
    if (nothing) // nothing changed, so the entry is dropped
        return execute(database(), "DELETE FROM acts WHERE id = ?", m_entry.value);
    return changes->empty() ? Done{} : storeChanges(database(), m_entry, *changes);
}

Done Change::commit()
{
    HOLDBAND_TRY(storeRecord());
    HOLDBAND_TRY(storeZoneOffsets(database()));
    if (m_sealed)
        HOLDBAND_TRY(renewSeal(database()));
    return m_transaction.commit();
}

} // namespace holdband::store
