// Checks whether the readings of a series match the checksums of their imports. Added up while the
// series is read, which costs almost nothing. Not for use outside core/store.
#pragma once

#include "core/store/readings/block_checksums.h"
#include "core/store/readings/reading_blocks.h"

#include <cstdint>

namespace holdband::store {

class SeriesChecksums {
public:
    explicit SeriesChecksums(std::int64_t sensor) : m_sensor(sensor) {}

    /// All readings of a block.
    void add(const BlockReadings& readings);

    /// Problem (file): from one block to the other, both included, there are other readings than
    /// were added, or some that belong to no import. Call after these blocks were added.
    Done check(const Database& database, std::int64_t first, std::int64_t last) const;

private:
    Problem damaged(const Database& database, std::int64_t import) const;

    std::int64_t m_sensor;
    BlockSums m_seen;
};

} // namespace holdband::store
