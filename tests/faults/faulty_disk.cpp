#include "tests/faults/faulty_disk.h"

#include "tests/faults/fault_engine.h"

#include <cerrno>
#include <fcntl.h>
#include <map>
#include <string_view>
#include <sys/stat.h>
#include <unistd.h>

namespace holdband::faults {

namespace {

/// The paths of open files and folders.
std::map<int, std::string>& openPaths()
{
    static std::map<int, std::string> paths;
    return paths;
}

FaultEngine& engine()
{
    return FaultEngine::only();
}

int failed()
{
    errno = engine().isDead() ? EIO : engine().error();
    return -1;
}

bool exists(const char* path)
{
    return ::access(path, F_OK) == 0;
}

int openIt(const char* path, int flags, mode_t mode)
{
    if (!engine().watches(path))
        return systemDisk().open(path, flags, mode);
    const bool creates = (flags & O_CREAT) != 0 && !exists(path);
    const bool fails = engine().next(creates ? Call::create : Call::open) != Answer::go;
    if (creates && engine().model())
        engine().model()->created(path);
    if (fails)
        return failed();
    const int descriptor = systemDisk().open(path, flags, mode);
    if (descriptor >= 0)
        openPaths()[descriptor] = path;
    return descriptor;
}

ssize_t readIt(int descriptor, void* bytes, std::size_t count)
{
    if (openPaths().contains(descriptor) && engine().next(Call::read) != Answer::go)
        return failed();
    return systemDisk().read(descriptor, bytes, count);
}

ssize_t writeIt(int descriptor, const void* bytes, std::size_t count)
{
    const auto path = openPaths().find(descriptor);
    if (path == openPaths().end())
        return systemDisk().write(descriptor, bytes, count);
    const Answer answer = engine().next(Call::write);
    if (engine().model())
        engine().model()->wrote(path->second, ::lseek(descriptor, 0, SEEK_CUR),
                                {static_cast<const char*>(bytes), count});
    if (answer == Answer::half)
        (void)systemDisk().write(descriptor, bytes, count / 2);
    return answer == Answer::go ? systemDisk().write(descriptor, bytes, count) : failed();
}

int syncIt(int descriptor)
{
    const auto path = openPaths().find(descriptor);
    if (path == openPaths().end())
        return systemDisk().sync(descriptor);
    if (engine().next(Call::sync) != Answer::go)
        return failed();
    struct stat about {};
    if (engine().model() && ::fstat(descriptor, &about) == 0)
        S_ISDIR(about.st_mode) ? engine().model()->folderSynced(path->second)
                               : engine().model()->synced(path->second);
    return 0;
}

int closeIt(int descriptor)
{
    openPaths().erase(descriptor);
    return systemDisk().close(descriptor);
}

template <typename Rename>
int renameIt(const char* from, const char* to, Rename rename)
{
    if (!engine().watches(from))
        return rename(from, to);
    const bool fails = engine().next(Call::rename) != Answer::go;
    if (engine().model())
        engine().model()->renamed(from, to);
    return fails ? failed() : rename(from, to);
}

int renameToNewIt(const char* from, const char* to)
{
    return renameIt(from, to, systemDisk().renameToNew);
}

int renameAnyway(const char* from, const char* to)
{
    return renameIt(from, to, systemDisk().rename);
}

int removeIt(const char* path)
{
    if (!engine().watches(path))
        return systemDisk().remove(path);
    const bool fails = engine().next(Call::remove) != Answer::go;
    if (engine().model())
        engine().model()->removed(path);
    return fails ? failed() : systemDisk().remove(path);
}

int makeFolderIt(const char* path, mode_t mode)
{
    if (!engine().watches(path))
        return systemDisk().makeFolder(path, mode);
    const bool fails = engine().next(Call::makeFolder) != Answer::go;
    if (engine().model())
        engine().model()->madeFolder(path);
    return fails ? failed() : systemDisk().makeFolder(path, mode);
}

} // namespace

const DiskCalls& faultyDisk()
{
    static constexpr DiskCalls calls{openIt,        readIt,       writeIt,  syncIt,      closeIt,
                                     renameToNewIt, renameAnyway, removeIt, makeFolderIt};
    return calls;
}

} // namespace holdband::faults
