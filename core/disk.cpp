#include "core/disk.h"

#include <atomic>
#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <filesystem>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>
#include <vector>

namespace holdband {

namespace fs = std::filesystem;

namespace {

int systemOpen(const char* path, int flags, mode_t mode)
{
    return ::open(path, flags, mode);
}

int systemRenameToNew(const char* from, const char* to)
{
    return ::renameat2(AT_FDCWD, from, AT_FDCWD, to, RENAME_NOREPLACE);
}

constexpr DiskCalls systemCalls{
    systemOpen,        ::read,      ::write,     ::fsync, ::close,
    systemRenameToNew, std::rename, std::remove, ::mkdir,
};

std::atomic<const DiskCalls*> callsInUse{&systemCalls};

} // namespace

const DiskCalls& disk()
{
    return *callsInUse.load();
}

const DiskCalls& systemDisk()
{
    return systemCalls;
}

void replaceDisk(const DiskCalls* calls)
{
    callsInUse = calls ? calls : &systemCalls;
}

std::string folderOf(const std::string& path)
{
    const std::string folder = fs::path(path).parent_path().string();
    return folder.empty() ? "." : folder;
}

bool syncFolder(const std::string& folder)
{
    const int descriptor = disk().open(folder.c_str(), O_RDONLY | O_CLOEXEC | O_DIRECTORY, 0);
    if (descriptor < 0)
        return false;
    const bool synced = disk().sync(descriptor) == 0 || errno == EINVAL;
    const int why = errno;
    const bool closed = disk().close(descriptor) == 0;
    if (!synced)
        errno = why;
    return synced && closed;
}

bool makeFolders(const std::string& folder)
{
    std::error_code error;
    if (fs::is_directory(folder, error))
        return true;
    fs::path above = fs::path(folder).parent_path();
    if (!above.empty() && above != folder && !makeFolders(above.string()))
        return false;
    if (fs::path(folder).filename().empty()) // "a/b/" is "a/b"
        return true;
    if (disk().makeFolder(folder.c_str(), 0777) != 0 && !fs::is_directory(folder, error))
        return false;
    return syncFolder(folderOf(folder));
}

bool removeWhole(const std::string& path)
{
    std::error_code error;
    const fs::file_status status = fs::symlink_status(path, error);
    if (status.type() == fs::file_type::not_found)
        return true;
    bool all = true;
    if (fs::is_directory(status)) {
        std::vector<std::string> inside;
        for (fs::directory_iterator entry(path, error); !error && entry != fs::directory_iterator();
             entry.increment(error))
            inside.push_back(entry->path().string());
        for (const std::string& each : inside)
            all = removeWhole(each) && all;
    }
    return disk().remove(path.c_str()) == 0 && all;
}

} // namespace holdband
