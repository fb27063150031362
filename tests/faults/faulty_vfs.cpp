#include "tests/faults/faulty_vfs.h"

#include "tests/faults/fault_engine.h"
#include "tests/faults/faulty_disk.h"

#include <cerrno>
#include <filesystem>
#include <optional>
#include <sqlite3.h>
#include <string>
#include <string_view>
#include <unistd.h>
#include <utility>

namespace holdband::faults {

namespace {

FaultEngine& faults()
{
    return FaultEngine::only();
}

sqlite3_vfs*& systemVfs()
{
    static sqlite3_vfs* vfs = nullptr;
    return vfs;
}

/// SQLite allocates it, and room for the system's file behind it.
struct FaultyFile {
    sqlite3_file base;
    std::string* path; ///< null: not watched
    bool syncsFolder;  ///< at the next sync, as the system's VFS does for a new journal

    sqlite3_file* system() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};

FaultyFile& of(sqlite3_file* file)
{
    return *reinterpret_cast<FaultyFile*>(file);
}

std::string folder(const std::string& path)
{
    return std::filesystem::path(path).parent_path().string();
}

int writeFailed(int code)
{
    return !faults().isDead() && faults().error() == ENOSPC ? SQLITE_FULL : code;
}

int closeFile(sqlite3_file* file)
{
    sqlite3_file* system = of(file).system();
    const int code = system->pMethods ? system->pMethods->xClose(system) : SQLITE_OK;
    delete of(file).path;
    return code;
}

int readFile(sqlite3_file* file, void* bytes, int count, sqlite3_int64 at)
{
    if (of(file).path && faults().next(Call::read) != Answer::go)
        return SQLITE_IOERR_READ;
    return of(file).system()->pMethods->xRead(of(file).system(), bytes, count, at);
}

int writeFile(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 at)
{
    sqlite3_file* system = of(file).system();
    const Answer answer = of(file).path ? faults().next(Call::write) : Answer::go;
    if (of(file).path && faults().model())
        faults().model()->wrote(*of(file).path, at,
                                {static_cast<const char*>(bytes), static_cast<std::size_t>(count)});
    if (answer == Answer::half)
        system->pMethods->xWrite(system, bytes, count / 2, at);
    return answer == Answer::go ? system->pMethods->xWrite(system, bytes, count, at)
                                : writeFailed(SQLITE_IOERR_WRITE);
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size)
{
    const Answer answer = of(file).path ? faults().next(Call::truncate) : Answer::go;
    if (of(file).path && faults().model())
        faults().model()->truncated(*of(file).path, size);
    return answer == Answer::go ? of(file).system()->pMethods->xTruncate(of(file).system(), size)
                                : SQLITE_IOERR_TRUNCATE;
}

int syncFile(sqlite3_file* file, int flags)
{
    if (!of(file).path)
        return of(file).system()->pMethods->xSync(of(file).system(), flags);
    if (faults().next(Call::sync) != Answer::go)
        return writeFailed(SQLITE_IOERR_FSYNC);
    if (!faults().model())
        return SQLITE_OK;
    faults().model()->synced(*of(file).path);
    if (std::exchange(of(file).syncsFolder, false))
        faults().model()->folderSynced(folder(*of(file).path));
    return SQLITE_OK;
}

int sizeOfFile(sqlite3_file* file, sqlite3_int64* size)
{
    return of(file).system()->pMethods->xFileSize(of(file).system(), size);
}

int lockFile(sqlite3_file* file, int level)
{
    return of(file).system()->pMethods->xLock(of(file).system(), level);
}

int unlockFile(sqlite3_file* file, int level)
{
    return of(file).system()->pMethods->xUnlock(of(file).system(), level);
}

int checkReserved(sqlite3_file* file, int* result)
{
    return of(file).system()->pMethods->xCheckReservedLock(of(file).system(), result);
}

int controlFile(sqlite3_file* file, int operation, void* argument)
{
    return of(file).system()->pMethods->xFileControl(of(file).system(), operation, argument);
}

int sectorOfFile(sqlite3_file* file)
{
    return of(file).system()->pMethods->xSectorSize(of(file).system());
}

int traitsOfFile(sqlite3_file* file)
{
    return of(file).system()->pMethods->xDeviceCharacteristics(of(file).system());
}

/// Version 1: no shared memory, no mapping.
constexpr sqlite3_io_methods methods{
    1,        closeFile,  readFile,      writeFile,   truncateFile, syncFile,     sizeOfFile,
    lockFile, unlockFile, checkReserved, controlFile, sectorOfFile, traitsOfFile, nullptr,
    nullptr,  nullptr,    nullptr,       nullptr,     nullptr};

int openFile(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* outFlags)
{
    FaultyFile& ours = of(file);
    ours.base.pMethods = nullptr;
    ours.path = nullptr;
    ours.syncsFolder = false;
    const bool watched = name && faults().watches(name);
    const bool creates = watched && (flags & SQLITE_OPEN_CREATE) != 0 && ::access(name, F_OK) != 0;
    if (watched) {
        const Answer answer = faults().next(creates ? Call::create : Call::open);
        if (creates && faults().model())
            faults().model()->created(name);
        if (answer != Answer::go)
            return SQLITE_CANTOPEN;
    }
    const int code = systemVfs()->xOpen(systemVfs(), name, ours.system(), flags, outFlags);
    if (code != SQLITE_OK)
        return code;
    ours.base.pMethods = &methods;
    if (watched)
        ours.path = new std::string(name);
    ours.syncsFolder =
        creates && (flags & (SQLITE_OPEN_MAIN_JOURNAL | SQLITE_OPEN_SUPER_JOURNAL)) != 0;
    return SQLITE_OK;
}

int deleteFile(sqlite3_vfs*, const char* name, int syncsFolder)
{
    if (!faults().watches(name))
        return systemVfs()->xDelete(systemVfs(), name, syncsFolder);
    const Answer answer = faults().next(Call::remove);
    if (faults().model())
        faults().model()->removed(name);
    if (answer != Answer::go)
        return SQLITE_IOERR_DELETE;
    const int code = systemVfs()->xDelete(systemVfs(), name, 0);
    if (code != SQLITE_OK || !syncsFolder)
        return code;
    if (faults().next(Call::sync) != Answer::go)
        return SQLITE_IOERR_DIR_FSYNC;
    if (faults().model())
        faults().model()->folderSynced(folder(name));
    return SQLITE_OK;
}

sqlite3_vfs& faultyVfs()
{
    static sqlite3_vfs vfs = [] {
        sqlite3_vfs copy = *systemVfs(); // all else is the system's, which looks at no members
        copy.szOsFile += static_cast<int>(sizeof(FaultyFile));
        copy.zName = "faulty";
        copy.pNext = nullptr;
        copy.xOpen = openFile;
        copy.xDelete = deleteFile;
        return copy;
    }();
    return vfs;
}

} // namespace

FaultyFiles::FaultyFiles()
{
    if (!systemVfs())
        systemVfs() = sqlite3_vfs_find(nullptr);
    sqlite3_vfs_register(&faultyVfs(), 1);
    replaceDisk(&faultyDisk());
}

FaultyFiles::~FaultyFiles()
{
    sqlite3_vfs_register(systemVfs(), 1);
    replaceDisk(nullptr);
}

UndisturbedFiles::UndisturbedFiles(const std::string& folder)
{
    FaultEngine::only().arm(folder, std::nullopt);
}

UndisturbedFiles::~UndisturbedFiles()
{
    FaultEngine::only().disarm();
}

} // namespace holdband::faults
