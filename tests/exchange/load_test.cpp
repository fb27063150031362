// Loading into a new file and into one in use; what export writes, load takes back.
#include "core/editing/rounds.h"
#include "core/exchange/description.h"
#include "core/exchange/export.h"
#include "core/exchange/file_writer.h"
#include "core/intake/log/import.h"
#include "core/store/history/history.h"
#include "core/store/history/undo.h"
#include "core/store/readings/imports.h"
#include "core/store/records/equipment.h"
#include "core/store/records/journal.h"
#include "core/store/records/log_maps.h"
#include "core/store/records/watches.h"
#include "core/store/records/weighing.h"
#include "core/store/safety/new_file.h"
#include "core/store/safety/soundness.h"
#include "core/store/safety/writer_lock.h"
#include "tests/results/described_logbook.h"
#include "tests/store/saying.h"

#include <filesystem>
#include <gmock/gmock.h>
#include <unistd.h>

namespace holdband::test {
namespace {

namespace fs = std::filesystem;

const std::string plain = R"({"holdband":1,"setups":[{"name":"S"}],
    "sensors":[{"name":"Beer","reads":"beer"}],"meters":[{"name":"M","setup":"S"}]})";

std::string fileText(const std::string& path)
{
    const auto text = exchange::readWholeFile(path, 1 << 20);
    EXPECT_TRUE(text) << text.error().sentence();
    return text.value_or("");
}

TEST(Load, ClearsAwayWhatAKilledRunLeftButNothingOfOthers)
{
    const DescribedLogbook files;
    // No process has a number so high (Linux: at most 2^22).
    const std::string dead = ".holdband-4194305-1.part";
    const std::string alive = ".holdband-" + std::to_string(::getpid()) + "-9999.part";
    const auto longAgo = fs::file_time_type::clock::now() - std::chrono::hours{48};
    for (const std::string& name :
         {dead, dead + "-journal", alive, std::string("d.holdband.part")}) {
        files.write(name, "half a logbook");
        fs::last_write_time(files.path(name), longAgo);
    }
    const std::string recent = ".holdband-4194305-2.part";
    files.write(recent, "half a logbook");
    const auto logbook = files.load(plain, "2026-03-10T00:00:00Z");
    ASSERT_TRUE(logbook);
    EXPECT_FALSE(fs::exists(files.path(dead)));
    EXPECT_FALSE(fs::exists(files.path(dead + "-journal")));
    EXPECT_TRUE(fs::exists(files.path(alive)));
    EXPECT_TRUE(fs::exists(files.path(recent)));
    EXPECT_EQ(fileText(files.path("d.holdband.part")), "half a logbook");
    EXPECT_FALSE(fs::exists(files.path("d.holdband.lock")));
}

TEST(Load, LeavesAnotherRunAloneThatIsMakingTheSameLogbook)
{
    const DescribedLogbook files;
    files.write("d.json", plain);
    files.write("d.holdband.part", "being written");
    const auto other = store::lockForWriting(files.path("d.holdband"));
    ASSERT_TRUE(other);
    const auto loaded = exchange::loadDescription(files.path("d.holdband"), files.path("d.json"));
    ASSERT_FALSE(loaded);
    EXPECT_EQ(loaded.error().kind, ProblemKind::file);
    EXPECT_NE(loaded.error().what.find("open for writing in"), std::string::npos);
    EXPECT_EQ(fileText(files.path("d.holdband.part")), "being written");
    EXPECT_FALSE(fs::exists(files.path("d.holdband")));
}

TEST(Load, NeverNamesAFileOverAnother)
{
    const DescribedLogbook files;
    files.write("made", "new");
    files.write("stands", "old");
    const Done named = store::nameNewFile(files.path("made"), files.path("stands"));
    ASSERT_FALSE(named);
    EXPECT_EQ(named.error().kind, ProblemKind::file);
    EXPECT_EQ(fileText(files.path("stands")), "old");
    EXPECT_EQ(fileText(files.path("made")), "new");
    ASSERT_TRUE(store::nameNewFile(files.path("made"), files.path("free")));
    EXPECT_EQ(fileText(files.path("free")), "new");
}

TEST(Load, TakesZoneAndUnitsFromTheLogbookWhereItSaysNone)
{
    const DescribedLogbook files;
    files.load(R"({"holdband":1,"zone":"America/Denver","units":"us",)"
               R"("setups":[{"name":"Loop"}],"sensors":[{"name":"Beer","reads":"beer"}]})",
               "2026-03-20T00:00:00Z");
    files.write("beer.csv", "Time,Value\n2026-03-07 18:00,68\n2026-03-07 19:00,68\n");
    const auto logbook =
        files.load(R"({"holdband":1,"journal":[{"at":"2026-03-07 18:00","text":"opened"}],)"
                   R"("files":[{"file":"beer.csv","columns":{"Beer":"Value"}}]})",
                   "2026-03-20T00:00:00Z");
    const auto notes = store::readJournal(*logbook);
    ASSERT_TRUE(notes);
    ASSERT_EQ(notes->size(), 1u);
    const Instant evening = *parseRfc3339("2026-03-08T01:00:00Z"); // 18:00 in Denver, UTC−7
    EXPECT_EQ(notes->front().at, evening);
    const auto series =
        store::readSeries(*logbook, "Beer", {evening, evening + std::chrono::hours{2}});
    ASSERT_TRUE(series);
    ASSERT_EQ(series->at.size(), 2u);
    EXPECT_EQ(series->at.front(), evening);
    EXPECT_NEAR(series->value.front(), 20.0, 1e-9); // °F, as the logbook's units are
}

TEST(Load, NeverChangesAPriceThatStands)
{
    const DescribedLogbook files;
    files.load(
        R"({"holdband":1,"time_of_use":[{"from":"16:00","to":"21:00","price_per_kwh":0.3}]})",
        "2026-03-10T00:00:00Z");
    const auto logbook =
        files.load(R"({"holdband":1,"price_per_kwh":0.1})", "2026-03-10T00:00:00Z");
    const auto settings = store::readSettings(*logbook);
    ASSERT_TRUE(settings);
    EXPECT_FALSE(settings->tariff.pricePerKwh);
    EXPECT_EQ(settings->tariff.windows.size(), 1u);
}

TEST(Load, AnExportWithoutACurrencyGoesIntoALogbookThatHasOne)
{
    const DescribedLogbook files;
    const auto source = files.load(plain, "2026-03-10T00:00:00Z");
    ASSERT_TRUE(exchange::exportLogbook(*source, files.path("out")));
    files.write("usd.json", R"({"holdband":1,"currency":"USD"})");
    ASSERT_TRUE(exchange::loadDescription(files.path("usd.holdband"), files.path("usd.json")));
    const auto loaded =
        exchange::loadDescription(files.path("usd.holdband"), files.path("out/logbook.json"));
    EXPECT_TRUE(loaded) << loaded.error().sentence();
}

/// The sentence of the problem, or nothing where the log is taken.
std::string loadedWith(const std::string& log, const std::string& keys)
{
    const DescribedLogbook files;
    files.write("log.csv", log);
    files.write("d.json",
                R"({"holdband":1,"units":"us","sensors":[{"name":"Glycol","reads":"coolant"}],
        "files":[{"file":"log.csv",)" +
                    keys + "}]}");
    const auto loaded = exchange::loadDescription(files.path("d.holdband"), files.path("d.json"));
    return loaded ? std::string() : loaded.error().sentence();
}

TEST(LoadOfLogs, TheWayOutIsAKeyOfTheDescription)
{
    const std::string cold = "Time,Glycol\n2026-03-09 00:00,24\n2026-03-09 01:00,25\n";
    EXPECT_EQ(
        loadedWith(cold, R"("columns":{"Glycol":"Glycol"})"),
        "log.csv, column Glycol: the median 25 is odd for °F (the header has no unit: °F is "
        "assumed); say \"unit\": \"c\" if they are in °C, or \"unit\": \"f\" if they are right (in "
        "d.json, files[0]).");
    EXPECT_EQ(loadedWith(cold, R"("unit":"f","columns":{"Glycol":"Glycol"})"), "");
    const std::string ambiguous = "Time,Glycol\n03/04/2026 00:00,34\n03/05/2026 01:00,35\n";
    EXPECT_EQ(loadedWith(ambiguous, R"("columns":{"Glycol":"Glycol"})"),
              "log.csv, line 2, column Time: the dates fit more than one order, such as "
              "\"03/04/2026 00:00\"; say \"date_order\": mdy or dmy (in d.json, files[0]).");
    EXPECT_EQ(loadedWith(ambiguous, R"("date_order":"mdy","columns":{"Glycol":"Glycol"})"), "");
    EXPECT_EQ(loadedWith(ambiguous, R"("date_order":"US","columns":{"Glycol":"Glycol"})"),
              "d.json, files[0].date_order: \"US\" is none of ymd, mdy, dmy.");
    EXPECT_EQ(loadedWith("Time,Glycol (C)\n2026-03-09 00:00,68\n2026-03-09 01:00,68\n",
                         R"json("unit":"f","columns":{"Glycol":"Glycol (C)"})json"),
              "log.csv, column Glycol (C): the median 68 is odd for °C (the header says °C); "
              "correct the header, or take the file out of the description and import it with "
              "--unit.");
}

/// Exports, loads the export into another logbook, exports that, and compares.
void expectSameAgain(const DescribedLogbook& files)
{
    const auto first = store::LogbookFile::open(files.path("d.holdband"), store::Access::read);
    ASSERT_TRUE(first);
    ASSERT_TRUE(exchange::exportLogbook(**first, files.path("one")));
    const auto loaded =
        exchange::loadDescription(files.path("again.holdband"), files.path("one/logbook.json"));
    ASSERT_TRUE(loaded) << loaded.error().sentence();
    const auto second = store::LogbookFile::open(files.path("again.holdband"), store::Access::read);
    ASSERT_TRUE(second);
    ASSERT_TRUE(exchange::exportLogbook(**second, files.path("two")));
    EXPECT_EQ(fileText(files.path("one/logbook.json")), fileText(files.path("two/logbook.json")));
    ASSERT_EQ(fs::exists(files.path("one/readings")), fs::exists(files.path("two/readings")));
    std::error_code none; // a logbook without logs has no such folder
    for (const auto& entry : fs::directory_iterator(files.path("one/readings"), none))
        EXPECT_EQ(fileText(entry.path().string()),
                  fileText(files.path("two/readings/" + entry.path().filename().string())));
}

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

TEST(ExportAndLoad, KeepReadingsWhoseUnitHadToBeTold)
{
    const DescribedLogbook files;
    files.load(plain, "2026-03-10T00:00:00Z");
    // Hot water: no unit in the header, and a median that is odd for °C.
    import(files, "Time,Beer\n2026-03-09 00:00,66\n2026-03-09 01:00,67\n2026-03-09 02:00,68\n",
           TemperatureUnit::celsius);
    expectSameAgain(files);
}

TEST(ExportAndLoad, KeepAnEightyFiveThatWasNoJumpBesideWhatStoodThere)
{
    const DescribedLogbook files;
    files.load(plain, "2026-03-10T00:00:00Z");
    import(files,
           "Time,Beer (C)\n2026-03-09 00:00,20\n2026-03-09 01:00,84\n2026-03-09 03:00,86\n"
           "2026-03-09 05:00,20\n2026-03-09 06:00,20\n2026-03-09 07:00,20\n"
           "2026-03-09 08:00,20\n",
           {});
    // Only what is new is kept of the second log: its 85 has no near neighbours of its own.
    import(files,
           "Time,Beer (C)\n2026-03-09 00:30,20\n2026-03-09 01:00,84\n2026-03-09 02:00,85\n"
           "2026-03-09 03:00,86\n2026-03-09 04:00,20\n2026-03-09 04:30,20\n"
           "2026-03-09 04:40,20\n2026-03-09 04:50,20\n",
           {});
    expectSameAgain(files);
}

TEST(ExportAndLoad, KeepAReadingOfAMeterWithMoreDigitsThanAnyShows)
{
    const DescribedLogbook files;
    files.load(plain, "2026-03-10T00:00:00Z");
    // As spreadsheets write 12.4.
    import(files, "Time,Beer,M (kWh)\n2026-03-09 00:00,20,12.400000000000000355\n", {});
    expectSameAgain(files);
}

/// Three logs, of which the middle one is taken back and the last one brings its times again.
void takeAnImportBack(const DescribedLogbook& files)
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

TEST(ExportAndLoad, KeepAnImportThatIsTakenBack)
{
    const DescribedLogbook files;
    files.load(plain, "2026-03-10T00:00:00Z");
    takeAnImportBack(files);
    expectSameAgain(files);
    const auto again = store::LogbookFile::open(files.path("again.holdband"), store::Access::write);
    ASSERT_TRUE(again);
    EXPECT_EQ(*store::findDamage(**again), std::vector<std::string>{});
    const auto imports = *store::listImports(**again);
    ASSERT_EQ(imports.size(), 3u);
    EXPECT_TRUE(imports.back().withdrawnAt);
    // What came again is taken back in its turn, and the old one put back.
    auto change = store::Change::begin(**again, saying("changed my mind"));
    ASSERT_TRUE(store::withdraw(*change, imports.front().id));
    ASSERT_TRUE(store::restoreImport(*change, imports.back().id));
    ASSERT_TRUE(change->commit());
    EXPECT_EQ(*store::findDamage(**again), std::vector<std::string>{});
}

/// A log of registers that is taken back, one of which a reading was taken away, and typed readings
/// that were taken away, one of them typed anew.
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
    ASSERT_TRUE(store::setMeterReadingAside(*change, id));
    MeterReading anew;
    anew.at = store::readRegisterRecord(**logbook, "M")->back().inForce.at;
    anew.registerReading = Energy::kilowattHours(4.6);
    anew.decimals = 1;
    ASSERT_TRUE(store::addMeterReading(*change, "M", anew));
    const store::HandOwner beer{store::HandOwner::Kind::sensor, "Beer"};
    const auto hand = store::addHandReading(
        *change, beer,
        {*parseRfc3339("2026-03-09T18:00:00Z"), 20.5, ReadingUnit::celsius, 1, {}, "by eye"});
    ASSERT_TRUE(hand);
    ASSERT_TRUE(store::setHandReadingAside(*change, *hand));
    ASSERT_TRUE(change->commit());
}

TEST(ExportAndLoad, KeepReadingsThatCountNoMore)
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
    // The log that was taken back is put back.
    auto change = store::Change::begin(**again, saying("changed my mind"));
    ASSERT_TRUE(store::restoreImport(*change, store::listImports(**again)->back().id));
    ASSERT_TRUE(change->commit());
    EXPECT_EQ(store::readMeterReadings(**again, "M")->size(), 4u);
}

TEST(Load, RefusesAReadingOfAFileOrAnActThatIsNotThere)
{
    const DescribedLogbook files;
    const auto problem = [&](const std::string& more) {
        std::string text = plain;
        text.insert(text.size() - 1, R"(,"meter_readings":[{"meter":"M","at":"2026-03-09 00:00",)"
                                     R"("kwh":1)" +
                                         more + "}]");
        files.write("d.json", text);
        const auto loaded =
            exchange::loadDescription(files.path("new.holdband"), files.path("d.json"));
        return loaded ? "" : loaded.error().sentence();
    };
    EXPECT_EQ(problem(R"(,"from_file":2)"),
              "d.json, meter_readings[0].from_file: there is no files[2].");
    EXPECT_EQ(problem(R"(,"left_out":true,"left_out_by":0)"),
              "d.json, meter_readings[0].left_out_by: there is no history[0].");
    EXPECT_EQ(problem(R"(,"left_out_by":0)"),
              "d.json, meter_readings[0].left_out_by: the reading is not left out.");
    EXPECT_EQ(problem(R"(,"left_out":true)"), "") << "this load leaves it out";
}

TEST(ExportAndLoad, KeepColumnMapsWatchesAndTheHistory)
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
    EXPECT_EQ(undoWords(**again), "loaded logbook.json");
    EXPECT_FALSE(store::readUndoState(**again)->redo);
}

TEST(Load, LeavesTheHistoryOfALogbookInUseAsItIs)
{
    const DescribedLogbook files;
    files.load(plain, "2026-03-10T00:00:00Z");
    files.write("more.json", R"({"holdband":1,"setups":[{"name":"New"}],
        "history":[{"at":"2026-01-01 00:00","what":"elsewhere"}]})");
    ASSERT_TRUE(exchange::loadDescription(files.path("d.holdband"), files.path("more.json")));
    const auto logbook = store::LogbookFile::open(files.path("d.holdband"), store::Access::read);
    const auto entries = *store::readHistoryEntries(**logbook);
    ASSERT_EQ(entries.size(), 3u);
    EXPECT_EQ(store::historyText(entries[2].entry), "loaded more.json");
}

constexpr const char* oldHistory = R"({"holdband":1,"history":[
    {"at":"2026-01-01 00:00","what":"took away 2 readings of Coil","why":"slip"},
    {"at":"2026-01-01 01:00","what":"took back: took away 2 readings of Coil","kind":"undo","of":0},
    {"at":"2026-01-01 02:00","what":"moved the garage"},
    {"at":"2026-01-01 03:00","what":"round.typed"}]})";

TEST(Load, ReadsAHistoryOfSentencesAsOlderVersionsExportedIt)
{
    const DescribedLogbook files;
    const auto logbook = files.load(oldHistory, "2026-03-10T00:00:00Z");
    const auto entries = *store::readHistoryEntries(*logbook);
    ASSERT_EQ(entries.size(), 4u);
    EXPECT_EQ(entries[0].entry,
              (store::HistoryEntry{store::HistoryVerb::readingDeleted, {"Coil", "2"}, "slip"}));
    EXPECT_EQ(store::historyText(entries[1].entry), "undid: deleted 2 readings of Coil");
    EXPECT_EQ(entries[1].of, 0u);
    EXPECT_EQ(entries[2].entry.verb, store::HistoryVerb::other);
    EXPECT_EQ(store::historyText(entries[2].entry), "moved the garage");
    EXPECT_EQ(store::historyText(entries[3].entry), "round.typed"); // a sentence without arguments
    expectSameAgain(files);
}

TEST(Load, RefusesAHistoryItCannotRead)
{
    const auto refusal = [](const char* entry) {
        const DescribedLogbook files;
        files.write("d.json", std::string(R"({"holdband":1,"history":[)") + entry + "]}");
        const auto loaded =
            exchange::loadDescription(files.path("d.holdband"), files.path("d.json"));
        return loaded ? std::string() : loaded.error().sentence();
    };
    EXPECT_THAT(refusal(R"({"at":"2026-01-01 00:00","what":"tank.moved","arguments":[]})"),
                testing::HasSubstr("\"tank.moved\" is no change that this version knows"));
    EXPECT_THAT(refusal(R"({"at":"2026-01-01 00:00","what":"round.typed","arguments":["a",1]})"),
                testing::HasSubstr("expected a list of texts"));
    EXPECT_THAT(refusal(R"({"at":"2026-01-01 00:00","what":"round.typed","arguments":"5"})"),
                testing::HasSubstr("expected a list of texts"));
}

constexpr const char* weighed = R"({"holdband":1,"units":"us",
    "weighing":{"weights":{"noise":2.5,"looks":4},"reference_lift_f":9,"reference_hours":168,
                "batches_per_year":6,"other_price_per_kwh":0.3,"quiet_after_hours":96}})";

TEST(ExportAndLoad, KeepWhatIsWeighedBy)
{
    const DescribedLogbook files;
    const auto logbook = files.load(weighed, "2026-03-10T00:00:00Z");
    const Weighing kept = *store::readWeighing(*logbook);
    EXPECT_EQ(kept.weights, (std::map<std::string, double>{{"looks", 4.0}, {"noise", 2.5}}));
    EXPECT_DOUBLE_EQ(kept.referenceLift->kelvins(), 5.0);
    EXPECT_EQ(kept.referenceHours, Hours{168.0});
    EXPECT_EQ(kept.batchesPerYear, 6.0);
    EXPECT_EQ(kept.otherPricePerKwh, 0.3);
    EXPECT_EQ(kept.quietAfter, Hours{96.0});
    const DescribedLogbook exported;
    ASSERT_TRUE(exchange::exportLogbook(*logbook, exported.path("out")));
    const auto loaded =
        exchange::loadDescription(exported.path("d.holdband"), exported.path("out/logbook.json"));
    ASSERT_TRUE(loaded) << loaded.error().sentence();
    const auto again = store::LogbookFile::open(exported.path("d.holdband"), store::Access::read);
    EXPECT_EQ(*store::readWeighing(**again), kept);
}

TEST(Load, WhatIsWeighedStaysWhereSomethingStands)
{
    const DescribedLogbook files;
    files.load(weighed, "2026-03-10T00:00:00Z");
    files.write("more.json", R"({"holdband":1,"weighing":{"weights":{"noise":1}}})");
    ASSERT_TRUE(exchange::loadDescription(files.path("d.holdband"), files.path("more.json")));
    const auto logbook = store::LogbookFile::open(files.path("d.holdband"), store::Access::read);
    EXPECT_EQ(store::readWeighing(**logbook)->weights.at("noise"), 2.5);
}

TEST(Load, RefusesAWeightBeyondFive)
{
    const auto parsed = exchange::parseDescription(
        R"({"holdband":1,"weighing":{"weights":{"noise":6}}})", "d.json");
    ASSERT_FALSE(parsed);
    EXPECT_NE(parsed.error().sentence().find("weighing.weights.noise"), std::string::npos)
        << parsed.error().sentence();
    EXPECT_FALSE(
        exchange::parseDescription(R"({"holdband":1,"weighing":{"reference_hours":0}})", "d.json"));
    EXPECT_FALSE(exchange::parseDescription(R"({"holdband":1,"weighing":{"colour":1}})", "d.json"));
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

} // namespace
} // namespace holdband::test
