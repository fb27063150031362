// Gives a finished file its name: it is written under a temporary name in the same folder, synced
// to the disk, renamed, and the folder is synced too, so that it exists after a power loss. Shared
// by backups and by exchange/file_writer.
#pragma once

#include "core/problem.h"

#include <functional>
#include <string>

namespace holdband::store {

/// A temporary name in the target's folder that no other program uses: short, because the target's
/// name may already have the maximum length.
std::string temporaryNameFor(const std::string& path);

/// Removes the unfinished files of killed programs in the path's folder: older than a day, and of a
/// process that no longer runs.
void clearAbandoned(const std::string& path);

/// Whether the file's bytes are on the disk.
bool syncFile(const std::string& path);

/// Renames a finished file. Problem (file): the name was taken meanwhile or renaming failed, and
/// the file has its old name; or the folder can't be synced, and then the file has its new name.
Done nameNewFile(const std::string& unfinished, const std::string& path);

/// As nameNewFile, but replaces an existing file and takes over its permissions.
Done replaceFile(const std::string& unfinished, const std::string& path);

/// Writes a file under an unfinished name beside `path` and gives it its own: `write` makes the
/// file of the name that it is given and brings it to the disk; `name` is nameNewFile or
/// replaceFile. Where one of them fails, no unfinished file is left, and a Problem with it is one
/// with `path`.
Done writeBeside(const std::string& path,
                 const std::function<Done(const std::string& unfinished)>& write,
                 Done (*name)(const std::string& unfinished, const std::string& path));

/// Problem (file): the name is taken.
Done refuseTakenName(const std::string& path, const std::string& remedy);

} // namespace holdband::store
