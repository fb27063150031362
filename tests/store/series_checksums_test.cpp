// Readings are checked against the checksums of their imports as they are read, whatever part of
// the import is requested; this reads at most two blocks of the log beyond it.
#include "core/store/history/undo.h"
#include "core/store/readings/imports.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using ::testing::HasSubstr;

class SeriesChecksums : public LogbookTest {
protected:
    void make(int readings)
    {
        const auto logbook = create();
        addEquipment(*logbook);
        Log log;
        for (int minute = 0; minute < readings; ++minute)
            log.add(minute, 20.0 + minute % 7);
        addLog(*logbook, log);
    }

    Result<Series> read(int fromMinute, int toMinute)
    {
        const auto logbook = store::LogbookFile::open(path(), store::Access::read);
        EXPECT_TRUE(logbook);
        return store::readSeries(
            **logbook, "Beer",
            {someday + std::chrono::minutes{fromMinute}, someday + std::chrono::minutes{toMinute}});
    }

    /// Flips one bit of the exponent: 21 becomes about 10 to the 155.
    void damageOne(int minute)
    {
        const auto database = store::Database::open(path(), store::Access::write, false);
        ASSERT_TRUE(database);
        const std::int64_t at = toMs(someday) + 60'000 * std::int64_t{minute};
        ASSERT_TRUE((*database)->execute(
            "UPDATE reading_blocks SET logged = json_set(logged, '$[' "
            "|| ((" +
            std::to_string(at) +
            " - first_at) / step_ms) || ']', 8.9e155) WHERE block = " + std::to_string(at >> 26)));
    }
};

/// A block is 2^26 ms: 1118 or 1119 minutes.
constexpr int blockMinutes = 1119;

TEST_F(SeriesChecksums, ValidOnesAreRead)
{
    make(3000);
    EXPECT_EQ(read(0, 3000)->size(), 3000u);
    EXPECT_EQ(read(100, 110)->size(), 13u) << "one neighbour on each side";
    EXPECT_EQ(read(-500, -400)->size(), 1u);
    EXPECT_EQ(read(5000, 6000)->size(), 1u);
}

TEST_F(SeriesChecksums, AChangedReadingIsNoticedAndNoFigureIsMadeOfIt)
{
    make(5000);
    damageOne(2500);
    for (const auto& [from, to] : {std::pair{0, 5000}, std::pair{2400, 2510}, std::pair{2490, 2499},
                                   std::pair{2501, 4900}}) {
        const auto series = read(from, to);
        ASSERT_FALSE(series) << from;
        EXPECT_EQ(series.error().kind, ProblemKind::file);
        EXPECT_THAT(series.error().sentence(),
                    HasSubstr("\"Beer\" imported from log.csv no longer fit their checksum"));
    }
}

TEST_F(SeriesChecksums, ADistantOneDoesNotAffectABatch)
{
    make(5000);
    damageOne(2500);
    EXPECT_TRUE(read(100, 2500 - blockMinutes - 1));
    EXPECT_TRUE(read(2500 + blockMinutes + 1, 4900));
}

TEST_F(SeriesChecksums, AMissingOneIsNoticed)
{
    make(3000);
    const auto database = store::Database::open(path(), store::Access::write, false);
    ASSERT_TRUE(database);
    ASSERT_TRUE((*database)->execute("UPDATE reading_blocks SET logged = json_remove(logged, "
                                     "'$[0]'), first_at = first_at + step_ms "
                                     "WHERE block = (SELECT min(block) FROM reading_blocks)"));
    EXPECT_FALSE(read(0, 3000));
}

TEST_F(SeriesChecksums, AMissingBlockIsNoticed)
{
    make(5000);
    const auto database = store::Database::open(path(), store::Access::write, false);
    ASSERT_TRUE(database);
    ASSERT_TRUE((*database)->execute("DELETE FROM reading_blocks"));
    EXPECT_FALSE(read(0, 5000));
    EXPECT_FALSE(read(2000, 2010));
}

TEST_F(SeriesChecksums, OneWithoutAnImportIsNoticed)
{
    make(3000);
    const auto database = store::Database::open(path(), store::Access::write, false);
    ASSERT_TRUE(database);
    ASSERT_TRUE((*database)->execute(
        "INSERT INTO reading_blocks SELECT sensor, block, 99, first_at + 1000, step_ms, logged "
        "FROM reading_blocks LIMIT 1"));
    EXPECT_FALSE(read(0, 100));
}

TEST_F(SeriesChecksums, FollowAnImportThatIsWithdrawnUndoneAndRedone)
{
    const auto logbook = create();
    addEquipment(*logbook);
    Log log;
    for (int minute = 0; minute < 3000; ++minute)
        log.add(minute, 20.0);
    addLog(*logbook, log);
    const auto size = [&] { return read(0, 3000)->size(); };
    ASSERT_TRUE(store::undoLast(*logbook));
    EXPECT_EQ(size(), 0u);
    ASSERT_TRUE(store::redoLast(*logbook));
    EXPECT_EQ(size(), 3000u);
    auto change = store::Change::begin(*logbook, saying("withdraw"));
    ASSERT_TRUE(change);
    ASSERT_TRUE(store::withdraw(*change, {1}));
    ASSERT_TRUE(change->commit());
    EXPECT_EQ(size(), 0u);
}

} // namespace
} // namespace holdband::test
