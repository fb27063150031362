// The copies of a logbook that the program makes automatically: their folder, their names, which of
// them are sound, and how one is restored.
//
// They are in their own folder, "garage backups" for garage.holdband: beside the logbook, or in the
// folder for all copies that is set in the preferences. Names begin with the local date and time:
// "2026-03-07 07.06 garage.holdband".
#pragma once

#include "core/store/safety/backup_rotation.h"
#include "core/store/sqlite/database.h"
#include "core/text/zone.h"

#include <string>
#include <vector>

namespace holdband::store {

struct BackupCopy {
    std::string path;
    LocalTime taken; ///< in the logbook's zone, to the minute
    std::uint64_t bytes = 0;

    bool operator==(const BackupCopy&) const = default;
};

/// `place`: the folder for the copies of all logbooks; empty: beside the logbook.
std::string backupFolder(const std::string& logbook, const std::string& place);

/// Newest first. Empty if the folder is missing or can't be read.
std::vector<BackupCopy> listBackups(const std::string& logbook, const std::string& place);

/// Makes the copy for `now`, completely and checked or not at all, then deletes old copies by the
/// rotation. Problem (file): it can't be written; the logbook no longer matches its seal, so that a
/// copy would replace a sound one.
Result<BackupCopy> makeBackup(const Database& logbook, const std::string& place, LocalTime now);

/// Those of listBackups that open and match their checksums, newest first. Reads each of them
/// completely.
std::vector<BackupCopy> soundBackups(const std::string& logbook, const std::string& place);

/// The logbook is missing or broken; false for one that is only locked, newer or another program's,
/// or that the disk can't read now.
bool needsBackup(const std::string& logbook);

/// Copies the backup to a new file beside the logbook ("garage restored.holdband") and returns its
/// path; the logbook is unchanged.
Result<std::string> restoreBeside(const std::string& logbook, const BackupCopy& copy);

} // namespace holdband::store
