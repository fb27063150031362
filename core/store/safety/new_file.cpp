#include "core/store/safety/new_file.h"

#include "core/disk.h"
#include "core/text/phrase.h"

#include <atomic>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <optional>
#include <sys/stat.h>
#include <unistd.h>

namespace holdband::store {

namespace fs = std::filesystem;

namespace {

/// The process id in an unfinished file's name; absent if the name has another form.
std::optional<pid_t> writerOf(const std::string& name)
{
    int process = 0;
    int number = 0;
    int end = 0;
    if (std::sscanf(name.c_str(), ".holdband-%d-%d.part%n", &process, &number, &end) != 2 ||
        end == 0 || process <= 0)
        return std::nullopt;
    const std::string rest = name.substr(static_cast<std::size_t>(end));
    return rest.empty() || rest == "-journal" ? std::optional(pid_t{process}) : std::nullopt;
}

Done syncFolderOf(const std::string& path)
{
    if (syncFolder(folderOf(path)))
        return {};
    return fileProblem(Phrase::tr("the file is written, but its folder could not be synced: %1; it "
                                  "may be missing after a power loss")
                           .with(std::strerror(errno)),
                       path, Phrase::tr("check the disk"));
}

void removeUnfinished(const std::string& unfinished)
{
    (void)disk().remove(unfinished.c_str());
    (void)disk().remove((unfinished + "-journal").c_str()); // may be left after a full disk
}

tl::unexpected<Problem> namingFailed(const std::string& path)
{
    return fileProblem(Phrase::tr("the file can't be named: %1").with(std::strerror(errno)), path);
}

} // namespace

std::string temporaryNameFor(const std::string& path)
{
    static std::atomic<unsigned> count{0};
    for (;;) {
        const std::string name =
            ".holdband-" + std::to_string(::getpid()) + "-" + std::to_string(++count) + ".part";
        const fs::path unfinished = fs::path(path).parent_path() / name;
        std::error_code unknown;
        if (!fs::exists(fs::symlink_status(unfinished, unknown)))
            return unfinished.string();
    }
}

void clearAbandoned(const std::string& path)
{
    const fs::path folder = fs::path(path).parent_path();
    std::error_code error;
    fs::directory_iterator entry(folder.empty() ? fs::path(".") : folder, error);
    for (; !error && entry != fs::directory_iterator(); entry.increment(error)) {
        std::error_code unknown;
        const auto written = entry->last_write_time(unknown);
        if (unknown || fs::file_time_type::clock::now() - written < std::chrono::hours{24})
            continue;
        const std::optional<pid_t> writer = writerOf(entry->path().filename().string());
        if (writer && ::kill(*writer, 0) != 0 && errno == ESRCH)
            (void)disk().remove(entry->path().c_str());
    }
}

bool syncFile(const std::string& path)
{
    const int descriptor = disk().open(path.c_str(), O_RDONLY | O_CLOEXEC, 0);
    if (descriptor < 0)
        return false;
    const bool synced = disk().sync(descriptor) == 0;
    return disk().close(descriptor) == 0 && synced;
}

Done refuseTakenName(const std::string& path, const std::string& remedy)
{
    std::error_code error;
    if (fs::symlink_status(path, error).type() == fs::file_type::not_found)
        return {};
    if (error)
        return fileProblem(Phrase::tr("the file can't be written: %1").with(error.message()), path,
                           Phrase::tr("choose another name"));
    return fileProblem(Phrase::tr("something with this name already exists; nothing was changed"),
                       path, remedy);
}

Done nameNewFile(const std::string& unfinished, const std::string& path)
{
    if (disk().renameToNew(unfinished.c_str(), path.c_str()) == 0)
        return syncFolderOf(path);
    // The name is taken, or the file system can't refuse to replace: check first, then rename.
    HOLDBAND_TRY(refuseTakenName(path, Phrase::tr("choose another name")));
    if (disk().rename(unfinished.c_str(), path.c_str()) != 0)
        return namingFailed(path);
    return syncFolderOf(path);
}

Done replaceFile(const std::string& unfinished, const std::string& path)
{
    struct stat old {};
    if (::stat(path.c_str(), &old) == 0)
        // The new file is good even if this fails.
        (void)::chmod(unfinished.c_str(), old.st_mode & 0777);
    if (disk().rename(unfinished.c_str(), path.c_str()) != 0)
        return namingFailed(path);
    return syncFolderOf(path);
}

Done writeBeside(const std::string& path,
                 const std::function<Done(const std::string& unfinished)>& write,
                 Done (*name)(const std::string& unfinished, const std::string& path))
{
    const std::string unfinished = temporaryNameFor(path);
    Done done = write(unfinished);
    if (done)
        done = name(unfinished, path);
    if (!done) {
        removeUnfinished(unfinished); // absent where only the folder could not be synced
        if (done.error().place == unfinished)
            done.error().place = path;
    }
    return done;
}

} // namespace holdband::store
