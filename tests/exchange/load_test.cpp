// Loading into a new file and into one in use.
#include "core/exchange/description.h"
#include "core/store/readings/readings.h"
#include "core/store/records/equipment.h"
#include "core/store/records/journal.h"
#include "core/store/safety/new_file.h"
#include "core/store/safety/writer_lock.h"
#include "tests/exchange/exported_again.h"

#include <filesystem>
#include <gmock/gmock.h>
#include <unistd.h>

namespace holdband::test {
namespace {

namespace fs = std::filesystem;

// A fuzzed description with two batches of one name gave each the causes of both.
TEST(Load, RefusesTwoRecordsOfOneName)
{
    for (const auto& [list, item] :
         {std::pair{"setups", R"({"name":"A"})"},
          {"sensors", R"({"name":"A","reads":"beer"})"},
          {"meters", R"({"name":"A","setup":"S"})"},
          {"plans", R"({"name":"A"})"},
          {"batches", R"({"name":"A","setup":"S","pitched":"2026-03-01 00:00",
                          "beer_sensor":"B","tolerance_c":1,
                          "schedule":[{"stage":"Hold","target_c":20}]})"}}) {
        const auto parsed = exchange::parseDescription(std::string(R"({"holdband":1,")") + list +
                                                           R"(":[)" + item + "," + item + "]}",
                                                       "d.json");
        ASSERT_FALSE(parsed) << list;
        EXPECT_EQ(parsed.error().what, "\"A\" is the name of two records") << list;
        EXPECT_EQ(parsed.error().place, "d.json, " + std::string(list) + "[1].name") << list;
    }
}

TEST(Load, RemovesTheFilesOfAKilledRunButNoOthers)
{
    const DescribedLogbook files;
    // No process can have such a high number (Linux: at most 2^22).
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

TEST(Load, NeverRenamesAFileOverAnother)
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

TEST(Load, TakesZoneAndUnitsFromTheLogbookIfTheDescriptionHasNone)
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

TEST(Load, NeverChangesAStoredPrice)
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

/// The sentence of the problem, or empty if the log is accepted.
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

TEST(LoadOfLogs, TheRemedyIsAKeyOfTheDescription)
{
    const std::string cold = "Time,Glycol\n2026-03-09 00:00,24\n2026-03-09 01:00,25\n";
    EXPECT_EQ(
        loadedWith(cold, R"("columns":{"Glycol":"Glycol"})"),
        "log.csv, column Glycol: the median 25 is odd for °F (the header has no unit: °F is "
        "assumed); say \"unit\": \"c\" if they are in °C, or \"unit\": \"f\" if they are right (in "
        "d.json, files[0]).");
    EXPECT_EQ(loadedWith(cold, R"("unit":"f","columns":{"Glycol":"Glycol"})"), "");
    const std::string ambiguous = "Time,Glycol\n03/04/2026 00:00,34\n03/05/2026 01:00,35\n";
    EXPECT_EQ(
        loadedWith(ambiguous, R"("columns":{"Glycol":"Glycol"})"),
        "log.csv, line 2, column Time: the dates fit more than one order, such as "
        "\"03/04/2026 00:00\"; say \"date_order\": \"mdy\" or \"dmy\" (in d.json, files[0]).");
    EXPECT_EQ(loadedWith(ambiguous, R"("date_order":"mdy","columns":{"Glycol":"Glycol"})"), "");
    EXPECT_EQ(loadedWith(ambiguous, R"("date_order":"US","columns":{"Glycol":"Glycol"})"),
              "d.json, files[0].date_order: \"US\" is none of ymd, mdy, dmy.");
    EXPECT_EQ(loadedWith("Time,Glycol (C)\n2026-03-09 00:00,68\n2026-03-09 01:00,68\n",
                         R"json("unit":"f","columns":{"Glycol":"Glycol (C)"})json"),
              "log.csv, column Glycol (C): the median 68 is odd for °C (the header says °C); "
              "correct the header, or take the file out of the description and import it with "
              "--unit.");
}

TEST(LoadOfLogs, NoRemedyNamesAnOptionThatADescriptionDoesNotHave)
{
    const std::string glycol = R"("columns":{"Glycol":"Glycol"})";
    EXPECT_THAT(loadedWith("Time MST,Glycol\n2026-03-09 00:00,24\n2026-03-09 01:00,25\n",
                           R"("unit":"c",)" + glycol),
                ::testing::EndsWith(
                    "give the zone of the logger's clock, such as \"zone\": \"America/Denver\" or "
                    "\"-07:00\" (in d.json, files[0])."));
    EXPECT_THAT(loadedWith("Time,Cold\n2026-03-09 00:00,34\n2026-03-09 01:00,35\n", glycol),
                ::testing::Not(::testing::HasSubstr("--column")));
    EXPECT_THAT(
        loadedWith("Time,Glycol\nSunday noon 1,34\nSunday noon 2,35\n", glycol),
        ::testing::EndsWith("take the file out of the description and import it with --time "
                            "and --pattern, or name another column of times in d.json, "
                            "files[0]."));
    EXPECT_THAT(
        loadedWith("Date,Clock,Glycol\n2026-03-09,25h,34\n2026-03-10,26h,35\n", glycol),
        ::testing::EndsWith("say which column has the time of day with \"time\": \"Date+TIME "
                            "COLUMN\" (in d.json, files[0]), or write it behind the date."));
    EXPECT_THAT(loadedWith("Time;Glycol\n2026-03-09 00:00;1,234\n2026-03-09 01:00;1,235\n",
                           R"("unit":"c",)" + glycol),
                ::testing::EndsWith("take the file out of the description and import it with "
                                    "--decimal comma or --decimal point."));
}

TEST(Load, RefusesAReadingOfAMissingFileOrHistoryEntry)
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

} // namespace
} // namespace holdband::test
