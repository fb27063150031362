// Lets only one program at a time write a logbook: the lock file LOGBOOK.lock next to it. The
// QLockFile removes it when destroyed; an empty one or one left by a program that died is taken
// over, also where another process has the number of that program now.
#pragma once

#include "core/problem.h"

#include <QLockFile>
#include <memory>
#include <string>

namespace holdband::store {

/// The file that the path, if it is a link, points to; else, or if that is unknown, the path.
std::string realPath(const std::string& path);

/// The logbook need not exist yet. Problem (file): held by another program (the message names it),
/// no such folder, or the folder can't be written.
Result<std::unique_ptr<QLockFile>> lockForWriting(const std::string& path);

} // namespace holdband::store
