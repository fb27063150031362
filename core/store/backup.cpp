#include "core/store/backup.h"

#include "core/text/phrase.h"

#include <fcntl.h>
#include <filesystem>
#include <unistd.h>

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

bool syncFile(const std::string& path)
{
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0)
        return false;
    const bool synced = ::fsync(descriptor) == 0;
    return ::close(descriptor) == 0 && synced;
}

void removeUnfinished(const std::string& unfinished)
{
    std::error_code ignored;
    fs::remove(unfinished, ignored);
    fs::remove(unfinished + "-journal", ignored); // a full disk leaves it
}

} // namespace

Done backupTo(const Database& database, const std::string& target)
{
    std::error_code error;
    if (fs::exists(fs::symlink_status(target, error)))
        return fileProblem(Phrase::tr("something stands there already; nothing was changed"),
                           target, Phrase::tr("choose another name"));
    const std::string unfinished = target + ".part";
    removeUnfinished(unfinished);
    const auto copy = [&]() -> Done {
        auto to = Database::open(unfinished, Access::write, true);
        HOLDBAND_TRY(to);
        return copyPages(database, **to);
    };
    Done copied = copy();
    if (copied && !syncFile(unfinished))
        copied = fileProblem(Phrase::tr("the copy could not be brought to the disk"), target);
    if (copied) {
        fs::rename(unfinished, target, error);
        if (error)
            copied = fileProblem(
                Phrase::tr("the copy could not be named: %1").with(error.message()), target);
    }
    if (!copied) {
        removeUnfinished(unfinished);
        if (copied.error().place == unfinished)
            copied.error().place = target;
    }
    return copied;
}

} // namespace holdband::store
