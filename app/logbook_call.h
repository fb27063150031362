// Opens a logbook for a command: makes a copy before the first change of a day, and lists the sound
// copies if the logbook is broken or gone.
#pragma once

#include "core/store/logbook_file.h"
#include "core/store/safety/daily_backup.h"

#include <memory>
#include <string>

namespace holdband::app {

/// As set in the preferences; a copy that fails is reported on standard error.
store::BackupOptions backupOptions();

Result<std::unique_ptr<store::LogbookFile>> openForWriting(const std::string& path);

/// For commands that compute figures: the stored data must match its seal. (The readings of logs
/// are checked against their checksums as they are read.)
Result<std::unique_ptr<store::LogbookFile>> openForFigures(const std::string& path);

/// As fail(), then lists the sound copies of a logbook that is broken or gone.
int failOpening(const Problem& problem, const std::string& logbook);

} // namespace holdband::app
