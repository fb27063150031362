// Reads the logged readings as they lie in the file: one row for each sensor, block of time and
// import, in `reading_blocks`, or in `aside_blocks` while the import is withdrawn or undone. Not
// for use outside core/store.
#pragma once

#include "core/quantity/instant.h"
#include "core/store/readings/row_checksum.h"
#include "core/store/sqlite/bulk_statement.h"
#include "core/store/sqlite/database.h"

#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace holdband::store {

/// The readings of one sensor in one block of time, in order of time. Those of several imports are
/// merged.
struct BlockReadings {
    std::int64_t block = -1;
    std::vector<std::int64_t> ms;
    std::vector<double> value; ///< as stored, in the unit of its import's column
    std::vector<std::int64_t> import;
    std::vector<std::pair<std::int64_t, ReadingSum>> sums; ///< of each import, in order of its id

    std::size_t size() const { return ms.size(); }
    bool empty() const { return ms.empty(); }
};

/// Walks through the blocks of a sensor that are in force. Problem (file): a block is damaged.
class BlockWalk {
public:
    /// From one block to the other, both included.
    static Result<BlockWalk> over(const Database& database, std::int64_t sensor, std::int64_t first,
                                  std::int64_t last);

    /// The next block that holds readings, valid until the next call; null behind the last one.
    Result<const BlockReadings*> next();

private:
    BlockWalk(const Database& database, BulkStatement statement)
        : m_database(&database), m_statement(std::move(statement))
    {
    }

    Done step();
    Done takeRow();

    const Database* m_database;
    BulkStatement m_statement;
    bool m_more = false;
    BlockReadings m_readings;
};

/// One reading with its place.
struct PlacedReading {
    std::int64_t ms = 0;
    double value = 0.0;
    std::int64_t import = 0;

    bool operator==(const PlacedReading&) const = default;
};

/// The sensor's last reading before that time, and its first one after it.
Result<std::optional<PlacedReading>> readingBefore(const Database& database, std::int64_t sensor,
                                                   std::int64_t ms);
Result<std::optional<PlacedReading>> readingAfter(const Database& database, std::int64_t sensor,
                                                  std::int64_t ms);

/// The readings of one import and sensor, in order of time.
Done readBlocksOf(const Database& database, std::int64_t sensor, std::int64_t import, bool aside,
                  std::vector<std::int64_t>& ms, std::vector<double>& values);

/// The sums over all readings of the table, one for each row. A row that can't be read gets an
/// empty one.
struct StoredBlockSum {
    std::int64_t sensor = 0;
    std::int64_t block = 0;
    std::int64_t import = 0;
    ReadingSum sum;
};
Result<std::vector<StoredBlockSum>> blockSumsIn(const Database& database, bool aside);

} // namespace holdband::store
