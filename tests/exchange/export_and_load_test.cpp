// What export writes, load takes back.
#include "core/editing/rounds.h"
#include "core/intake/log/import.h"
#include "core/store/history/history.h"
#include "core/store/history/history_text.h"
#include "core/store/history/undo.h"
#include "core/store/readings/imports.h"
#include "core/store/records/equipment.h"
#include "core/store/records/log_maps.h"
#include "core/store/records/watches.h"
#include "core/store/safety/soundness.h"
#include "tests/exchange/exported_again.h"
#include "tests/store/saying.h"

namespace holdband::test {
namespace {

void import(const DescribedLogbook& files, const std::string& log,
            std::optional<TemperatureUnit> unit)
{
    files.write("log.csv", log);
    const auto logbook = store::LogbookFile::open(files.path("d.holdband"), store::Access::write);
    ASSERT_TRUE(logbook);
    intake::ImportOptions options;
    options.path = files.path("log.csv");
    options.unit = unit;
    const auto imported = intake::importLog(**logbook, options);
    ASSERT_TRUE(imported) << imported.error().sentence();
    ASSERT_GT(imported->added(), 0);
}

TEST(ExportAndLoad, PreserveReadingsWhoseUnitHadToBeSet)
{
    const DescribedLogbook files;
    files.load(plain, "2026-03-10T00:00:00Z");
    // Hot water: no unit in the header, and a median that is odd for °C.
    import(files, "Time,Beer\n2026-03-09 00:00,66\n2026-03-09 01:00,67\n2026-03-09 02:00,68\n",
           TemperatureUnit::celsius);
    expectSameAgain(files);
}

TEST(ExportAndLoad, PreserveAnEightyFiveThatWasNoJumpBesideExistingReadings)
{
    const DescribedLogbook files;
    files.load(plain, "2026-03-10T00:00:00Z");
    import(files,
           "Time,Beer (C)\n2026-03-09 00:00,20\n2026-03-09 01:00,84\n2026-03-09 03:00,86\n"
           "2026-03-09 05:00,20\n2026-03-09 06:00,20\n2026-03-09 07:00,20\n"
           "2026-03-09 08:00,20\n",
           {});
    // Of the second log only new readings are stored: its 85 is then without near neighbours.
    import(files,
           "Time,Beer (C)\n2026-03-09 00:30,20\n2026-03-09 01:00,84\n2026-03-09 02:00,85\n"
           "2026-03-09 03:00,86\n2026-03-09 04:00,20\n2026-03-09 04:30,20\n"
           "2026-03-09 04:40,20\n2026-03-09 04:50,20\n",
           {});
    expectSameAgain(files);
}

TEST(ExportAndLoad, PreserveAReadingOfAMeterWithMoreDigitsThanAnyShows)
{
    const DescribedLogbook files;
    files.load(plain, "2026-03-10T00:00:00Z");
    // As spreadsheets write 12.4.
    import(files, "Time,Beer,M (kWh)\n2026-03-09 00:00,20,12.400000000000000355\n", {});
    expectSameAgain(files);
}

/// Three logs, of which the middle one is withdrawn and the last one has its times again.
void withdrawAnImport(const DescribedLogbook& files)
{
    import(files, "Time,Beer (C)\n2026-03-09 00:00,20\n2026-03-09 01:00,21\n", {});
    import(files, "Time,Beer (C)\n2026-03-09 02:00,22\n2026-03-09 03:00,23\n", {});
    {
        const auto logbook =
            store::LogbookFile::open(files.path("d.holdband"), store::Access::write);
        auto change = store::Change::begin(**logbook, saying("took back log.csv"));
        ASSERT_TRUE(store::withdraw(*change, store::listImports(**logbook)->front().id));
        ASSERT_TRUE(change->commit());
    }
    import(files, "Time,Beer (C)\n2026-03-09 02:00,25\n2026-03-09 04:00,24\n", {});
}

TEST(ExportAndLoad, PreserveAWithdrawnImport)
{
    const DescribedLogbook files;
    files.load(plain, "2026-03-10T00:00:00Z");
    withdrawAnImport(files);
    expectSameAgain(files);
    const auto again = store::LogbookFile::open(files.path("again.holdband"), store::Access::write);
    ASSERT_TRUE(again);
    EXPECT_EQ(*store::findDamage(**again), std::vector<std::string>{});
    const auto imports = *store::listImports(**again);
    ASSERT_EQ(imports.size(), 3u);
    EXPECT_TRUE(imports.back().withdrawnAt);
    // The newest import is withdrawn too, and the old one restored.
    auto change = store::Change::begin(**again, saying("changed my mind"));
    ASSERT_TRUE(store::withdraw(*change, imports.front().id));
    ASSERT_TRUE(store::restoreImport(*change, imports.back().id));
    ASSERT_TRUE(change->commit());
    EXPECT_EQ(*store::findDamage(**again), std::vector<std::string>{});
}

/// A withdrawn log of registers, another one with a deleted reading, and deleted typed readings,
/// one of them typed again.
void leaveReadingsOut(const DescribedLogbook& files)
{
    import(files, "Time,M (kWh)\n2026-03-08 00:00,1.5\n2026-03-08 12:00,2.5\n", {});
    import(files, "Time,M (kWh)\n2026-03-09 00:00,3.5\n2026-03-09 12:00,45\n", {});
    const auto logbook = store::LogbookFile::open(files.path("d.holdband"), store::Access::write);
    {
        auto change = store::Change::begin(**logbook, saying("took back log.csv"));
        ASSERT_TRUE(store::withdraw(*change, store::listImports(**logbook)->back().id));
        ASSERT_TRUE(change->commit());
    }
    auto change = store::Change::begin(
        **logbook, {store::HistoryVerb::readingDeleted, {"M", "1"}, "it was the other meter"});
    const auto id = store::readMeterReadings(**logbook, "M")->back().id;
    ASSERT_TRUE(store::correctMeterReading(*change, id, 4.5, 1,
                                           *parseRfc3339("2026-03-09T18:00:00Z"), "slip"));
    ASSERT_TRUE(store::deleteMeterReading(*change, id));
    MeterReading retyped;
    retyped.at = store::readRegisterRecord(**logbook, "M")->back().inForce.at;
    retyped.registerReading = Energy::kilowattHours(4.6);
    retyped.decimals = 1;
    ASSERT_TRUE(store::addMeterReading(*change, "M", retyped));
    const store::HandOwner beer{store::HandOwner::Kind::sensor, "Beer"};
    const auto hand = store::addHandReading(
        *change, beer,
        {*parseRfc3339("2026-03-09T18:00:00Z"), 20.5, ReadingUnit::celsius, 1, {}, "by eye"});
    ASSERT_TRUE(hand);
    ASSERT_TRUE(store::deleteHandReading(*change, *hand));
    ASSERT_TRUE(change->commit());
}

TEST(ExportAndLoad, PreserveReadingsThatNoLongerCount)
{
    const DescribedLogbook files;
    files.load(plain, "2026-03-10T00:00:00Z");
    leaveReadingsOut(files);
    expectSameAgain(files);
    const auto again = store::LogbookFile::open(files.path("again.holdband"), store::Access::write);
    ASSERT_TRUE(again);
    EXPECT_EQ(*store::findDamage(**again), std::vector<std::string>{});
    const auto record = *store::readRegisterRecord(**again, "M");
    ASSERT_EQ(record.size(), 5u);
    EXPECT_TRUE(record[0].withdrawn);
    EXPECT_TRUE(record[3].leftOutBy);
    EXPECT_EQ(record[3].before.at(0).kwh, 45.0);
    ASSERT_TRUE(record[3].source);
    EXPECT_EQ(record[3].source->line, 3);
    EXPECT_EQ(record[4].inForce.registerReading.kilowattHours(), 4.6);
    EXPECT_FALSE(record[4].source);
    const Span ever{record[0].inForce.at, record[4].inForce.at};
    const auto listed = *store::listRegister(**again, "M", ever, 9);
    ASSERT_EQ(listed.readings.size(), 3u) << "without those that went with their import";
    EXPECT_EQ(listed.readings[1].why, "it was the other meter");
    EXPECT_EQ(listed.readings[1].file, "log.csv");
    // The withdrawn log is restored.
    auto change = store::Change::begin(**again, saying("changed my mind"));
    ASSERT_TRUE(store::restoreImport(*change, store::listImports(**again)->back().id));
    ASSERT_TRUE(change->commit());
    EXPECT_EQ(store::readMeterReadings(**again, "M")->size(), 4u);
}

TEST(ExportAndLoad, PreserveColumnMapsWatchesAndTheHistory)
{
    const DescribedLogbook files;
    files.load(plain, "2026-03-10T00:00:00Z");
    {
        const auto logbook =
            store::LogbookFile::open(files.path("d.holdband"), store::Access::write);
        auto change = store::Change::begin(
            **logbook, {store::HistoryVerb::watchStarted, {"a log"}, "it grows"});
        ASSERT_TRUE(store::addWatch(*change, "/logs/beer.csv", "spec"));
        ASSERT_TRUE(store::writeLogMap(*change, "shape", "map"));
        ASSERT_TRUE(change->commit());
        ASSERT_TRUE(store::undoLast(**logbook));
        ASSERT_TRUE(store::redoLast(**logbook));
    }
    expectSameAgain(files);
    const auto again = store::LogbookFile::open(files.path("again.holdband"), store::Access::write);
    ASSERT_TRUE(again);
    EXPECT_EQ(store::readWatches(**again)->at(0).path, "/logs/beer.csv");
    EXPECT_EQ(*store::readLogMap(**again, "shape"), "map");
    const auto history = *store::readHistory(**again, 10);
    ASSERT_EQ(history.size(), 7u); // the load and the making of the new file, and what was before
    EXPECT_EQ(store::historyText(history[0].entry), "loaded logbook.json");
    EXPECT_EQ(store::historyText(history[2].entry), "redid: started watching a log");
    EXPECT_EQ(store::historyText(history[4].entry), "started watching a log");
    EXPECT_EQ(history[4].entry.why, "it grows");
    EXPECT_FALSE(history[4].undone);
    EXPECT_EQ(store::historyText(history[6].entry), "created the logbook");
    // Undo knows what was done here only, and passes over what came from elsewhere.
    EXPECT_EQ(undoText(**again), "loaded logbook.json");
    EXPECT_FALSE(store::readUndoState(**again)->redo);
}

TEST(ExportAndLoad, ARegisterThatCouldNotBeLoadedAgainIsRefused)
{
    const DescribedLogbook files;
    files.load(plain, "2026-03-10T00:00:00Z");
    const auto logbook = store::LogbookFile::open(files.path("d.holdband"), store::Access::write);
    ASSERT_TRUE(logbook);
    intake::TypedReading typed{"M", {}};
    typed.reading.at = (*logbook)->now();
    typed.reading.registerReading = Energy::kilowattHours(2e9);
    const auto check = intake::checkReading(**logbook, typed);
    ASSERT_TRUE(check);
    ASSERT_TRUE(check->doubt);
    EXPECT_EQ(check->doubt->doubt, intake::ReadingDoubt::tooManyDigits);
}

/// The doubts of the register readings that count, in order of time.
std::vector<std::optional<Milliseconds>> doubtsOf(const store::LogbookFile& logbook)
{
    std::vector<std::optional<Milliseconds>> doubts;
    const auto readings = store::readMeterReadings(logbook, "M");
    for (const auto& stored : *readings)
        doubts.push_back(stored.inForce.timeDoubt);
    return doubts;
}

TEST(ExportAndLoad, PreserveTheDoubtOfReadingTimes)
{
    const DescribedLogbook files;
    files.load(plain, "2026-03-10T00:00:00Z");
    import(files, "Time,M (kWh)\n2026-03-09 20:00,46.5\n2026-03-09 21:00,47.5\n", {});
    {
        const auto logbook =
            store::LogbookFile::open(files.path("d.holdband"), store::Access::write);
        auto change = store::Change::begin(**logbook, saying("typed"));
        auto settings = *store::readSettings(**logbook);
        settings.timeDoubt = std::chrono::minutes{15};
        ASSERT_TRUE(store::writeSettings(*change, settings));
        MeterReading now{
            *parseRfc3339("2026-03-09T22:00:00Z"), Energy::kilowattHours(48.0), 1, {}, {}};
        now.timeDoubt = Milliseconds{0};
        ASSERT_TRUE(store::addMeterReading(*change, "M", now));
        ASSERT_TRUE(change->commit());
    }
    expectSameAgain(files);
    const auto first = store::LogbookFile::open(files.path("d.holdband"), store::Access::read);
    const auto again = store::LogbookFile::open(files.path("again.holdband"), store::Access::read);
    EXPECT_EQ(store::readSettings(**again)->timeDoubt, Milliseconds(std::chrono::minutes{15}));
    EXPECT_EQ(doubtsOf(**again), doubtsOf(**first));
    EXPECT_EQ(doubtsOf(**again).back(), Milliseconds{0});
}

} // namespace
} // namespace holdband::test
