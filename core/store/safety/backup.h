// A copy of a logbook as one consistent file.
#pragma once

#include "core/store/sqlite/database.h"

namespace holdband::store {

/// Copies the logbook to a new file: written under a temporary name in the same folder, checked,
/// synced to the disk and only then renamed. Problem (file): the target exists, or can't be
/// written.
Done backupTo(const Database& database, const std::string& target);

/// As backupTo, under the target's name or that name with a number appended, whichever is free. If
/// a copy with the same content already exists, it is used, for example after a migration that a
/// full disk interrupted. Returns the copy's path.
Result<std::string> backupBeside(const Database& database, const std::string& target);

/// Whether the disk gives all bytes of the database's file, whatever they are.
bool readsWhole(const Database& database);

} // namespace holdband::store
