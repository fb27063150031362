// The system calls that read and change files and folders beside the logbook, in one table, so that
// a test can make any of them fail or lose what was not yet synced. (The logbook itself is written
// by SQLite, which has a seam of its own, its VFS.) No Qt.
#pragma once

#include <cstddef>
#include <string>
#include <sys/types.h>

namespace holdband {

/// Each returns what the system's call of that purpose returns, and sets errno.
struct DiskCalls {
    int (*open)(const char* path, int flags, mode_t mode);
    ssize_t (*read)(int descriptor, void* bytes, std::size_t count);
    ssize_t (*write)(int descriptor, const void* bytes, std::size_t count);
    int (*sync)(int descriptor); ///< of a file or a folder
    int (*close)(int descriptor);
    int (*renameToNew)(const char* from, const char* to); ///< fails where `to` exists
    int (*rename)(const char* from, const char* to);
    int (*remove)(const char* path); ///< a file or an empty folder
    int (*makeFolder)(const char* path, mode_t mode);
};

/// The system's, unless a test replaced them.
const DiskCalls& disk();
const DiskCalls& systemDisk();
/// For tests. `calls` must stay valid until the next call; null: the system's.
void replaceDisk(const DiskCalls* calls);

/// Whether the folder's names are on the disk; true where the file system can't sync folders.
/// False: see errno.
bool syncFolder(const std::string& folder);
/// "." for a name without a folder.
std::string folderOf(const std::string& path);

/// Makes the folder and those above it that are missing, each synced into the one above. False: see
/// errno; EEXIST: a part of the path is no folder.
bool makeFolders(const std::string& folder);

/// Removes a file, or a folder with everything in it, as far as possible. False: something is left.
/// What is not there counts as removed.
bool removeWhole(const std::string& path);

} // namespace holdband
