// Checksums over the readings of one import and sensor, block by block of time, so that a part of a
// long log can be verified without reading all of it. Not for use outside core/store.
#pragma once

#include "core/store/readings/block_changes.h"
#include "core/store/readings/row_checksum.h"
#include "core/store/records/ids.h"
#include "core/store/sqlite/database.h"

#include <compare>
#include <cstdint>
#include <map>

namespace holdband::store {

/// A block of one import, of a given sensor.
struct BlockKey {
    std::int64_t block = 0;
    std::int64_t import = 0;

    auto operator<=>(const BlockKey&) const = default;
};
using BlockSums = std::map<BlockKey, ReadingSum>;

/// Adds the sums of an import's new readings to those in the file.
Done addBlockSums(const Database& database, std::int64_t sensor, std::int64_t import,
                  const SumsByBlock& sums);

/// The sums of the imports in force, from one block to another, both included.
Result<BlockSums> readBlockSums(const Database& database, std::int64_t sensor, std::int64_t first,
                                std::int64_t last);

} // namespace holdband::store
