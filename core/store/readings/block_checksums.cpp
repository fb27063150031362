#include "core/store/readings/block_checksums.h"

#include "core/store/sqlite/rows.h"

namespace holdband::store {

namespace {

ReadingSum sumFrom(const BulkStatement& row, int column)
{
    return {row.integer(column), static_cast<std::uint64_t>(row.integer(column + 1))};
}

} // namespace

Done addBlockSums(const Database& database, std::int64_t sensor, std::int64_t import,
                  const SumsByBlock& sums)
{
    auto store = database.prepare<BulkStatement>("INSERT OR REPLACE INTO block_checksums "
                                                 "(sensor, block, import, readings, checksum) "
                                                 "VALUES (?, ?, ?, ?, ?)");
    HOLDBAND_TRY(store);
    for (const auto& [block, added] : sums) {
        auto found = query<BulkStatement>(
            database,
            "SELECT readings, checksum FROM block_checksums "
            "WHERE sensor = ? AND block = ? AND import = ?",
            [](const BulkStatement& row) { return sumFrom(row, 0); }, sensor, block, import);
        HOLDBAND_TRY(found);
        // Added here, because SQLite would turn a sum beyond 64 bits into a real number.
        const ReadingSum before = found->empty() ? ReadingSum{} : found->front();
        store->bindAll(sensor, block, import, before.readings + added.readings,
                       static_cast<std::int64_t>(before.checksum + added.checksum));
        HOLDBAND_TRY(store->run());
    }
    return {};
}

Result<BlockSums> readBlockSums(const Database& database, std::int64_t sensor, std::int64_t first,
                                std::int64_t last)
{
    BlockSums sums;
    auto rows = query<BulkStatement>(
        database,
        "SELECT b.block, b.import, b.readings, b.checksum FROM block_checksums b "
        "JOIN imports i ON i.id = b.import AND i.taken_back_at IS NULL "
        "WHERE b.sensor = ? AND b.block BETWEEN ? AND ?",
        [&](const BulkStatement& row) {
            sums[{row.integer(0), row.integer(1)}] = sumFrom(row, 2);
            return true;
        },
        sensor, first, last);
    HOLDBAND_TRY(rows);
    return sums;
}

} // namespace holdband::store
