// How a finished file gets its name: written under another one beside it, brought to the disk,
// renamed, and the folder brought to the disk too, so that it is there after a power loss. Shared
// by backups and by exchange/file_writer.
#pragma once

#include "core/problem.h"

#include <functional>
#include <string>

namespace holdband::store {

/// A name of its own in the target's folder that no other program uses: short, since the target's
/// may be as long as names can be.
std::string unfinishedBeside(const std::string& path);

/// Removes an unfinished file, and the journal that a logbook under that name may have left.
void removeUnfinished(const std::string& unfinished);

/// Removes what killed programs left unfinished beside the path: more than a day old, and of a
/// process that is gone.
void clearAbandoned(const std::string& path);

/// Whether the file's bytes are on the disk.
bool syncFile(const std::string& path);

/// Gives a finished file its name. Problem (file): something has that name by now, or it can't be
/// given, and the file keeps its old one; or the folder can't be brought to the disk, and then the
/// file has its new name.
Done nameNewFile(const std::string& unfinished, const std::string& path);

/// As nameNewFile, in place of the file that has the name, whose permissions it gets.
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
