// Is the file sound: SQLite's own checks, the seal over the small tables, the checksum of each
// import's readings.
#pragma once

#include "core/store/logbook_file.h"

#include <string>
#include <vector>

namespace holdband::store {

/// Problem (file): equipment, batches, meter readings or the journal no longer fit their seal.
Done checkSeal(const Database& database);

/// A sentence for each thing that is broken; empty where the file is sound.
Result<std::vector<std::string>> findDamage(const Database& database);
inline Result<std::vector<std::string>> findDamage(const LogbookFile& logbook)
{
    return findDamage(logbook.database());
}

} // namespace holdband::store
