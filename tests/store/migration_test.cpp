// A logbook of the first format is migrated with all its contents, also by readers, and a copy of
// the original is made.
#include "core/store/history/history.h"
#include "core/store/history/undo.h"
#include "core/store/readings/imports.h"
#include "core/store/records/causes.h"
#include "core/store/records/judging_notice.h"
#include "core/store/records/weighing.h"
#include "core/store/safety/backup.h"
#include "core/store/safety/seal.h"
#include "core/store/safety/soundness.h"
#include "core/store/sqlite/rows.h"
#include "core/store/sqlite/schema.h"
#include "tests/store/logbooks.h"
#include "tests/store/older_schema.h"
#include "tests/store/saying.h"

#include <filesystem>
#include <fstream>

namespace holdband::test {
namespace {

const std::string oldContents = contentsOfFormat1 + R"sql(
INSERT INTO meter_corrections VALUES (1, 2, 5.6, 2, 1772200000000, 'digits swapped', 1);
)sql";

class Migration : public LogbookTest {
protected:
    void makeOldLogbook() const
    {
        auto database = store::Database::open(path(), store::Access::write, true);
        ASSERT_TRUE(database);
        const auto first = std::span(store::schemaSteps()).first(1);
        ASSERT_TRUE(store::migrate(**database, first));
        ASSERT_TRUE((*database)->execute(oldContents));
        ASSERT_TRUE(store::renewSeal(**database));
    }

    void expectEverything(const store::LogbookFile& logbook) const
    {
        EXPECT_EQ(store::readSettings(logbook)->zone, "America/Denver");
        EXPECT_EQ(store::readSettings(logbook)->rounds, usualRounds());
        const auto readings = *store::readMeterReadings(logbook, "Meter");
        ASSERT_EQ(readings.size(), 2u);
        EXPECT_EQ(readings[0].inForce.note, "first");
        EXPECT_EQ(readings[1].inForce.registerReading.kilowattHours(), 5.6);
        ASSERT_EQ(readings[1].before.size(), 1u);
        EXPECT_EQ(readings[1].before[0].kwh, 6.5);
        EXPECT_EQ(readings[1].before[0].why, "digits swapped");
        const Batch batch = *store::readBatch(logbook, "Ale");
        EXPECT_EQ(batch.schedule.front().until, StageUntil::hours);
        EXPECT_TRUE(batch.planChanges.empty());
        EXPECT_EQ(store::readSensors(logbook)->front().offsets.size(), 1u);
        EXPECT_FALSE(store::readSensors(logbook)->front().readByHand);
    }
};

TEST_F(Migration, PreservesEverythingAndACopyOfTheOldFile)
{
    makeOldLogbook();
    auto logbook = store::LogbookFile::open(path(), store::Access::write, [] { return someday; });
    ASSERT_TRUE(logbook) << logbook.error().sentence();
    expectEverything(**logbook);
    EXPECT_TRUE(std::filesystem::exists(path() + ".format1.backup"));
    auto damage = store::findDamage(**logbook);
    ASSERT_TRUE(damage);
    EXPECT_EQ(*damage, std::vector<std::string>{});
}

using BlockRow = std::vector<std::int64_t>;

Result<std::vector<BlockRow>> blocksOf(const std::string& path)
{
    auto database = store::Database::open(path, store::Access::read, false);
    EXPECT_TRUE(database);
    return store::query(**database,
                        "SELECT sensor, block, import, readings, checksum FROM block_checksums",
                        [](const store::Statement& row) {
                            return BlockRow{row.integer(0), row.integer(1), row.integer(2),
                                            row.integer(3), row.integer(4)};
                        });
}

/// The schema of format 4.
void forgetBlocks(const std::string& path, const std::string& more = {})
{
    auto database = store::Database::open(path, store::Access::write, false);
    ASSERT_TRUE(database);
    ASSERT_TRUE(
        (*database)->execute(dropStepsFrom7 +
                             "DROP TABLE block_checksums; ALTER TABLE acts DROP COLUMN arguments; "
                             "ALTER TABLE acts RENAME COLUMN verb TO what; "
                             "PRAGMA user_version = 4; " +
                             more));
    ASSERT_TRUE(store::renewSeal(**database));
}

class BlockMigration : public Migration {
protected:
    void SetUp() override
    {
        const auto logbook = create();
        addEquipment(*logbook);
        Log log;
        for (int minute = 0; minute < 5000; ++minute)
            log.add(minute, 20.0 + minute % 7);
        addLog(*logbook, log);
    }

    Result<Series> readAll() const
    {
        auto logbook = store::LogbookFile::open(path(), store::Access::read);
        EXPECT_TRUE(logbook);
        return store::readSeries(**logbook, "Beer", {Instant::min(), Instant::max()});
    }
};

TEST_F(BlockMigration, MakesTheChecksumsThatAnImportMakesNow)
{
    const auto before = blocksOf(path());
    ASSERT_TRUE(before);
    ASSERT_EQ(before->size(), 5u) << "the log goes from block 26418.27 to 26422.74";
    forgetBlocks(path());
    EXPECT_EQ(readAll()->size(), 5000u);
    EXPECT_EQ(*blocksOf(path()), *before);
}

/// Each block of readings, in force or aside, as a text.
std::vector<std::string> textsOf(const std::string& path)
{
    auto database = store::Database::open(path, store::Access::read, false);
    EXPECT_TRUE(database);
    return *store::query(**database,
                         "SELECT concat FROM (SELECT 'in force' || sensor || ' ' || block || ' ' "
                         "|| import || ' ' || first_at || ' ' || coalesce(step_ms, '-') || ' ' || "
                         "logged AS concat FROM reading_blocks UNION ALL SELECT 'aside' || sensor "
                         "|| ' ' || block || ' ' || import || ' ' || first_at || ' ' || "
                         "coalesce(step_ms, '-') || ' ' || logged FROM aside_blocks)",
                         [](const store::Statement& row) { return row.text(0); });
}

TEST_F(BlockMigration, MakesTheBlocksThatAnImportMakesNow)
{
    {
        const auto logbook = store::LogbookFile::open(path(), store::Access::write);
        ASSERT_TRUE(logbook);
        Log between; // its readings lie between those of the first import, at uneven times
        for (int minute = 1; minute < 2000; minute += 1 + minute % 3) {
            between.at.push_back(someday + std::chrono::minutes{minute} + std::chrono::seconds{30});
            between.raw.push_back(19.0 + minute / 7.0);
            between.line.push_back(static_cast<std::uint32_t>(minute));
        }
        addLog(**logbook, between);
        Log later;
        for (int minute = 6000; minute < 7000; ++minute)
            later.add(minute, -1.25);
        addLog(**logbook, later);
        addLog(**logbook, later);
        auto change = store::Change::begin(**logbook, saying("withdraw"));
        ASSERT_TRUE(store::withdraw(*change, {3}));
        ASSERT_TRUE(change->commit());
        addLog(**logbook, later);
        ASSERT_TRUE(store::undoLast(**logbook));
    }
    const auto before = textsOf(path());
    const Series series = *readAll();
    ASSERT_EQ(before.size(), 5u + 3u + 2u * 2u)
        << "the second log goes to block 26420.05, the third from 26423.63 to 26424.52";
    forgetBlocks(path());
    const auto read = readAll();
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(textsOf(path()), before);
    EXPECT_EQ(read->at, series.at);
    EXPECT_EQ(read->value, series.value);
    EXPECT_EQ(*store::findDamage(**store::LogbookFile::open(path(), store::Access::read)),
              std::vector<std::string>{});
}

TEST_F(BlockMigration, StopsWhereARowWasNotMoved)
{
    forgetBlocks(path());
    auto database = store::Database::open(path(), store::Access::write, false);
    ASSERT_TRUE(database);
    EXPECT_FALSE(store::migrate(**database, store::schemaSteps())) << "without moving the rows";
    EXPECT_EQ(*(*database)->integer("PRAGMA user_version"), 4);
    EXPECT_EQ(*(*database)->integer("SELECT count(*) FROM readings"), 5000);
}

TEST_F(BlockMigration, LeavesDamageNoticed)
{
    forgetBlocks(path(), "UPDATE readings SET value = 8.9e155 WHERE place = "
                         "(SELECT max(place) FROM readings);");
    const auto read = readAll();
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().kind, ProblemKind::file);
}

std::size_t filesLike(const std::string& path, const std::string& beginning)
{
    std::size_t count = 0;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::filesystem::path(path).parent_path()))
        count += entry.path().string().starts_with(beginning);
    return count;
}

TEST_F(Migration, ThatWasInterruptedContinuesWithTheExistingCopy)
{
    makeOldLogbook();
    {
        const auto old = store::Database::open(path(), store::Access::write, false);
        ASSERT_TRUE(store::backupTo(**old, path() + ".format1.backup"));
    }
    const auto logbook = store::LogbookFile::open(path(), store::Access::read);
    ASSERT_TRUE(logbook) << logbook.error().sentence();
    expectEverything(**logbook);
    EXPECT_EQ(filesLike(path(), path() + ".format1.backup"), 1u);
}

TEST_F(Migration, LeavesAnotherFileOfTheCopysNameUnchanged)
{
    makeOldLogbook();
    std::ofstream(path() + ".format1.backup") << "mine";
    const auto logbook = store::LogbookFile::open(path(), store::Access::write);
    ASSERT_TRUE(logbook) << logbook.error().sentence();
    EXPECT_EQ(std::filesystem::file_size(path() + ".format1.backup"), 4u);
    const auto copy =
        store::Database::open(path() + ".format1.backup-2", store::Access::read, false);
    ASSERT_TRUE(copy);
    EXPECT_EQ(*(*copy)->integer("PRAGMA user_version"), 1);
    EXPECT_EQ(*(*copy)->integer("SELECT count(*) FROM meter_readings"), 2);
}

TEST_F(Migration, MakesAllStepsOrNone)
{
    makeOldLogbook();
    auto database = store::Database::open(path(), store::Access::write, false);
    ASSERT_TRUE(database);
    std::vector<store::SchemaStep> steps = store::schemaSteps();
    steps.push_back({steps.back().version + 1, "INSERT INTO nowhere VALUES (1)"});
    EXPECT_FALSE(store::migrate(**database, steps));
    EXPECT_EQ(*(*database)->integer("PRAGMA user_version"), 1);
    EXPECT_TRUE(*store::sealHolds(**database));
}

TEST_F(Migration, OfTheSecondFormatGainsCauses)
{
    makeOldLogbook();
    {
        auto database = store::Database::open(path(), store::Access::write, false);
        ASSERT_TRUE(database);
        ASSERT_TRUE(store::migrate(**database, std::span(store::schemaSteps()).first(2)));
        ASSERT_EQ(*(*database)->integer("PRAGMA user_version"), 2);
        ASSERT_TRUE(store::renewSeal(**database));
    }
    auto logbook = store::LogbookFile::open(path(), store::Access::write, [] { return someday; });
    ASSERT_TRUE(logbook) << logbook.error().sentence();
    EXPECT_TRUE(std::filesystem::exists(path() + ".format2.backup"));
    expectEverything(**logbook);
    EXPECT_TRUE(store::readCauses(**logbook, "Ale")->empty());
    auto change = store::Change::begin(**logbook, saying("cause"));
    const ExcursionCause given{
        {someday, someday + std::chrono::hours{1}}, Side::below, Cause::powerCut, "storm"};
    ASSERT_TRUE(store::addCause(*change, "Ale", given));
    ASSERT_TRUE(change->commit());
    EXPECT_EQ(store::readCauses(**logbook, "Ale")->front().cause, given);
    EXPECT_EQ(*store::findDamage(**logbook), std::vector<std::string>{});
}

TEST_F(Migration, OfTheThirdFormatGainsWeights)
{
    makeOldLogbook();
    {
        auto database = store::Database::open(path(), store::Access::write, false);
        ASSERT_TRUE(database);
        ASSERT_TRUE(store::migrate(**database, std::span(store::schemaSteps()).first(3)));
        ASSERT_EQ(*(*database)->integer("PRAGMA user_version"), 3);
        ASSERT_TRUE(store::renewSeal(**database));
    }
    auto logbook = store::LogbookFile::open(path(), store::Access::write, [] { return someday; });
    ASSERT_TRUE(logbook) << logbook.error().sentence();
    EXPECT_TRUE(std::filesystem::exists(path() + ".format3.backup"));
    expectEverything(**logbook);
    EXPECT_EQ(*store::readWeighing(**logbook), Weighing{});
    Weighing weighing;
    weighing.weights = {{"noise", 3.0}};
    auto change = store::Change::begin(**logbook, saying("weighed"));
    ASSERT_TRUE(store::writeWeighing(*change, weighing));
    ASSERT_TRUE(change->commit());
    EXPECT_EQ(*store::readWeighing(**logbook), weighing);
    EXPECT_EQ(*store::findDamage(**logbook), std::vector<std::string>{});
}

TEST_F(Migration, OfTheSixthFormatJudgesByTheUsualTimesAndTellsItOnce)
{
    makeOldLogbook();
    {
        auto database = store::Database::open(path(), store::Access::write, false);
        ASSERT_TRUE(database);
        ASSERT_TRUE(store::migrate(**database, std::span(store::schemaSteps()).first(6)));
        ASSERT_TRUE(store::renewSeal(**database));
    }
    auto logbook = store::LogbookFile::open(path(), store::Access::write, [] { return someday; });
    ASSERT_TRUE(logbook) << logbook.error().sentence();
    EXPECT_TRUE(std::filesystem::exists(path() + ".format6.backup"));
    expectEverything(**logbook);
    Batch batch = *store::readBatch(**logbook, "Ale");
    EXPECT_EQ(batch.bandTimes, (BandTimes{std::chrono::minutes{60}, std::chrono::minutes{15}}));
    // One that is pitched after the migration was never judged by the rules before.
    batch.name = "Ale 2";
    auto change = store::Change::begin(**logbook, saying("pitched"));
    ASSERT_TRUE(store::addBatch(*change, batch));
    ASSERT_TRUE(change->commit());
    const auto before = store::batchesJudgedBefore(**logbook);
    ASSERT_TRUE(before);
    EXPECT_EQ(*before, std::optional(std::vector<std::string>{"Ale"}));
    const std::size_t entries = store::readHistoryEntries(**logbook)->size();
    ASSERT_TRUE(store::noteJudgingTold(**logbook));
    EXPECT_EQ(*store::batchesJudgedBefore(**logbook), std::nullopt);
    EXPECT_EQ(store::readHistoryEntries(**logbook)->size(), entries);
    EXPECT_EQ(*store::findDamage(**logbook), std::vector<std::string>{});
}

TEST_F(Migration, TellsNothingInALogbookWithoutOlderBatches)
{
    EXPECT_EQ(*store::batchesJudgedBefore(*create()), std::nullopt);
    {
        auto database = store::Database::open(path("old.holdband"), store::Access::write, true);
        ASSERT_TRUE(database);
        ASSERT_TRUE(store::migrate(**database, std::span(store::schemaSteps()).first(6)));
        ASSERT_TRUE(store::renewSeal(**database));
    }
    const auto old = store::LogbookFile::open(path("old.holdband"), store::Access::write);
    ASSERT_TRUE(old) << old.error().sentence();
    EXPECT_EQ(*store::batchesJudgedBefore(**old), std::nullopt);
}

TEST_F(Migration, DoesNotSealDamagedData)
{
    makeOldLogbook();
    {
        auto database = store::Database::open(path(), store::Access::write, false);
        ASSERT_TRUE((*database)->execute("UPDATE meter_readings SET kwh = 9 WHERE id = 1"));
    }
    auto logbook = store::LogbookFile::open(path(), store::Access::write, [] { return someday; });
    ASSERT_TRUE(logbook);
    EXPECT_EQ(store::findDamage(**logbook)->size(), 1u);
}

TEST_F(Migration, AReaderUpdatesTheFileToo)
{
    makeOldLogbook();
    auto logbook = store::LogbookFile::open(path(), store::Access::read, [] { return someday; });
    ASSERT_TRUE(logbook) << logbook.error().sentence();
    expectEverything(**logbook);
}

} // namespace
} // namespace holdband::test
