// Checks whether the readings of a series match the checksums of their imports. Added up while the
// series is read, which costs almost nothing. Not for use outside core/store.
#pragma once

#include "core/quantity/instant.h"
#include "core/store/readings/block_checksums.h"

#include <cstdint>
#include <utility>
#include <vector>

namespace holdband::store {

class SeriesChecksums {
public:
    /// For one sensor and its imports in force.
    SeriesChecksums(std::int64_t sensor, std::vector<std::int64_t> imports)
        : m_sensor(sensor), m_imports(std::move(imports))
    {
    }

    /// The sensor has only one import: rows need no import id.
    bool onlyOne() const { return m_imports.size() == 1; }
    std::int64_t firstImport() const { return m_imports.empty() ? 0 : m_imports.front(); }

    /// In order of time, each of the sensor's readings from the first to the last of them. Inline,
    /// because it runs for a million rows.
    void add(std::int64_t import, std::int64_t ms, double value)
    {
        const BlockKey key{blockOf(ms), import};
        if (key != m_lastKey)
            beginBlock(key, ms);
        m_last->add(ms, value);
        m_lastMs = ms;
    }

    /// Call after all rows in the span were added. Reads the rest of the two blocks at its ends.
    /// Problem (file): the readings no longer match, or some belong to no import.
    Done check(const Database& database, Span span);

private:
    void beginBlock(BlockKey key, std::int64_t ms);
    Done addBetween(const Database& database, std::int64_t first, std::int64_t last);
    Problem damaged(const Database& database, std::int64_t import) const;

    std::int64_t m_sensor;
    std::vector<std::int64_t> m_imports;
    BlockSums m_seen;
    BlockKey m_lastKey{-1, -1};
    ReadingSum* m_last = nullptr; ///< imports and blocks come in long runs
    std::int64_t m_firstMs = -1;
    std::int64_t m_lastMs = -1;
};

} // namespace holdband::store
