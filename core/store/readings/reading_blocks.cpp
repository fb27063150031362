#include "core/store/readings/reading_blocks.h"

#include "core/store/readings/block_text.h"
#include "core/store/readings/reading_key.h"
#include "core/store/sqlite/rows.h"

#include <algorithm>
#include <numeric>
#include <string>

namespace holdband::store {

namespace {

/// Reads the row's columns first_at, step_ms and logged, from `column` on. False: damaged.
Result<bool> readRowText(const BulkStatement& row, int column, std::vector<std::int64_t>& ms,
                         std::vector<double>& values)
{
    auto json = row.longText(column + 2);
    HOLDBAND_TRY(json);
    return readBlockText(row.integer(column), row.optionalInteger(column + 1), *json, ms, values);
}

Problem damagedBlock(const Database& database)
{
    return invalidValue("reading_blocks.logged", database.path());
}

ReadingSum sumOver(const std::vector<std::int64_t>& ms, const std::vector<double>& values,
                   std::size_t from)
{
    ReadingSum sum;
    for (std::size_t i = from; i < ms.size(); ++i)
        sum.add(ms[i], values[i]);
    return sum;
}

template <typename Value>
void putInOrder(std::vector<Value>& values, const std::vector<std::size_t>& order)
{
    std::vector<Value> ordered;
    ordered.reserve(values.size());
    for (const std::size_t i : order)
        ordered.push_back(values[i]);
    values = std::move(ordered);
}

void sortByTime(BlockReadings& readings)
{
    if (std::is_sorted(readings.ms.begin(), readings.ms.end()))
        return;
    std::vector<std::size_t> order(readings.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return readings.ms[a] < readings.ms[b]; });
    putInOrder(readings.ms, order);
    putInOrder(readings.value, order);
    putInOrder(readings.import, order);
}

} // namespace

Result<BlockWalk> BlockWalk::over(const Database& database, std::int64_t sensor, std::int64_t first,
                                  std::int64_t last)
{
    auto statement = database.prepare<BulkStatement>(
        "SELECT block, import, first_at, step_ms, logged FROM reading_blocks "
        "WHERE sensor = ? AND block BETWEEN ? AND ? ORDER BY block, import");
    HOLDBAND_TRY(statement);
    statement->bindAll(sensor, first, last);
    BlockWalk walk(database, std::move(*statement));
    HOLDBAND_TRY(walk.step());
    return walk;
}

Done BlockWalk::step()
{
    auto row = m_statement.step();
    HOLDBAND_TRY(row);
    m_more = *row;
    return {};
}

Done BlockWalk::takeRow()
{
    const std::size_t before = m_readings.size();
    auto read = readRowText(m_statement, 2, m_readings.ms, m_readings.value);
    HOLDBAND_TRY(read);
    if (!*read)
        return failure(damagedBlock(*m_database));
    const std::int64_t import = m_statement.integer(1);
    m_readings.import.resize(m_readings.size(), import);
    m_readings.sums.emplace_back(import, sumOver(m_readings.ms, m_readings.value, before));
    return step();
}

Result<const BlockReadings*> BlockWalk::next()
{
    m_readings.ms.clear();
    m_readings.value.clear();
    m_readings.import.clear();
    m_readings.sums.clear();
    if (!m_more)
        return nullptr;
    m_readings.block = m_statement.integer(0);
    while (m_more && m_statement.integer(0) == m_readings.block)
        HOLDBAND_TRY(takeRow());
    sortByTime(m_readings);
    return &m_readings;
}

namespace {

PlacedReading placed(const BlockReadings& readings, std::size_t i)
{
    return {readings.ms[i], readings.value[i], readings.import[i]};
}

/// `nextBlock` selects the number of the next block in the direction of the search, from ?1 the
/// sensor and ?2 a block; `found` returns the wanted reading of a block, if it has one.
template <typename Found>
Result<std::optional<PlacedReading>> search(const Database& database, std::int64_t sensor,
                                            std::int64_t block, const char* nextBlock, Found found)
{
    for (std::optional<std::int64_t> at = block; at;) {
        auto walk = BlockWalk::over(database, sensor, *at, *at);
        HOLDBAND_TRY(walk);
        auto readings = walk->next();
        HOLDBAND_TRY(readings);
        if (*readings) {
            if (const auto reading = found(**readings))
                return reading;
        }
        auto next = query<BulkStatement>(
            database, nextBlock, [](const BulkStatement& row) { return row.optionalInteger(0); },
            sensor, *at);
        HOLDBAND_TRY(next);
        at = next->front();
    }
    return std::optional<PlacedReading>();
}

} // namespace

Result<std::optional<PlacedReading>> readingBefore(const Database& database, std::int64_t sensor,
                                                   std::int64_t ms)
{
    return search(database, sensor, blockOf(ms),
                  "SELECT max(block) FROM reading_blocks WHERE sensor = ? AND block < ?",
                  [ms](const BlockReadings& readings) {
                      const auto end = std::lower_bound(readings.ms.begin(), readings.ms.end(), ms);
                      const auto count = static_cast<std::size_t>(end - readings.ms.begin());
                      return count > 0 ? std::optional(placed(readings, count - 1)) : std::nullopt;
                  });
}

Result<std::optional<PlacedReading>> readingAfter(const Database& database, std::int64_t sensor,
                                                  std::int64_t ms)
{
    return search(
        database, sensor, blockOf(ms),
        "SELECT min(block) FROM reading_blocks WHERE sensor = ? AND block > ?",
        [ms](const BlockReadings& readings) {
            const auto found = std::upper_bound(readings.ms.begin(), readings.ms.end(), ms);
            const auto at = static_cast<std::size_t>(found - readings.ms.begin());
            return at < readings.size() ? std::optional(placed(readings, at)) : std::nullopt;
        });
}

Done readBlocksOf(const Database& database, std::int64_t sensor, std::int64_t import, bool aside,
                  std::vector<std::int64_t>& ms, std::vector<double>& values)
{
    auto statement =
        database.prepare<BulkStatement>("SELECT first_at, step_ms, logged FROM " +
                                        std::string(aside ? "aside_blocks" : "reading_blocks") +
                                        " WHERE sensor = ? AND import = ? ORDER BY block");
    HOLDBAND_TRY(statement);
    statement->bindAll(sensor, import);
    for (;;) {
        auto row = statement->step();
        HOLDBAND_TRY(row);
        if (!*row)
            return {};
        auto read = readRowText(*statement, 0, ms, values);
        HOLDBAND_TRY(read);
        if (!*read)
            return failure(damagedBlock(database));
    }
}

Result<std::vector<StoredBlockSum>> blockSumsIn(const Database& database, bool aside)
{
    std::vector<StoredBlockSum> sums;
    auto statement = database.prepare<BulkStatement>(
        "SELECT sensor, block, import, first_at, step_ms, logged FROM " +
        std::string(aside ? "aside_blocks" : "reading_blocks"));
    HOLDBAND_TRY(statement);
    std::vector<std::int64_t> ms;
    std::vector<double> values;
    for (;;) {
        auto row = statement->step();
        HOLDBAND_TRY(row);
        if (!*row)
            return sums;
        ms.clear();
        values.clear();
        auto read = readRowText(*statement, 3, ms, values);
        HOLDBAND_TRY(read);
        sums.push_back({statement->integer(0), statement->integer(1), statement->integer(2),
                        *read ? sumOver(ms, values, 0) : ReadingSum{}});
    }
}

} // namespace holdband::store
