// A copy of a logbook as one consistent file.
#pragma once

#include "core/store/sqlite/sqlite.h"

namespace holdband::store {

/// Copies the whole logbook to a new file: written beside it under another name, checked, brought
/// to the disk and only then named. Problem (file): the target exists, or can't be written.
Done backupTo(const Database& database, const std::string& target);

/// As backupTo, under the target's name or that name with a number behind it, whichever is free.
/// Where a copy with the same content is there already, that one serves, as after a migration that
/// a full disk broke off. The copy's path.
Result<std::string> backupBeside(const Database& database, const std::string& target);

} // namespace holdband::store
