#include "core/store/readings/block_changes.h"

#include "core/store/readings/block_text.h"
#include "core/store/readings/reading_blocks.h"
#include "core/store/readings/reading_key.h"
#include "core/store/sqlite/rows.h"
#include "core/store/sqlite/statement.h"

#include <algorithm>
#include <string>

namespace holdband::store {

namespace {

/// Readings of one block, in order of time.
struct BlockRows {
    std::vector<std::int64_t> ms;
    std::vector<double> values;

    void add(std::int64_t at, double value)
    {
        ms.push_back(at);
        values.push_back(value);
    }
    void clear()
    {
        ms.clear();
        values.clear();
    }
};

BlockRows merged(const BlockRows& some, const BlockRows& others)
{
    BlockRows all;
    std::size_t other = 0;
    const auto takeOthersUntil = [&](std::int64_t time) {
        for (; other < others.ms.size() && others.ms[other] < time; ++other)
            all.add(others.ms[other], others.values[other]);
    };
    for (std::size_t i = 0; i < some.ms.size(); ++i) {
        takeOthersUntil(some.ms[i]);
        all.add(some.ms[i], some.values[i]);
    }
    takeOthersUntil(instantRange);
    return all;
}

/// Stores block after block of one import and sensor.
class BlockStorer {
public:
    static Result<BlockStorer> make(const Database& database, std::int64_t sensor,
                                    std::int64_t import)
    {
        auto find =
            database.prepare<BulkStatement>("SELECT first_at, step_ms, logged FROM reading_blocks "
                                            "WHERE sensor = ? AND block = ? AND import = ?");
        HOLDBAND_TRY(find);
        auto store = database.prepare<BulkStatement>(
            "INSERT OR REPLACE INTO reading_blocks "
            "(sensor, block, import, first_at, step_ms, logged) VALUES (?, ?, ?, ?, ?, ?)");
        HOLDBAND_TRY(store);
        return BlockStorer(database, std::move(*find), std::move(*store), sensor, import);
    }

    Done store(std::int64_t block, const BlockRows& rows)
    {
        BlockRows there;
        HOLDBAND_TRY(read(block, there));
        const BlockText text = textOf(there.ms.empty() ? rows : merged(rows, there));
        m_store.bind(1, m_sensor);
        m_store.bind(2, block);
        m_store.bind(3, m_import);
        m_store.bind(4, text.firstAt);
        if (text.step)
            m_store.bind(5, *text.step);
        m_store.bind(6, std::string_view(text.json));
        return m_store.run();
    }

private:
    BlockStorer(const Database& database, BulkStatement find, BulkStatement store,
                std::int64_t sensor, std::int64_t import)
        : m_database(&database), m_find(std::move(find)), m_store(std::move(store)),
          m_sensor(sensor), m_import(import)
    {
    }

    static BlockText textOf(const BlockRows& rows) { return blockText(rows.ms, rows.values); }

    Done read(std::int64_t block, BlockRows& there)
    {
        m_find.bindAll(m_sensor, block, m_import);
        auto row = m_find.step();
        HOLDBAND_TRY(row);
        if (*row) {
            auto json = m_find.longText(2);
            HOLDBAND_TRY(json);
            if (!readBlockText(m_find.integer(0), m_find.optionalInteger(1), *json, there.ms,
                               there.values))
                return failure(invalidValue("reading_blocks.logged", m_database->path()));
        }
        m_find.reset();
        return {};
    }

    const Database* m_database;
    BulkStatement m_find;
    BulkStatement m_store;
    std::int64_t m_sensor;
    std::int64_t m_import;
};

} // namespace

Result<SumsByBlock> addToBlocks(const Database& database, std::int64_t sensor, std::int64_t import,
                                const NewReadings& readings)
{
    auto storer = BlockStorer::make(database, sensor, import);
    HOLDBAND_TRY(storer);
    SumsByBlock sums;
    BlockRows rows;
    const auto msOf = [&](std::size_t i) { return storedMs((*readings.at)[(*readings.which)[i]]); };
    for (std::size_t i = 0; i < readings.which->size();) {
        const std::int64_t block = blockOf(msOf(i));
        ReadingSum sum;
        rows.clear();
        for (; i < readings.which->size() && blockOf(msOf(i)) == block; ++i) {
            rows.add(msOf(i), (*readings.value)[(*readings.which)[i]]);
            sum.add(rows.ms.back(), rows.values.back());
        }
        HOLDBAND_TRY(storer->store(block, rows));
        sums.emplace_back(block, sum);
    }
    return sums;
}

namespace {

constexpr std::string_view blockColumns = "sensor, block, import, first_at, step_ms, logged";

std::string moveSql(const char* into, const char* from, const char* which)
{
    const std::string columns(blockColumns);
    return std::string("INSERT INTO ") + into + " (" + columns + ") SELECT " + columns + " FROM " +
           from + " WHERE " + which;
}

} // namespace

Done moveBlocksAside(const Database& database, std::int64_t sensor, std::int64_t import)
{
    HOLDBAND_TRY(execute(database,
                         moveSql("aside_blocks", "reading_blocks", "sensor = ? AND import = ?"),
                         sensor, import));
    return execute(database, "DELETE FROM reading_blocks WHERE sensor = ? AND import = ?", sensor,
                   import);
}

Done moveBlocksBack(const Database& database, std::int64_t import)
{
    HOLDBAND_TRY(execute(
        database, moveSql("reading_blocks", "aside_blocks", "import = ? ORDER BY sensor, block"),
        import));
    return execute(database, "DELETE FROM aside_blocks WHERE import = ?", import);
}

namespace {

/// How many of the times, which are in order, the sensor has a reading for.
Result<std::int64_t> countStoredAt(const Database& database, std::int64_t sensor,
                                   const std::vector<std::int64_t>& ms)
{
    auto walk = BlockWalk::over(database, sensor, blockOf(ms.front()), blockOf(ms.back()));
    HOLDBAND_TRY(walk);
    std::int64_t count = 0;
    for (;;) {
        auto stored = walk->next();
        HOLDBAND_TRY(stored);
        if (!*stored)
            return count;
        count += std::count_if((*stored)->ms.begin(), (*stored)->ms.end(), [&](std::int64_t at) {
            return std::binary_search(ms.begin(), ms.end(), at);
        });
    }
}

} // namespace

Result<std::int64_t> countTaken(const Database& database, std::int64_t import)
{
    auto sensors = query<BulkStatement>(
        database, "SELECT DISTINCT sensor FROM aside_blocks WHERE import = ?",
        [](const BulkStatement& row) { return row.integer(0); }, import);
    HOLDBAND_TRY(sensors);
    std::int64_t taken = 0;
    for (const std::int64_t sensor : *sensors) {
        BlockRows aside;
        HOLDBAND_TRY(readBlocksOf(database, sensor, import, true, aside.ms, aside.values));
        auto count = countStoredAt(database, sensor, aside.ms);
        HOLDBAND_TRY(count);
        taken += *count;
    }
    return taken;
}

} // namespace holdband::store
