#include "core/store/safety/backup.h"

#include "core/store/safety/new_file.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <vector>

namespace holdband::store {

namespace fs = std::filesystem;

namespace {

Done copyPages(const Database& from, const Database& to)
{
    sqlite3_backup* backup = sqlite3_backup_init(to.raw(), "main", from.raw(), "main");
    if (!backup)
        return failure(to.problem(sqlite3_extended_errcode(to.raw())));
    const int stepped = sqlite3_backup_step(backup, -1);
    const int finished = sqlite3_backup_finish(backup);
    if (stepped != SQLITE_DONE || finished != SQLITE_OK)
        return failure(to.problem(stepped == SQLITE_DONE ? finished : stepped));
    auto sound = to.text("PRAGMA quick_check(1)");
    HOLDBAND_TRY(sound);
    if (*sound != "ok")
        return fileProblem(Phrase::tr("the copy is damaged"), to.path(),
                           Phrase::tr("check the disk"));
    return {};
}

/// The new file is closed when this returns.
Done copyTo(const std::string& file, const Database& from)
{
    auto to = Database::open(file, Access::write, true);
    HOLDBAND_TRY(to);
    return copyPages(from, **to);
}

/// The parts of a logbook's header that say how often and by which SQLite it was written: a copy of
/// the same content differs there (https://www.sqlite.org/fileformat2.html, the database header:
/// file change counter at 24, schema cookie at 40, version-valid-for and version number at 92).
bool countsNoContent(std::int64_t at)
{
    return (at >= 24 && at < 28) || (at >= 40 && at < 44) || (at >= 92 && at < 100);
}

/// Whether the copy's bytes equal the logbook's, except those fields. The logbook is read through
/// its connection: opening and closing its file a second time would drop SQLite's locks.
bool sameContent(const Database& logbook, const std::string& copy)
{
    sqlite3_file* file = nullptr;
    sqlite3_int64 size = 0;
    sqlite3_file_control(logbook.raw(), "main", SQLITE_FCNTL_FILE_POINTER, &file);
    std::error_code error;
    if (!file || file->pMethods->xFileSize(file, &size) != SQLITE_OK ||
        fs::file_size(copy, error) != static_cast<std::uintmax_t>(size) || error)
        return false;
    std::ifstream other(copy, std::ios::binary);
    std::vector<char> ours(1 << 16);
    std::vector<char> theirs(ours.size());
    for (std::int64_t at = 0; at < size; at += static_cast<std::int64_t>(ours.size())) {
        const auto count =
            std::min<std::int64_t>(size - at, static_cast<std::int64_t>(ours.size()));
        if (file->pMethods->xRead(file, ours.data(), static_cast<int>(count), at) != SQLITE_OK ||
            !other.read(theirs.data(), count))
            return false;
        for (std::int64_t i = 0; i < count; ++i) {
            const auto place = static_cast<std::size_t>(i);
            if (ours[place] != theirs[place] && !countsNoContent(at + i))
                return false;
        }
    }
    return size > 0;
}

} // namespace

bool readsWhole(const Database& database)
{
    sqlite3_file* file = nullptr;
    sqlite3_int64 size = 0;
    sqlite3_file_control(database.raw(), "main", SQLITE_FCNTL_FILE_POINTER, &file);
    if (!file || !file->pMethods || file->pMethods->xFileSize(file, &size) != SQLITE_OK)
        return false;
    std::vector<char> bytes(1 << 16);
    for (sqlite3_int64 at = 0; at < size; at += static_cast<sqlite3_int64>(bytes.size())) {
        const auto count = std::min<sqlite3_int64>(size - at, static_cast<int>(bytes.size()));
        if (file->pMethods->xRead(file, bytes.data(), static_cast<int>(count), at) != SQLITE_OK)
            return false;
    }
    return true;
}

Done backupTo(const Database& database, const std::string& target)
{
    HOLDBAND_TRY(refuseTakenName(target, Phrase::tr("choose another name")));
    const auto copy = [&database, &target](const std::string& unfinished) -> Done {
        HOLDBAND_TRY(copyTo(unfinished, database));
        if (!syncFile(unfinished))
            return fileProblem(Phrase::tr("the copy could not be written to the disk"), target);
        return {};
    };
    return writeBeside(target, copy, nameNewFile);
}

Result<std::string> backupBeside(const Database& database, const std::string& target)
{
    constexpr int mostCopies = 1000;
    std::string name = target;
    for (int number = 2; number < mostCopies; ++number) {
        std::error_code error;
        if (fs::symlink_status(name, error).type() == fs::file_type::not_found)
            break;
        if (sameContent(database, name))
            return name;
        name = target + "-" + std::to_string(number);
    }
    HOLDBAND_TRY(backupTo(database, name));
    return name;
}

} // namespace holdband::store
