// A logbook opened for a command: copied before the first change of a day, and where it is broken
// or gone, with the copies that can take its place.
#pragma once

#include "core/store/logbook_file.h"
#include "core/store/safety/daily_backup.h"

#include <memory>
#include <string>

namespace holdband::app {

/// As the desk has chosen; what becomes of a copy that fails is told on standard error.
store::BackupOptions backupManner();

Result<std::unique_ptr<store::LogbookFile>> openForWriting(const std::string& path);

/// For commands that compute from it: what was saved must fit its seal. (The readings of logs are
/// held against their checksums as they are read.)
Result<std::unique_ptr<store::LogbookFile>> openForFigures(const std::string& path);

/// As fail(), and after it the sound copies of a logbook that is broken or gone.
int failOpening(const Problem& problem, const std::string& logbook);

} // namespace holdband::app
