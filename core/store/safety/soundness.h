// Checks whether the file is sound: SQLite's own checks, the seal over the small tables, the
// checksum of each import's readings.
#pragma once

#include "core/store/logbook_file.h"

#include <string>
#include <vector>

namespace holdband::store {

/// Problem (file): equipment, batches, meter readings or the journal no longer match their seal.
Done checkSeal(const Database& database);

/// A sentence for each kind of damage; empty if the file is sound.
Result<std::vector<std::string>> findDamage(const Database& database);
inline Result<std::vector<std::string>> findDamage(const LogbookFile& logbook)
{
    return findDamage(logbook.database());
}

} // namespace holdband::store
