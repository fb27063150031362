#include "core/store/readings/block_checksums.h"

#include "core/store/readings/reading_key.h"
#include "core/store/sqlite/rows.h"

#include <string>

namespace holdband::store {

namespace {

ReadingSum sumFrom(const BulkStatement& row, int column)
{
    return {row.integer(column), static_cast<std::uint64_t>(row.integer(column + 1))};
}

} // namespace

Done addBlockSums(const Database& database, std::int64_t sensor, const BlockSums& sums)
{
    auto store = database.prepare<BulkStatement>("INSERT OR REPLACE INTO block_checksums "
                                                 "(sensor, block, import, readings, checksum) "
                                                 "VALUES (?, ?, ?, ?, ?)");
    HOLDBAND_TRY(store);
    for (const auto& [key, added] : sums) {
        auto found = query<BulkStatement>(
            database,
            "SELECT readings, checksum FROM block_checksums "
            "WHERE sensor = ? AND block = ? AND import = ?",
            [](const BulkStatement& row) { return sumFrom(row, 0); }, sensor, key.block,
            key.import);
        HOLDBAND_TRY(found);
        // Added here, because SQLite would turn a sum beyond 64 bits into a real number.
        const ReadingSum before = found->empty() ? ReadingSum{} : found->front();
        store->bindAll(sensor, key.block, key.import, before.readings + added.readings,
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

namespace {

struct ImportedColumn {
    std::int64_t sensor = 0;
    std::int64_t import = 0;

    auto operator<=>(const ImportedColumn&) const = default;
};
using BlocksOfColumns = std::map<ImportedColumn, std::map<std::int64_t, ReadingSum>>; ///< by block

Done addStored(const Database& database, const std::string& table, BlocksOfColumns& columns)
{
    auto statement = database.prepare<BulkStatement>("SELECT import, place, value FROM " + table);
    HOLDBAND_TRY(statement);
    ReadingSum* current = nullptr;
    ImportedColumn column;
    std::int64_t block = -1;
    for (;;) {
        auto row = statement->step();
        HOLDBAND_TRY(row);
        if (!*row)
            return {};
        const std::int64_t place = statement->integer(1);
        const ImportedColumn here{sensorOfKey(place), statement->integer(0)};
        if (!current || here != column || blockOf(msOfKey(place)) != block) {
            column = here;
            block = blockOf(msOfKey(place));
            current = &columns[column][block];
        }
        current->add(msOfKey(place), statement->real(2));
    }
}

ReadingSum total(const std::map<std::int64_t, ReadingSum>& blocks)
{
    ReadingSum all;
    for (const auto& [block, sum] : blocks) {
        all.readings += sum.readings;
        all.checksum += sum.checksum;
    }
    return all;
}

/// Imports that were undone have no record to check against; their blocks are left alone.
Done dropDamaged(const Database& database, BlocksOfColumns& columns)
{
    auto rows = query<BulkStatement>(
        database, "SELECT sensor, import, readings, checksum FROM import_columns",
        [&](const BulkStatement& row) {
            const auto found = columns.find({row.integer(0), row.integer(1)});
            if (found != columns.end() && total(found->second) != sumFrom(row, 2))
                columns.erase(found);
            return true;
        });
    HOLDBAND_TRY(rows);
    return {};
}

} // namespace

Done makeBlockSums(const Database& database)
{
    BlocksOfColumns columns;
    HOLDBAND_TRY(addStored(database, "readings", columns));
    HOLDBAND_TRY(addStored(database, "aside_readings", columns));
    HOLDBAND_TRY(dropDamaged(database, columns));
    for (const auto& [column, blocks] : columns) {
        BlockSums sums;
        for (const auto& [block, sum] : blocks)
            sums[{block, column.import}] = sum;
        HOLDBAND_TRY(addBlockSums(database, column.sensor, sums));
    }
    return {};
}

} // namespace holdband::store
