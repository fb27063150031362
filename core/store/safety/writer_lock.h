// One program at a time writes a logbook: the lock beside it, LOGBOOK.lock. It goes when its
// QLockFile does; one that is empty or was left by a program that died is taken over.
#pragma once

#include "core/problem.h"

#include <QLockFile>
#include <memory>
#include <string>

namespace holdband::store {

/// The file itself where the path is a link to it, or the path where that can't be told.
std::string realPath(const std::string& path);

/// The logbook need not exist yet. Problem (file): held elsewhere (the holder is named), no such
/// folder, or the folder can't be written.
Result<std::unique_ptr<QLockFile>> lockForWriting(const std::string& path);

} // namespace holdband::store
