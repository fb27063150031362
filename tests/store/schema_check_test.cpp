// A file whose tables, indexes or sizes are not those of a logbook is refused, and what is wrong is
// named. Damage stays visible after a change.
#include "core/store/history/undo.h"
#include "core/store/records/batches.h"
#include "core/store/records/journal.h"
#include "core/store/records/log_maps.h"
#include "core/store/safety/backups.h"
#include "core/store/safety/seal.h"
#include "core/store/safety/soundness.h"
#include "core/store/sqlite/sqlite_error.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <gmock/gmock.h>
#include <sqlite3.h>

namespace holdband::test {
namespace {

using ::testing::HasSubstr;

class ForeignSchema : public LogbookTest {
protected:
    void SetUp() override { addEquipment(*create()); }

    /// As another program would: without any of Holdband's guards.
    void changeFile(const std::string& sql) const
    {
        sqlite3* database = nullptr;
        ASSERT_EQ(sqlite3_open(path().c_str(), &database), SQLITE_OK);
        char* error = nullptr;
        sqlite3_exec(database, sql.c_str(), nullptr, nullptr, &error);
        EXPECT_EQ(std::string(error ? error : ""), "") << sql;
        sqlite3_free(error);
        sqlite3_close(database);
    }

    std::string refusal() const
    {
        const auto logbook = store::LogbookFile::open(path(), store::Access::read);
        if (logbook)
            return "opened";
        EXPECT_EQ(logbook.error().kind, ProblemKind::file);
        EXPECT_FALSE(store::LogbookFile::open(path(), store::Access::write));
        EXPECT_TRUE(store::needsBackup(path()));
        return logbook.error().sentence();
    }
};

TEST_F(ForeignSchema, AMissingTableIsNamed)
{
    changeFile("DROP TABLE ratings");
    EXPECT_THAT(refusal(), HasSubstr("missing in the file: table ratings"));
}

// A fuzzed logbook had a batch whose sensor was gone: it was found by its name, and then not.
TEST_F(ForeignSchema, ABatchWhoseSensorIsGoneIsDamage)
{
    changeFile("INSERT INTO batches (id, name, setup, pitched, beer_sensor, grace_ms, act) "
               "VALUES (1, 'Ale', 1, 1772000000000, 99, 0, 1)");
    const auto logbook = store::LogbookFile::open(path(), store::Access::read);
    ASSERT_TRUE(logbook) << logbook.error().sentence();
    const auto batch = store::readBatch(**logbook, "Ale");
    ASSERT_FALSE(batch);
    EXPECT_EQ(batch.error().kind, ProblemKind::file);
    EXPECT_THAT(batch.error().sentence(), HasSubstr("the batch \"Ale\" refers to equipment"));
}

TEST_F(ForeignSchema, AMissingIndexIsNamed)
{
    changeFile("DROP INDEX meter_readings_place");
    EXPECT_THAT(refusal(), HasSubstr("missing in the file: index meter_readings_place"));
}

TEST_F(ForeignSchema, AnAddedTableOrIndexIsNamed)
{
    changeFile("CREATE INDEX fast ON meter_readings (kwh)");
    EXPECT_THAT(refusal(), HasSubstr("never made by Holdband: index fast"));
    changeFile("DROP INDEX fast; CREATE TABLE mine (a)");
    EXPECT_THAT(refusal(), HasSubstr("never made by Holdband: table mine"));
}

TEST_F(ForeignSchema, AGeneratedColumnIsNamed)
{
    changeFile("ALTER TABLE meters ADD COLUMN twice REAL GENERATED ALWAYS AS (accuracy * 2)");
    EXPECT_THAT(refusal(), HasSubstr("not as Holdband makes it: table meters"));
}

TEST_F(ForeignSchema, AFlippedBitInANameOfAColumnIsNoticed)
{
    for (const char* column : {"kwh", "tolerance_k", "placement", "spec"}) {
        const std::string changed = std::string(1, static_cast<char>(column[0] ^ 1)) + (column + 1);
        changeFile("PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, ' " +
                   std::string(column) + "', ' " + changed + "')");
    }
    EXPECT_THAT(refusal(), HasSubstr("not as Holdband makes it: table"));
}

TEST_F(ForeignSchema, StatisticsOfSqliteAreNoHarm)
{
    changeFile("ANALYZE");
    EXPECT_EQ(refusal(), "opened");
}

TEST_F(ForeignSchema, AHugeValueIsRefusedByTheNameOfItsTable)
{
    const std::string bytes = std::to_string(store::mostBytesOfValue + 1);
    changeFile("UPDATE sensors SET placement = CAST(zeroblob(" + bytes + ") AS TEXT)");
    const auto logbook = store::LogbookFile::open(path(), store::Access::read);
    ASSERT_TRUE(logbook);
    const auto sealed = store::checkSeal((*logbook)->database());
    ASSERT_FALSE(sealed);
    EXPECT_THAT(sealed.error().sentence(), HasSubstr("in the table sensors: a value in the file is "
                                                     "larger than 256 MiB"));
}

class DamageStaysVisible : public LogbookTest {
protected:
    void SetUp() override
    {
        addEquipment(*create());
        const auto logbook = store::LogbookFile::open(path(), store::Access::write);
        auto change = store::Change::begin(**logbook, saying("a map"));
        ASSERT_TRUE(store::writeLogMap(*change, "shape", "{\"unit\":\"f\"}"));
        ASSERT_TRUE(change->commit());
    }

    void damage(const std::string& sql) const
    {
        const auto database = store::Database::open(path(), store::Access::write, false);
        ASSERT_TRUE((*database)->execute(sql));
    }

    static void writeSomething(const store::LogbookFile& logbook)
    {
        auto change = store::Change::begin(logbook, saying("a note"));
        ASSERT_TRUE(change) << change.error().sentence();
        JournalNote note;
        note.at = someday;
        note.text = "A note.";
        ASSERT_TRUE(store::addNote(*change, note));
        ASSERT_TRUE(change->commit());
    }

    bool isSealed() const
    {
        const auto logbook = store::LogbookFile::open(path(), store::Access::read);
        return *store::sealHolds((*logbook)->database());
    }
};

TEST_F(DamageStaysVisible, AfterAChangeInADamagedLogbook)
{
    damage("UPDATE sensors SET accuracy_k = 0.5");
    EXPECT_FALSE(isSealed());
    writeSomething(**store::LogbookFile::open(path(), store::Access::write));
    EXPECT_FALSE(isSealed());
}

TEST_F(DamageStaysVisible, WhenAnotherProgramWritesBetweenTwoChanges)
{
    const auto logbook = store::LogbookFile::open(path(), store::Access::write);
    writeSomething(**logbook);
    EXPECT_TRUE(isSealed());
    damage("UPDATE sensors SET accuracy_k = 0.5");
    writeSomething(**logbook);
    EXPECT_FALSE(isSealed());
}

TEST_F(DamageStaysVisible, InHowLogsAreRead)
{
    EXPECT_TRUE(isSealed());
    damage("UPDATE log_maps SET spec = '{\"unit\":\"c\"}'");
    EXPECT_FALSE(isSealed());
}

} // namespace
} // namespace holdband::test
