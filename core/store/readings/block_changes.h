// Changes the blocks of readings: see reading_blocks.h. Not for use outside core/store.
#pragma once

#include "core/quantity/instant.h"
#include "core/store/readings/row_checksum.h"
#include "core/store/sqlite/database.h"

#include <cstdint>
#include <utility>
#include <vector>

namespace holdband::store {

/// Some of a file's readings for one sensor, in order of time.
struct NewReadings {
    const std::vector<Instant>* at = nullptr;
    const std::vector<double>* value = nullptr;
    const std::vector<std::uint32_t>* which = nullptr; ///< indices into both
};

using SumsByBlock = std::vector<std::pair<std::int64_t, ReadingSum>>;

/// Stores new readings of one import and sensor, at times that the sensor has no reading for.
/// Returns the sums over them, by block.
Result<SumsByBlock> addToBlocks(const Database& database, std::int64_t sensor, std::int64_t import,
                                const NewReadings& readings);

/// Moves what an import added to a sensor out of force, and all that it added back.
Done moveBlocksAside(const Database& database, std::int64_t sensor, std::int64_t import);
Done moveBlocksBack(const Database& database, std::int64_t import);

/// How many readings of an import that is aside have a time that the sensor has a reading for.
Result<std::int64_t> countTaken(const Database& database, std::int64_t import);

} // namespace holdband::store
