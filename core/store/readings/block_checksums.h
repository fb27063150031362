// Checksums over the readings of one import and sensor, block by block of time, so that a part of a
// long log can be verified without reading all of it. Not for use outside core/store.
#pragma once

#include "core/store/readings/row_checksum.h"
#include "core/store/records/ids.h"
#include "core/store/sqlite/database.h"

#include <compare>
#include <cstdint>
#include <map>

namespace holdband::store {

inline constexpr int blockBits = 26; ///< a block is 2^26 ms, about 18.6 hours

constexpr std::int64_t blockOf(std::int64_t ms)
{
    return ms >> blockBits;
}

/// A block of one import, of a given sensor.
struct BlockKey {
    std::int64_t block = 0;
    std::int64_t import = 0;

    auto operator<=>(const BlockKey&) const = default;
};
using BlockSums = std::map<BlockKey, ReadingSum>;

/// Adds the sums of new readings to those in the file.
Done addBlockSums(const Database& database, std::int64_t sensor, const BlockSums& sums);

/// The sums of the imports in force, from one block to another, both included.
Result<BlockSums> readBlockSums(const Database& database, std::int64_t sensor, std::int64_t first,
                                std::int64_t last);

/// Computes the sums of all imports, for a file of an older format. Readings that don't match the
/// checksum of their import get none, so that they are still noticed as damage.
Done makeBlockSums(const Database& database);

} // namespace holdband::store
