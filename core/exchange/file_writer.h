// The only way in which Holdband writes a file (except logbooks): completely or not at all.
#pragma once

#include "core/problem.h"

#include <string>
#include <string_view>

namespace holdband::exchange {

/// Writes the text under a temporary name beside the target, syncs it to the disk, checks every
/// step, and only then renames it. Problem (file): the target exists, the folder can't be written,
/// the disk is full; nothing is left behind.
Done writeNewFile(const std::string& path, std::string_view text);

/// What to do with a file that already exists at the target.
enum class Existing { keep, replace };

/// Whether a file can be written there, as far as can be checked in advance; writeFile reports the
/// rest. Problem (file): something exists there and must not be replaced, it is no regular file, or
/// its folder is missing.
Done mayWrite(const std::string& path, Existing existing);

/// As writeNewFile; a file that may be replaced stays intact until the finished new one replaces it
/// atomically. Problems as for mayWrite and writeNewFile.
Done writeFile(const std::string& path, std::string_view bytes, Existing existing);

/// Problem (file): something that is no empty folder is there.
Done mayMakeFolder(const std::string& path);

/// Makes a folder, which must not exist yet or must be empty, and syncs the one above it.
Done makeFolder(const std::string& path);

/// The contents of a regular file of at most `most` bytes. Problem (file): missing, a folder, no
/// regular file, too large, unreadable.
Result<std::string> readWholeFile(const std::string& path, std::size_t most);

} // namespace holdband::exchange
