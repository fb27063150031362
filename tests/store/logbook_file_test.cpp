// Making, opening, migrating and locking a logbook file.
#include "core/store/records/journal.h"
#include "core/store/safety/backup.h"
#include "core/store/safety/writer_lock.h"
#include "core/store/sqlite/schema.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <filesystem>
#include <fstream>
#include <sqlite3.h>

namespace holdband::test {
namespace {

using store::Access;
using store::LogbookFile;

class LogbookFiles : public LogbookTest {};

TEST_F(LogbookFiles, HaveTheRequiredSettings)
{
    const auto logbook = create();
    const auto& database = logbook->database();
    EXPECT_EQ(*database.text("PRAGMA journal_mode"), "delete");
    EXPECT_EQ(*database.integer("PRAGMA synchronous"), 3);
    EXPECT_EQ(*database.integer("PRAGMA foreign_keys"), 1);
    EXPECT_EQ(*database.integer("PRAGMA trusted_schema"), 0);
    EXPECT_EQ(*database.integer("PRAGMA application_id"), store::applicationId);
    EXPECT_EQ(*database.integer("PRAGMA user_version"), store::schemaSteps().back().version);
}

TEST_F(LogbookFiles, AreOpenForWritingOnce)
{
    const auto first = create();
    const auto second = LogbookFile::open(path(), Access::write);
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().kind, ProblemKind::file);
    EXPECT_NE(second.error().what.find("open for writing"), std::string::npos);
    EXPECT_TRUE(LogbookFile::open(path(), Access::read));
}

TEST_F(LogbookFiles, AChangeThatIsNotCommittedLeavesNothing)
{
    const auto logbook = create();
    {
        auto change = store::Change::begin(*logbook, saying("half a setup"));
        ASSERT_TRUE(change);
        holdband::Setup setup;
        setup.name = "Loop";
        ASSERT_TRUE(store::addSetup(*change, setup));
    }
    EXPECT_TRUE(store::readSetups(*logbook)->empty());
    EXPECT_EQ(*logbook->database().integer("SELECT count(*) FROM acts"), 1);
}

TEST_F(LogbookFiles, ReadersCannotWrite)
{
    create();
    const auto reader = LogbookFile::open(path(), Access::read);
    ASSERT_TRUE(reader);
    EXPECT_FALSE(store::Change::begin(**reader, saying("nothing")));
}

TEST_F(LogbookFiles, EquipmentIsReadAsItWasWritten)
{
    const auto logbook = create();
    holdband::Setup setup{"Loop",        "coolant loop", 2, Power::watts(260), {{"pump", 2, 21.5}},
                          {{"noise", 2}}};
    Sensor sensor{
        "Beer",
        SensorKind::beer,
        "Loop",
        TemperatureDifference::kelvins(0.5),
        {{someday, TemperatureDifference::kelvins(-0.2), TemperatureDifference::kelvins(0.1)}},
        "in the beer"};
    Meter meter{"Meter", "Loop",  Energy::kilowattHours(0.01),    Energy::kilowattHours(10000),
                0.01,    someday, someday + std::chrono::hours{5}};
    LogbookSettings settings{"America/Denver", UnitSystem::us, "USD", {0.15, {}}};
    settings.tariff.windows.push_back(
        {{true, false, true, false, true, false, true}, 960, 60, 0.3});
    auto change = store::Change::begin(*logbook, saying("equipment"));
    ASSERT_TRUE(change);
    ASSERT_TRUE(store::addSetup(*change, setup));
    ASSERT_TRUE(store::addSensor(*change, sensor));
    ASSERT_TRUE(store::addMeter(*change, meter));
    ASSERT_TRUE(store::writeSettings(*change, settings));
    ASSERT_TRUE(change->commit());
    EXPECT_EQ(store::readSetups(*logbook)->at(0), setup);
    EXPECT_EQ(store::readSensors(*logbook)->at(0), sensor);
    EXPECT_EQ(store::readMeters(*logbook)->at(0), meter);
    EXPECT_EQ(*store::readSettings(*logbook), settings);
}

TEST_F(LogbookFiles, ABatchIsReadAsItWasWritten)
{
    const auto logbook = create();
    addEquipment(*logbook);
    Batch batch;
    batch.name = "Trial";
    batch.setup = "Loop";
    batch.volume = Volume::usGallons(5);
    batch.pitched = someday;
    batch.beerSensor = "Beer";
    batch.tolerance = TemperatureDifference::fahrenheitDegrees(3);
    batch.gapLimit = std::chrono::minutes{30};
    batch.originalGravity = Gravity::specific(1.052);
    Stage primary{"Primary", StageKind::hold, Temperature::fahrenheit(66), Hours{216}, {}, {}};
    Stage rise{"Rise",
               StageKind::ramp,
               Temperature::fahrenheit(70),
               Hours{24},
               TemperatureDifference::kelvins(1),
               Hours{12}};
    batch.schedule = {primary, rise};
    auto change = store::Change::begin(*logbook, saying("batch"));
    ASSERT_TRUE(change);
    ASSERT_TRUE(store::addBatch(*change, batch));
    ASSERT_TRUE(store::addNote(*change, {someday, "Trial", "pitched"}));
    ASSERT_TRUE(change->commit());
    EXPECT_EQ(*store::readBatch(*logbook, "Trial"), batch);
    EXPECT_EQ(store::readJournal(*logbook)->at(0).text, "pitched");
    EXPECT_FALSE(store::readBatch(*logbook, "trial"));
}

TEST_F(LogbookFiles, NamesNeverBecomeSql)
{
    const auto logbook = create();
    auto change = store::Change::begin(*logbook, saying("names"));
    ASSERT_TRUE(change);
    for (const char* name :
         {"Bobby'; DROP TABLE setups;--", "\"quoted\"", "\u202Egnol", "../up", "-dash", "ä ö"}) {
        holdband::Setup setup;
        setup.name = name;
        EXPECT_TRUE(store::addSetup(*change, setup)) << name;
    }
    holdband::Setup twice;
    twice.name = "\"Quoted\"";
    EXPECT_FALSE(store::addSetup(*change, twice));
    ASSERT_TRUE(change->commit());
    EXPECT_EQ(store::readSetups(*logbook)->size(), 6u);
}

TEST_F(LogbookFiles, StepsBringAnOlderFormatUpToDate)
{
    auto database = store::Database::open(path(), Access::write, true);
    ASSERT_TRUE(database);
    const store::SchemaStep one{1, "CREATE TABLE a (x)"};
    const store::SchemaStep two{2, "ALTER TABLE a ADD COLUMN y; INSERT INTO a VALUES (1, 2)"};
    const store::SchemaStep broken{3, "CREATE TABLE b (x); CREATE TABLE a (x)"};
    ASSERT_TRUE(store::migrate(**database, std::vector{one}));
    EXPECT_EQ(*(*database)->integer("PRAGMA user_version"), 1);
    ASSERT_TRUE(store::migrate(**database, std::vector{one, two}));
    EXPECT_EQ(*(*database)->integer("SELECT y FROM a"), 2);
    // A step that fails in the middle leaves the previous version complete.
    EXPECT_FALSE(store::migrate(**database, std::vector{one, two, broken}));
    EXPECT_EQ(*(*database)->integer("PRAGMA user_version"), 2);
    EXPECT_EQ(*(*database)->integer("SELECT count(*) FROM sqlite_schema"), 1);
}

TEST_F(LogbookFiles, AWriterThatWasKilledLeavesTheLastSave)
{
    {
        const auto logbook = create();
        addEquipment(*logbook);
    }
    // A copy with a hot journal, as a writer killed in the middle of a save leaves it.
    const auto writer = LogbookFile::open(path(), Access::write);
    ASSERT_TRUE(writer);
    ASSERT_TRUE((*writer)->database().execute("PRAGMA cache_size = 1; BEGIN IMMEDIATE"));
    for (int i = 0; i < 500; ++i)
        ASSERT_TRUE((*writer)->database().execute(
            "INSERT INTO journal (at, text, act) VALUES (0, hex(randomblob(500)), 1)"));
    std::filesystem::copy_file(path(), path("killed.holdband"));
    ASSERT_TRUE(std::filesystem::exists(path() + "-journal"));
    std::filesystem::copy_file(path() + "-journal", path("killed.holdband") + "-journal");
    const auto reader = LogbookFile::open(path("killed.holdband"), Access::read);
    ASSERT_TRUE(reader) << reader.error().sentence();
    EXPECT_EQ(*(*reader)->database().integer("SELECT count(*) FROM journal"), 0);
    EXPECT_EQ(store::readSetups(**reader)->size(), 1u);
}

TEST_F(LogbookFiles, AReaderRollsBackAKilledWriterAlsoThroughALink)
{
    {
        const auto logbook = create();
        addEquipment(*logbook);
        // The state after a writer was killed in the middle of a save: pages and journal on disk.
        const auto& database = logbook->database();
        ASSERT_TRUE(
            database.execute("PRAGMA cache_size = 1; BEGIN IMMEDIATE; "
                             "UPDATE sensors SET name = 'Changed'; "
                             "CREATE TABLE filler AS WITH RECURSIVE n(i) AS (SELECT 1 UNION "
                             "ALL SELECT i + 1 FROM n WHERE i < 20000) SELECT i FROM n"));
        std::filesystem::copy_file(path(), path("killed.holdband"));
        std::filesystem::copy_file(path() + "-journal", path("killed.holdband-journal"));
    }
    std::filesystem::create_symlink("killed.holdband", path("link.holdband"));
    const auto reader = store::LogbookFile::open(path("link.holdband"), store::Access::read);
    ASSERT_TRUE(reader) << reader.error().sentence();
    const auto sensors = store::readSensors(**reader);
    ASSERT_TRUE(sensors);
    EXPECT_EQ(sensors->at(0).name, "Beer");
}

TEST_F(LogbookFiles, SaysWhyALogbookCannotBeMadeThere)
{
    const auto why = [&](const std::string& where) {
        const auto made = store::LogbookFile::create(where, {});
        EXPECT_FALSE(made);
        return made ? std::string() : made.error().what;
    };
    EXPECT_EQ(why(path("no/such.holdband")), "there is no such folder");
    EXPECT_EQ(why(path(std::string(300, 'x').c_str())),
              "the file can't be written: File name too long");
    std::filesystem::create_symlink("nowhere", path("dangling"));
    EXPECT_EQ(why(path("dangling")),
              "something with this name already exists; nothing was changed");
}

TEST_F(LogbookFiles, ABackupThatFailsNamesItsTarget)
{
    const auto logbook = create();
    const Done copied = store::backupTo(logbook->database(), path("no/copy.holdband"));
    ASSERT_FALSE(copied);
    EXPECT_EQ(copied.error().place, path("no/copy.holdband"));
}

void writeText(const std::string& path, const std::string& text)
{
    std::ofstream(path) << text;
}

std::string textIn(const std::string& path)
{
    std::ifstream file(path);
    return {std::istreambuf_iterator<char>(file), {}};
}

TEST_F(LogbookFiles, AnEmptyLockLocksNobodyOut)
{
    create();
    writeText(path("log.holdband.lock"), "");
    const auto writer = LogbookFile::open(path(), Access::write);
    ASSERT_TRUE(writer) << writer.error().sentence();
    EXPECT_FALSE(LogbookFile::open(path(), Access::write)); // it is still locked for others
}

TEST_F(LogbookFiles, ALockOfAnotherComputerNamesItsFileAndTheRemedy)
{
    create();
    // In the format of QLockFile: process, program, computer.
    writeText(path("log.holdband.lock"), "4711\nholdband\ngarage-laptop\n");
    const auto writer = LogbookFile::open(path(), Access::write);
    ASSERT_FALSE(writer);
    const std::string said = writer.error().sentence();
    EXPECT_NE(said.find("another computer, garage-laptop"), std::string::npos) << said;
    EXPECT_NE(said.find("delete the file " + store::realPath(path()) + ".lock"), std::string::npos)
        << said;
    EXPECT_TRUE(LogbookFile::open(path(), Access::read));
}

TEST_F(LogbookFiles, AnInvalidLockNamesItsFile)
{
    create();
    writeText(path("log.holdband.lock"), "shopping list");
    const auto writer = LogbookFile::open(path(), Access::write);
    ASSERT_FALSE(writer);
    EXPECT_NE(writer.error().what.find("log.holdband.lock"), std::string::npos)
        << writer.error().what;
    EXPECT_EQ(textIn(path("log.holdband.lock")), "shopping list");
}

TEST_F(LogbookFiles, AReaderIsNotLockedOutByALargeChange)
{
    const auto writer = create();
    auto change = store::Transaction::begin(writer->database());
    ASSERT_TRUE(change);
    // About 30 MB, far more than SQLite's page cache of 2 MB.
    ASSERT_TRUE(writer->database().execute(
        "CREATE TABLE big AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n "
        "WHERE i < 30000) SELECT i, randomblob(1000) AS bytes FROM n"));
    const auto reader = LogbookFile::open(path(), Access::read);
    ASSERT_TRUE(reader) << reader.error().sentence();
    EXPECT_TRUE(store::readSettings(**reader));
}

TEST_F(LogbookFiles, AChangeThatAReaderHoldsUpSavesNothingAndCanBeRepeated)
{
    const auto writer = create();
    const auto reader = LogbookFile::open(path(), Access::read);
    ASSERT_TRUE(reader);
    sqlite3_busy_timeout(writer->database().raw(), 0);
    const auto save = [&]() -> Done {
        auto change = store::Change::begin(*writer, saying("setup"));
        HOLDBAND_TRY(change);
        holdband::Setup setup;
        setup.name = "Loop";
        HOLDBAND_TRY(store::addSetup(*change, setup));
        return change->commit();
    };
    {
        const auto steady = store::Transaction::beginReading((*reader)->database());
        ASSERT_TRUE(steady);
        ASSERT_TRUE(store::readSetups(**reader));
        const Done refused = save();
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().sentence(), path() + ": another program is using the file; wait "
                                                       "until it has finished, then try again.");
        EXPECT_TRUE(store::readSetups(*writer)->empty());
    }
    EXPECT_TRUE(save());
    EXPECT_EQ(store::readSetups(**reader)->size(), 1u);
}

/// Waits the busy time, 5 s.
TEST_F(LogbookFiles, AReaderOfAFileThatIsBeingSavedBlamesNobody)
{
    create();
    const auto writer = store::Database::open(path(), Access::write, false);
    // As in the middle of a commit: the journal is there, and so is the writer.
    ASSERT_TRUE(writer && (*writer)->execute("BEGIN EXCLUSIVE; CREATE TABLE more (id INTEGER)"));
    ASSERT_TRUE(std::filesystem::exists(path() + "-journal"));
    const auto lock = store::lockForWriting(path());
    ASSERT_TRUE(lock);
    const auto reader = LogbookFile::open(path(), Access::read);
    ASSERT_FALSE(reader);
    EXPECT_EQ(reader.error().sentence(), path() + ": another program is using the file; wait until "
                                                  "it has finished, then try again.");
}

TEST_F(LogbookFiles, ANameIsNeverReadAsAUri)
{
    create("own.holdband");
    const std::string before = textIn(path("own.holdband"));
    const auto here = std::filesystem::current_path();
    std::filesystem::current_path(std::filesystem::path(path()).parent_path());
    LogbookSettings settings;
    settings.zone = "Europe/Berlin";
    const auto made = LogbookFile::create("file:own.holdband", settings);
    EXPECT_TRUE(made) << (made ? "" : made.error().sentence());
    EXPECT_TRUE(std::filesystem::exists("file:own.holdband"));
    std::filesystem::current_path(here);
    EXPECT_EQ(textIn(path("own.holdband")), before);
}

TEST_F(LogbookFiles, AnEmptyNameIsRefused)
{
    const auto made = LogbookFile::create("", {});
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().what, "the logbook has no name");
    EXPECT_FALSE(LogbookFile::open("", Access::read));
}

TEST_F(LogbookFiles, ALongNameIsAProblemAndNotAnException)
{
    for (const std::size_t length : {246u, 248u, 253u, 256u, 5000u}) {
        const std::string name = path(std::string(length, 'x').c_str());
        EXPECT_FALSE(LogbookFile::open(name, Access::read)) << length;
        EXPECT_FALSE(LogbookFile::open(name, Access::write)) << length;
    }
}

TEST_F(LogbookFiles, AChangeOfAFileThatLostItsNameIsRefused)
{
    const auto save = [](const LogbookFile& logbook) -> Done {
        auto change = store::Change::begin(logbook, saying("setup"));
        HOLDBAND_TRY(change);
        holdband::Setup setup;
        setup.name = "Loop";
        HOLDBAND_TRY(store::addSetup(*change, setup));
        return change->commit();
    };
    const auto deleted = create("deleted.holdband");
    std::filesystem::remove(path("deleted.holdband"));
    Done saved = save(*deleted);
    ASSERT_FALSE(saved);
    EXPECT_NE(saved.error().what.find("deleted, moved or replaced"), std::string::npos);

    const auto replaced = create("replaced.holdband");
    create("other.holdband");
    std::filesystem::rename(path("other.holdband"), path("replaced.holdband"));
    EXPECT_FALSE(save(*replaced));
}

TEST_F(LogbookFiles, ABackupLeavesOtherFilesUnchanged)
{
    const auto logbook = create();
    writeText(path("copy.holdband.part"), "mine");
    ASSERT_TRUE(store::backupTo(logbook->database(), path("copy.holdband")));
    EXPECT_EQ(textIn(path("copy.holdband.part")), "mine");
}

} // namespace
} // namespace holdband::test
