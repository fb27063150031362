#include "core/store/readings/rows_to_blocks.h"

#include "core/store/readings/block_checksums.h"
#include "core/store/readings/block_text.h"
#include "core/store/readings/reading_key.h"
#include "core/store/sqlite/rows.h"

#include <cmath>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace holdband::store {

namespace {

/// The key of a row was sensor × 2^44 + instant.
constexpr std::int64_t sensorOfKey(std::int64_t place)
{
    return place >> instantBits;
}

constexpr std::int64_t msOfKey(std::int64_t place)
{
    return place & (instantRange - 1);
}

struct SummedColumn {
    std::int64_t sensor = 0;
    std::int64_t import = 0;

    auto operator<=>(const SummedColumn&) const = default;
};
using BlocksOfColumns = std::map<SummedColumn, std::map<std::int64_t, ReadingSum>>; ///< by block

/// Calls take(import, place, value) with each row, in the order of the table's key.
template <typename Take>
Done eachRow(const Database& database, const std::string& table, Take take)
{
    auto statement = database.prepare<BulkStatement>("SELECT import, place, value FROM " + table);
    HOLDBAND_TRY(statement);
    for (;;) {
        auto row = statement->step();
        HOLDBAND_TRY(row);
        if (!*row)
            return {};
        HOLDBAND_TRY(take(statement->integer(0), statement->integer(1), statement->number(2)));
    }
}

Done addRowSums(const Database& database, const std::string& table, BlocksOfColumns& columns)
{
    ReadingSum* current = nullptr;
    SummedColumn column;
    std::int64_t block = -1;
    return eachRow(database, table, [&](std::int64_t import, std::int64_t place, double value) {
        const SummedColumn here{sensorOfKey(place), import};
        if (!current || here != column || blockOf(msOfKey(place)) != block) {
            column = here;
            block = blockOf(msOfKey(place));
            current = &columns[column][block];
        }
        current->add(msOfKey(place), value);
        return Done();
    });
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
            const ReadingSum stored{row.integer(2), static_cast<std::uint64_t>(row.integer(3))};
            if (found != columns.end() && total(found->second) != stored)
                columns.erase(found);
            return true;
        });
    HOLDBAND_TRY(rows);
    return {};
}

/// Collects the rows of one block at a time, and stores them.
class RowCollector {
public:
    static Result<RowCollector> into(const Database& database, const char* table)
    {
        auto statement = database.prepare<BulkStatement>(
            "INSERT INTO " + std::string(table) +
            " (sensor, block, import, first_at, step_ms, logged) VALUES (?, ?, ?, ?, ?, ?)");
        HOLDBAND_TRY(statement);
        return RowCollector(std::move(*statement));
    }

    Done take(std::int64_t import, std::int64_t place, double value)
    {
        const std::int64_t ms = msOfKey(place);
        const std::pair key{sensorOfKey(place), blockOf(ms)};
        if (key != m_key)
            HOLDBAND_TRY(finish());
        m_key = key;
        if (std::isfinite(value)) {
            m_readings[import].first.push_back(ms);
            m_readings[import].second.push_back(value);
        }
        return {};
    }

    Done finish()
    {
        for (const auto& [import, readings] : m_readings) {
            const BlockText text = blockText(readings.first, readings.second);
            m_statement.bindAll(m_key.first, m_key.second, import, text.firstAt);
            if (text.step)
                m_statement.bind(5, *text.step);
            m_statement.bind(6, std::string_view(text.json));
            HOLDBAND_TRY(m_statement.run());
        }
        m_readings.clear();
        return {};
    }

private:
    explicit RowCollector(BulkStatement statement) : m_statement(std::move(statement)) {}

    BulkStatement m_statement;
    std::pair<std::int64_t, std::int64_t> m_key{-1, -1}; ///< sensor and block
    std::map<std::int64_t, std::pair<std::vector<std::int64_t>, std::vector<double>>>
        m_readings; ///< by import: times and values
};

Done moveRows(const Database& database, const char* rows, const char* blocks)
{
    auto collector = RowCollector::into(database, blocks);
    HOLDBAND_TRY(collector);
    // The rows of `aside_readings` lie import by import, so that no block is begun twice.
    HOLDBAND_TRY(
        eachRow(database, rows, [&](std::int64_t import, std::int64_t place, double value) {
            return collector->take(import, place, value);
        }));
    HOLDBAND_TRY(collector->finish());
    return database.execute("DELETE FROM " + std::string(rows));
}

} // namespace

Done sumRows(const Database& database)
{
    BlocksOfColumns columns;
    HOLDBAND_TRY(addRowSums(database, "readings", columns));
    HOLDBAND_TRY(addRowSums(database, "aside_readings", columns));
    HOLDBAND_TRY(dropDamaged(database, columns));
    for (const auto& [column, blocks] : columns)
        HOLDBAND_TRY(addBlockSums(database, column.sensor, column.import,
                                  SumsByBlock(blocks.begin(), blocks.end())));
    return {};
}

Done moveRowsToBlocks(const Database& database)
{
    HOLDBAND_TRY(moveRows(database, "readings", "reading_blocks"));
    return moveRows(database, "aside_readings", "aside_blocks");
}

} // namespace holdband::store
