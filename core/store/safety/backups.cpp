#include "core/store/safety/backups.h"

#include "core/digest.h"
#include "core/disk.h"
#include "core/store/safety/backup.h"
#include "core/store/safety/new_file.h"
#include "core/store/safety/seal.h"
#include "core/store/safety/soundness.h"
#include "core/store/safety/writer_lock.h"
#include "core/store/sqlite/schema.h"
#include "core/store/sqlite/schema_check.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <algorithm>
#include <filesystem>

namespace holdband::store {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t stampLength = std::string_view("2026-03-07 07.06 ").size();

std::string stampOf(LocalTime at)
{
    const auto day = std::chrono::floor<std::chrono::days>(at);
    std::string clock = clockText(std::chrono::floor<std::chrono::minutes>(at));
    std::replace(clock.begin(), clock.end(), ':', '.');
    return isoDate(Date(day)) + " " + clock + " ";
}

/// The time at the start of a copy's name; absent for any other file.
std::optional<LocalTime> takenAt(std::string name, const std::string& ending)
{
    if (name.size() != stampLength + ending.size() || !name.ends_with(ending))
        return std::nullopt;
    std::string stamp = name.substr(0, stampLength - 1);
    std::replace(stamp.begin(), stamp.end(), '.', ':');
    const auto at = parseTime(stamp, Zone::utc());
    if (!at)
        return std::nullopt;
    const LocalTime local{at->time_since_epoch()};
    return stampOf(local) == name.substr(0, stampLength) ? std::optional(local) : std::nullopt;
}

std::string fileName(const std::string& logbook)
{
    return fs::path(realPath(logbook)).filename().string();
}

/// Removes a copy that a killed program left unfinished.
void clearUnfinished(const std::string& folder, const std::string& name)
{
    std::error_code error;
    std::vector<fs::path> left;
    for (fs::directory_iterator entry(folder, error); !error && entry != fs::directory_iterator();
         entry.increment(error)) {
        std::string found = entry->path().filename().string();
        for (const char* ending : {".part", ".part-journal"}) {
            if (found.ends_with(ending) &&
                takenAt(found.substr(0, found.size() - std::string_view(ending).size()), name))
                left.push_back(entry->path());
        }
    }
    for (const fs::path& path : left)
        (void)disk().remove(path.c_str());
}

void makeRoom(const std::string& logbook, const std::string& place, LocalTime now)
{
    const std::vector<BackupCopy> copies = listBackups(logbook, place);
    std::vector<DatedCopy> dated;
    for (const BackupCopy& copy : copies)
        dated.push_back({std::chrono::floor<std::chrono::days>(copy.taken), copy.bytes});
    const std::vector<bool> keep =
        copiesToRetain(dated, std::chrono::floor<std::chrono::days>(now));
    for (std::size_t i = 0; i < copies.size(); ++i) {
        if (!keep[i]) // one that can't be removed is tried again tomorrow
            (void)disk().remove(copies[i].path.c_str());
    }
}

bool isSound(const std::string& path)
{
    const auto database = Database::open(path, Access::read, false);
    if (!database)
        return false;
    const int newest = schemaSteps().back().version;
    const auto version = (*database)->integer("PRAGMA user_version");
    if (!version || !checkIdentity(**database, newest) || !checkSchema(**database))
        return false;
    if (*version == newest) {
        const auto damage = findDamage(**database);
        return damage && damage->empty();
    }
    const auto pages = (*database)->text("PRAGMA quick_check(1)");
    const auto seal = sealHolds(**database);
    return pages && *pages == "ok" && seal && *seal;
}

/// Not another program's, a newer one, or one that another program has to itself now.
bool isBroken(const std::string& path)
{
    const auto database = Database::open(path, Access::read, false);
    if (!database)
        return true;
    sqlite3_busy_timeout((*database)->raw(), 0);
    if (!(*database)->execute("SELECT count(*) FROM sqlite_schema") && (*database)->wasBusy())
        return false;
    const auto version = (*database)->integer("PRAGMA user_version");
    const auto id = (*database)->integer("PRAGMA application_id");
    if (!version || !id)
        return true;
    return *id == applicationId && *version <= schemaSteps().back().version && !isSound(path);
}

/// Whether the disk gives all bytes of the file.
bool canBeRead(const std::string& path)
{
    const auto database = Database::open(path, Access::read, false);
    return database && readsWhole(**database);
}

} // namespace

std::string backupFolder(const std::string& logbook, const std::string& place)
{
    const fs::path real = realPath(logbook);
    const std::string own = real.stem().string() + " backups";
    if (place.empty())
        return (real.parent_path() / own).string();
    // Logbooks with the same name from different folders get different folders.
    return (fs::path(place) / (own + " " + digestOf(real.string()).substr(0, 8))).string();
}

std::vector<BackupCopy> listBackups(const std::string& logbook, const std::string& place)
{
    std::vector<BackupCopy> copies;
    const std::string name = fileName(logbook);
    std::error_code error;
    for (fs::directory_iterator entry(backupFolder(logbook, place), error);
         !error && entry != fs::directory_iterator(); entry.increment(error)) {
        std::error_code unreadable;
        const auto taken = takenAt(entry->path().filename().string(), name);
        if (!taken || !entry->is_regular_file(unreadable))
            continue;
        copies.push_back({entry->path().string(), *taken, entry->file_size(unreadable)});
    }
    std::sort(copies.begin(), copies.end(),
              [](const BackupCopy& a, const BackupCopy& b) { return a.taken > b.taken; });
    return copies;
}

Result<BackupCopy> makeBackup(const Database& logbook, const std::string& place, LocalTime now)
{
    const std::string folder = backupFolder(logbook.path(), place);
    const std::string name = fileName(logbook.path());
    const auto sealed = sealHolds(logbook);
    HOLDBAND_TRY(sealed);
    if (!*sealed)
        return fileProblem(
            Phrase::tr("the logbook no longer fits its seal, so no copy was made of it"),
            logbook.path(), Phrase::tr("`holdband check` says more"));
    std::error_code error;
    if (!makeFolders(folder))
        return fileProblem(
            Phrase::tr("the folder for the copies can't be made"), folder,
            Phrase::tr("make room for it there, or choose another place for backups"));
    clearUnfinished(folder, name);
    BackupCopy copy;
    copy.path = (fs::path(folder) / (stampOf(now) + name)).string();
    clearAbandoned(copy.path);
    copy.taken = std::chrono::floor<std::chrono::minutes>(now);
    HOLDBAND_TRY(backupTo(logbook, copy.path));
    copy.bytes = fs::file_size(copy.path, error);
    makeRoom(logbook.path(), place, now);
    return copy;
}

std::vector<BackupCopy> soundBackups(const std::string& logbook, const std::string& place)
{
    std::vector<BackupCopy> copies = listBackups(logbook, place);
    std::erase_if(copies, [](const BackupCopy& copy) { return !isSound(copy.path); });
    return copies;
}

bool needsBackup(const std::string& logbook)
{
    std::error_code error;
    const fs::file_status status = fs::status(logbook, error);
    if (!fs::exists(status))
        return true;
    if (!fs::is_regular_file(status)) // reading a pipe would wait forever
        return false;
    if (fs::file_size(logbook, error) == 0 && !error)
        return true;
    // Not if the disk failed meanwhile.
    return isBroken(logbook) && canBeRead(logbook) && isBroken(logbook);
}

Result<std::string> restoreBeside(const std::string& logbook, const BackupCopy& copy)
{
    const auto database = Database::open(copy.path, Access::read, false);
    HOLDBAND_TRY(database);
    const fs::path real = realPath(logbook);
    std::error_code error;
    fs::path target;
    for (int number = 1; number == 1 || fs::exists(fs::symlink_status(target, error)); ++number) {
        const std::string suffix = number == 1 ? "" : " " + std::to_string(number);
        target = real.parent_path() /
                 (real.stem().string() + " restored" + suffix + real.extension().string());
    }
    HOLDBAND_TRY(backupTo(**database, target.string()));
    return target.string();
}

} // namespace holdband::store
