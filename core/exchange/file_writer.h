// The one way in which Holdband writes a file of its own (logbooks apart): whole or not at all.
#pragma once

#include "core/problem.h"

#include <string>
#include <string_view>

namespace holdband::exchange {

/// Writes the text under another name beside the target, brings it to the disk, checks every step,
/// and names it only then. Problem (file): the target exists already, the folder can't be written,
/// the disk is full; nothing is left behind.
Done writeNewFile(const std::string& path, std::string_view text);

/// What to do with a file that stands where one is to be written.
enum class Existing { keep, replace };

/// Whether a file could be written there, as far as can be known before: writeFile says the rest.
/// Problem (data): something stands there and is to be kept. Problem (file): it is no regular file,
/// or its folder is missing.
Done mayWrite(const std::string& path, Existing existing);

/// As writeNewFile; a file that may be replaced stays whole until the finished new one takes its
/// place at once. Problems as those of mayWrite and writeNewFile.
Done writeFile(const std::string& path, std::string_view bytes, Existing existing);

/// Makes a folder that must not exist yet, or be empty.
Done makeFolder(const std::string& path);

/// The whole of a regular file of at most `most` bytes. Problem (file): missing, a folder, no
/// regular file, too large, unreadable.
Result<std::string> readWholeFile(const std::string& path, std::size_t most);

} // namespace holdband::exchange
