// Calls, exit statuses and messages of the command line.
#include "core/store/logbook_file.h"
#include "core/store/readings/meter_readings.h"
#include "core/store/records/equipment.h"
#include "tests/app/program.h"

#include <QCoreApplication>
#include <QDir>

namespace holdband::test {
namespace {

TEST(CommandLine, HelpAndVersionEverywhere)
{
    const Program program;
    for (const char* command : {"new", "load", "import", "meter", "batches", "verdict", "energy",
                                "compare", "export", "check", "backup", "schema"}) {
        const Outcome help = program.run({command, "--help"});
        EXPECT_EQ(help.status, 0) << command;
        EXPECT_TRUE(holds(help.out, std::string("usage: holdband ") + command)) << help.out;
        EXPECT_TRUE(holds(program.run({command, "--version"}).out, "holdband 0."));
    }
    EXPECT_EQ(program.run({"--help"}).status, 0);
    EXPECT_TRUE(holds(program.run({"--version"}).out, "holdband 0."));
}

TEST(CommandLine, WrongCallsAreStatusTwoWithTheUsage)
{
    const Program program;
    const std::vector<std::string> calls[] = {{"verdict"},
                                              {"verdict", "a"},
                                              {"verdict", "a", "b", "c"},
                                              {"verdict", "a", "b", "--jsn"},
                                              {"verdcit", "a", "b"},
                                              {"import", "a", "b", "--zone"},
                                              {"new", "x.holdband", "--units", "imperial"},
                                              {"new", "x.holdband", "--currency", "dollars"},
                                              {"schema"},
                                              {"schema", "nonsense"},
                                              {"schema", "../json-schema/verdict"},
                                              {"--nonsense"}};
    for (const auto& call : calls) {
        const Outcome outcome = program.run(call);
        EXPECT_EQ(outcome.status, 2) << call.front();
        EXPECT_EQ(outcome.out, "");
        EXPECT_NE(outcome.err, "");
    }
    EXPECT_TRUE(holds(program.run({"verdcit", "a", "b"}).err, "verdict"));
    EXPECT_TRUE(holds(program.run({"verdict", "a"}).err, "usage: holdband verdict LOGBOOK BATCH"));
    EXPECT_TRUE(
        holds(program.run({"schema", "verdcit"}).err,
              "usage: holdband schema verdict|energy|compare|forecast|batches|description"));
}

TEST(CommandLine, UnknownNamesListSuggestions)
{
    const WorkedProgram program;
    const Outcome batch = program.run({"verdict", "log.holdband", "worke"});
    EXPECT_EQ(batch.status, 1);
    EXPECT_TRUE(holds(batch.err, "Worked")) << batch.err;
    const Outcome meter = program.run({"meter", "log.holdband", "Metre", "7"});
    EXPECT_EQ(meter.status, 1);
    EXPECT_TRUE(holds(meter.err, "Meter")) << meter.err;
    const Outcome side = program.run({"compare", "log.holdband", "Worked", "Lop"});
    EXPECT_EQ(side.status, 1);
    EXPECT_TRUE(holds(side.err, "Loop")) << side.err;
    const Outcome column =
        program.run({"import", "log.holdband", "worked.csv", "--column", "Ber=Beer (C)"});
    EXPECT_EQ(column.status, 1);
    EXPECT_TRUE(holds(column.err, "Beer")) << column.err;
}

TEST(CommandLine, VerdictNamesTheCauseOfAnExcursion)
{
    const Program program;
    program.write("b.csv", "Time,Beer (C)\n2026-03-01 00:00,20\n2026-03-01 01:00,20\n"
                           "2026-03-01 02:00,22\n2026-03-01 03:00,20\n2026-03-01 04:00,22\n");
    program.write(
        "d.json",
        R"json({"holdband":1,"setups":[{"name":"S"}],"sensors":[{"name":"Beer","reads":"beer"}],
        "batches":[{"name":"B","setup":"S","pitched":"2026-03-01 00:00","ended":"2026-03-01 04:00",
        "beer_sensor":"Beer","tolerance_c":1,"gap_limit_min":60,
        "schedule":[{"stage":"Hold","target_c":20}],"causes":[{"from":"2026-03-01 01:40",
        "to":"2026-03-01 02:20","side":"above","cause":"lid open","note":"sample"}]}],
        "files":[{"file":"b.csv","columns":{"Beer":"Beer (C)"}}]})json");
    ASSERT_EQ(program.run({"load", "s.holdband", "d.json"}).status, 0);
    EXPECT_TRUE(holds(program.run({"verdict", "s.holdband", "B"}).out, "lid open, \"sample\""));
    const auto json = program.run({"verdict", "s.holdband", "B", "--json"}).json();
    const auto& excursions = json["stages"][0]["excursions"];
    ASSERT_EQ(excursions.size(), 2u);
    EXPECT_EQ(excursions[0]["cause"], "lid open");
    EXPECT_EQ(excursions[0]["note"], "sample");
    EXPECT_TRUE(excursions[1]["cause"].is_null());
    EXPECT_EQ(excursions[1]["note"], "");
}

TEST(CommandLine, NewMakesAnEmptyLogbookOnce)
{
    const Program program;
    ASSERT_EQ(program
                  .run({"new", "n.holdband", "--zone", "America/Denver", "--units", "us",
                        "--currency", "USD"})
                  .status,
              0);
    EXPECT_EQ(program.run({"batches", "n.holdband", "--json"}).json().size(), 0u);
    const std::string before = program.read("n.holdband");
    EXPECT_EQ(program.run({"new", "n.holdband"}).status, 3);
    EXPECT_EQ(program.read("n.holdband"), before);
    EXPECT_EQ(program.run({"new", "m.holdband", "--zone", "America/Denvr"}).status, 1);
    EXPECT_EQ(program.shell("ls").out, "n.holdband\n") << "no unfinished file is left behind";
}

TEST(CommandLine, LoadingTwiceChangesNothing)
{
    const WorkedProgram program;
    const std::string before = program.read("log.holdband");
    const Outcome again = program.run({"load", "log.holdband", "worked.json"});
    EXPECT_EQ(again.status, 1);
    EXPECT_TRUE(holds(again.err, "already")) << again.err;
    EXPECT_EQ(program.read("log.holdband"), before);
}

TEST(CommandLine, AFailedLoadLeavesNoLogbook)
{
    const Program program;
    program.write("worked.json", workedDescription()); // its log is missing
    EXPECT_EQ(program.run({"load", "new.holdband", "worked.json"}).status, 3);
    EXPECT_EQ(program.shell("ls").out, "worked.json\n");
}

TEST(CommandLine, ImportingTwiceAddsNothing)
{
    const WorkedProgram program;
    const std::string before = program.read("log.holdband");
    const Outcome again =
        program.run({"import", "log.holdband", "worked.csv", "--column", "Beer=Beer (C)"});
    EXPECT_EQ(again.status, 0) << again.err;
    EXPECT_TRUE(holds(again.out, "10 rows read; 0 readings new, 10 already there")) << again.out;
    EXPECT_EQ(program.read("log.holdband"), before);
}

TEST(CommandLine, TheSameInstantWithAnotherValueIsAConflictAndTheFirstRemains)
{
    const WorkedProgram program;
    program.write("other.csv", "Time,Beer\n2026-03-07 01:00,20.7\n2026-03-07 11:00,20.0\n");
    const Outcome outcome = program.run({"import", "log.holdband", "other.csv"});
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_TRUE(holds(outcome.out, "1 reading new, 0 already there, 1 conflicting")) << outcome.out;
    EXPECT_TRUE(holds(outcome.out, "line 2, Beer: 20.7")) << outcome.out;
    const auto json = program.run({"verdict", "log.holdband", "Worked", "--json"}).json();
    EXPECT_DOUBLE_EQ(json["stages"][0]["mean_dev_c"], 0.21875);
}

TEST(CommandLine, TheSameReadingInAnotherUnitAlreadyExists)
{
    const WorkedProgram program;
    program.write("f.csv", "Time,Beer (F)\n2026-03-07 00:00,68.0\n");
    const Outcome outcome = program.run({"import", "log.holdband", "f.csv"});
    EXPECT_TRUE(holds(outcome.out, "0 readings new, 1 already there"))
        << outcome.out << outcome.err;
}

TEST(CommandLine, ADryRunStoresNothing)
{
    const WorkedProgram program;
    const std::string before = program.read("log.holdband");
    program.write("more.csv", "Time,Beer\n2026-03-07 11:00,20.1\n");
    const Outcome outcome = program.run({"import", "log.holdband", "more.csv", "--dry-run"});
    EXPECT_EQ(outcome.status, 0);
    EXPECT_TRUE(holds(outcome.out, "1 reading new")) << outcome.out;
    EXPECT_EQ(program.read("log.holdband"), before);
}

TEST(CommandLine, UnusedColumnsAreNamed)
{
    const WorkedProgram program;
    program.write("more.csv", "Time,Beer,Humidity\n2026-03-07 11:00,20.1,55\n");
    const Outcome outcome = program.run({"import", "log.holdband", "more.csv"});
    EXPECT_EQ(outcome.status, 0);
    EXPECT_TRUE(holds(outcome.err, "Humidity")) << outcome.err;
}

TEST(CommandLine, AnAmbiguousDateOrderIsAskedNotGuessed)
{
    const WorkedProgram program;
    program.write("d.csv", "Time,Beer\n03/04/2026 01:00,20.1\n03/04/2026 02:00,20.2\n");
    const Outcome refused = program.run({"import", "log.holdband", "d.csv"});
    EXPECT_EQ(refused.status, 1);
    EXPECT_TRUE(holds(refused.err, "--date-order")) << refused.err;
    EXPECT_EQ(program.run({"import", "log.holdband", "d.csv", "--date-order", "dmy"}).status, 0);
    ASSERT_EQ(program.run({"export", "log.holdband", "out"}).status, 0);
    EXPECT_TRUE(holds(program.read("out/readings/0002.csv"), "2026-04-03T01:00:00.000Z"));
}

TEST(CommandLine, ADoubledHourIsRefusedAndAMissingOneRejectedWithItsRow)
{
    const Program program;
    ASSERT_EQ(program.run({"new", "z.holdband", "--zone", "America/New_York"}).status, 0);
    program.write("e.json", R"({"holdband":1,"setups":[{"name":"S"}],
        "sensors":[{"name":"Beer","reads":"beer"}],"meters":[{"name":"M","setup":"S"}]})");
    ASSERT_EQ(program.run({"load", "z.holdband", "e.json"}).status, 0);
    program.write("doubled.csv", "Time,Beer\n2026-11-01 01:30,20.1\n");
    const Outcome doubled = program.run({"import", "z.holdband", "doubled.csv"});
    EXPECT_EQ(doubled.status, 1);
    EXPECT_TRUE(holds(doubled.err, "line 2")) << doubled.err;
    program.write(
        "missing.csv",
        "Time,Beer\n2026-03-08 01:30,20.1\n2026-03-08 02:30,20.2\n2026-03-08 03:30,20.3\n");
    const Outcome missing = program.run({"import", "z.holdband", "missing.csv"});
    EXPECT_EQ(missing.status, 0) << missing.err;
    EXPECT_TRUE(holds(missing.out, "2 readings new")) << missing.out;
    EXPECT_TRUE(holds(missing.out, "rejected, line 3")) << missing.out;
    const Outcome meter =
        program.run({"meter", "z.holdband", "M", "5", "--at", "2026-11-01 01:30"});
    EXPECT_EQ(meter.status, 1);
    EXPECT_TRUE(holds(meter.err, "-04:00") && holds(meter.err, "-05:00")) << meter.err;
}

TEST(CommandLine, MeterReadingsAreCheckedBeforeTheyAreStored)
{
    const WorkedProgram program;
    const auto meter = [&](std::vector<std::string> rest) {
        std::vector<std::string> call{"meter", "log.holdband", "Meter"};
        call.insert(call.end(), rest.begin(), rest.end());
        return program.run(call);
    };
    const Outcome below = meter({"6.10", "--at", "2026-03-08 08:00"});
    EXPECT_EQ(below.status, 1);
    EXPECT_TRUE(holds(below.err, "--event")) << below.err;
    EXPECT_EQ(meter({"abc"}).status, 1);
    EXPECT_EQ(meter({"-5", "--at", "2026-03-08 08:00"}).status, 1);
    EXPECT_EQ(meter({"nan", "--at", "2026-03-08 08:00"}).status, 1);
    EXPECT_EQ(meter({"7", "--at", "2099-01-01 00:00"}).status, 1);
    EXPECT_EQ(meter({"7", "--at", "2026-03-07 12:00"}).status, 1) << "above the later reading";
    EXPECT_EQ(meter({"7", "--at", "2026-03-07 20:00"}).status, 1) << "6.40 is stored";
    EXPECT_EQ(meter({"6.40", "--at", "2026-03-07 20:00"}).status, 0) << "already there";
    EXPECT_EQ(meter({"1", "--at", "2026-03-08 08:00", "--event", "rollover"}).status, 1)
        << "no top on record";
    EXPECT_EQ(meter({"0.10", "--at", "2026-03-08 08:00", "--event", "reset", "--note", "power cut"})
                  .status,
              0);
    EXPECT_EQ(meter({"0.10", "--at", "2026-03-08 20:00"}).status, 0) << "no energy used is fine";
}

TEST(CommandLine, AReadingSavedAsNowHasNoDoubtOfItsTimeAndOneWithATimeHasTheLogbooks)
{
    const Program program;
    program.write("d.json", R"({"holdband":1,"time_doubt_min":20,"setups":[{"name":"S"}],
        "sensors":[{"name":"Beer","reads":"beer"}],"meters":[{"name":"M","setup":"S"}]})");
    ASSERT_EQ(program.run({"load", "z.holdband", "d.json"}).status, 0);
    ASSERT_EQ(program.run({"meter", "z.holdband", "M", "5", "--at", "2026-01-01 01:30"}).status, 0);
    ASSERT_EQ(program.run({"meter", "z.holdband", "M", "6"}).status, 0);
    const auto logbook = store::LogbookFile::open(program.path("z.holdband"), store::Access::read);
    ASSERT_TRUE(logbook);
    EXPECT_EQ(store::readSettings(**logbook)->timeDoubt, Milliseconds(std::chrono::minutes{20}));
    const auto readings = store::readMeterReadings(**logbook, "M");
    ASSERT_EQ(readings->size(), 2u);
    EXPECT_EQ((*readings)[0].inForce.timeDoubt, std::nullopt) << "the logbook's";
    EXPECT_EQ((*readings)[1].inForce.timeDoubt, Milliseconds{0});
}

TEST(CommandLine, ARegisterPassingItsDeclaredTopIsARollover)
{
    // A five-digit register 99986 → 11 with set highest value 100000: 25 kWh (arithmetic).
    const Program program;
    program.write("r.json", R"({"holdband":1,"setups":[{"name":"S"}],
        "sensors":[{"name":"Beer","reads":"beer"}],
        "meters":[{"name":"M","setup":"S","rolls_over_at_kwh":100000}],
        "batches":[{"name":"B","setup":"S","pitched":"2026-03-07 00:00","ended":"2026-03-08 00:00",
          "beer_sensor":"Beer","tolerance_c":1,"schedule":[{"stage":"Hold","target_c":20}]}],
        "meter_readings":[{"meter":"M","at":"2026-03-07 00:00","kwh":99986},
                          {"meter":"M","at":"2026-03-08 00:00","kwh":11}]})");
    ASSERT_EQ(program.run({"load", "r.holdband", "r.json"}).status, 0);
    EXPECT_DOUBLE_EQ(program.run({"energy", "r.holdband", "B", "--json"}).json()["kwh"], 25.0);
}

TEST(CommandLine, AMeterLogFromCsvPassesTheSameChecks)
{
    const WorkedProgram program;
    program.write("m.csv", "Time,Meter (kWh)\n2026-03-08 08:00,6.90\n2026-03-08 20:00,6.50\n");
    const Outcome refused = program.run({"import", "log.holdband", "m.csv"});
    EXPECT_EQ(refused.status, 1);
    EXPECT_TRUE(holds(refused.err, "line 3")) << refused.err;
    program.write("m.csv", "Time,Meter (Wh)\n2026-03-08 08:00,6900\n2026-03-08 20:00,7100\n");
    const Outcome taken = program.run({"import", "log.holdband", "m.csv"});
    EXPECT_EQ(taken.status, 0) << taken.err;
    EXPECT_TRUE(holds(taken.out, "2 readings new")) << taken.out;
}

TEST(CommandLine, WhileOneWritesOthersReadAndTheMessageNamesTheWriter)
{
    const WorkedProgram program;
    const auto held = store::LogbookFile::open(program.path("log.holdband"), store::Access::write);
    ASSERT_TRUE(held);
    EXPECT_EQ(program.run({"verdict", "log.holdband", "Worked"}).status, 0);
    EXPECT_EQ(program.run({"export", "log.holdband", "out"}).status, 0);
    for (const auto& call : {std::vector<std::string>{"meter", "log.holdband", "Meter", "7"},
                             {"import", "log.holdband", "worked.csv"},
                             {"load", "log.holdband", "worked.json"}}) {
        const Outcome refused = program.run(call);
        EXPECT_EQ(refused.status, 3) << call.front();
        EXPECT_TRUE(holds(refused.err, "app_tests (process " +
                                           std::to_string(QCoreApplication::applicationPid())))
            << refused.err;
    }
}

/// The only file in the folder of copies.
std::string onlyCopy(const std::string& folder)
{
    const QStringList files = QDir(QString::fromStdString(folder)).entryList(QDir::Files);
    EXPECT_EQ(files.size(), 1);
    return files.isEmpty() ? std::string() : folder + "/" + files.first().toStdString();
}

TEST(CommandLine, ForADamagedLogbookItsSoundCopiesAreListed)
{
    const WorkedProgram program;
    ASSERT_EQ(program.run({"meter", "log.holdband", "Meter", "7.5"}).status, 0);
    ASSERT_EQ(program.run({"meter", "log.holdband", "Meter", "7.6", "--note", "again"}).status, 0);
    const std::string copy = onlyCopy(program.path("log backups"));
    ASSERT_EQ(program.shell("printf broken | dd of=log.holdband conv=notrunc status=none").status,
              0);
    const Outcome refused = program.run({"verdict", "log.holdband", "Worked"});
    EXPECT_EQ(refused.status, 3);
    EXPECT_NE(refused.err.find(copy), std::string::npos) << refused.err;
    EXPECT_NE(refused.err.find("holdband backup '"), std::string::npos) << refused.err;
    ASSERT_EQ(program.run({"backup", copy, "restored.holdband"}).status, 0);
    EXPECT_EQ(program.run({"verdict", "restored.holdband", "Worked"}).status, 0);
}

TEST(CommandLine, ACopyThatFailsIsReportedAndTheChangeIsSaved)
{
    const WorkedProgram program;
    program.write("log backups", "a file where the folder should be");
    const Outcome stored = program.run({"meter", "log.holdband", "Meter", "7.5"});
    EXPECT_EQ(stored.status, 0);
    EXPECT_NE(stored.err.find("no copy today"), std::string::npos) << stored.err;
    EXPECT_EQ(program.read("log backups"), "a file where the folder should be");
}

TEST(CommandLine, CopiesGoToThePlaceInThePreferences)
{
    const WorkedProgram program;
    program.shell("mkdir -p desk/holdband copies && printf '[General]\nbackup-place=%s\n' "
                  "\"$PWD/copies\" > desk/holdband/holdband.conf");
    ASSERT_EQ(program.run({"meter", "log.holdband", "Meter", "7.5"}).status, 0);
    EXPECT_FALSE(QDir(QString::fromStdString(program.path("log backups"))).exists());
    EXPECT_EQ(program.shell("ls copies/*/*.holdband | wc -l").out, "1\n");
}

TEST(CommandLine, AUrlOfAnotherComputerIsNotALogbook)
{
    if (!hasWindow)
        GTEST_SKIP() << "only the window opens URLs";
    const Program program;
    const Outcome refused = program.run({"file://elsewhere/log.holdband"});
    EXPECT_EQ(refused.status, 2);
    EXPECT_NE(refused.err.find("names no file of this computer"), std::string::npos);
}

TEST(CommandLine, BackupIsAWholeLogbookAndNeverOverwrites)
{
    const WorkedProgram program;
    ASSERT_EQ(program.run({"backup", "log.holdband", "copy.holdband"}).status, 0);
    EXPECT_EQ(program.run({"verdict", "copy.holdband", "Worked", "--json"}).out,
              program.run({"verdict", "log.holdband", "Worked", "--json"}).out);
    EXPECT_EQ(program.run({"check", "copy.holdband"}).status, 0);
    EXPECT_EQ(program.run({"backup", "log.holdband", "copy.holdband"}).status, 3);
}

TEST(CommandLine, ALeadingMinusIsStoredAsTyped)
{
    const WorkedProgram program;
    EXPECT_TRUE(holds(program.run({"verdict", "log.holdband", "--", "-5x"}).err, "\"-5x\""));
    EXPECT_TRUE(holds(program.run({"verdict", "log.holdband", "-5"}).err, "\"-5\""));
    const Outcome stored = program.run({"meter", "log.holdband", "Meter", "7", "--at",
                                        "2026-03-08 08:00", "--note", "-5 outside"});
    ASSERT_EQ(stored.status, 0) << stored.err;
    ASSERT_EQ(program.run({"export", "log.holdband", "out"}).status, 0);
    EXPECT_TRUE(holds(program.read("out/logbook.json"), "\"note\": \"-5 outside\""));
    EXPECT_TRUE(holds(program.run({"meter", "log.holdband", "Meter", "-.5"}).err, "can't read"));
    EXPECT_EQ(program.run({"verdict", "log.holdband", "-x"}).status, 2) << "an option";
}

TEST(CommandLine, AReadingMayBeTypedWithADecimalComma)
{
    const WorkedProgram program;
    const Outcome stored =
        program.run({"meter", "log.holdband", "Meter", "6,90", "--at", "2026-03-08 08:00"});
    EXPECT_EQ(stored.status, 0) << stored.err;
    EXPECT_EQ(stored.out, "Meter: 6.90 kWh stored.\n");
    EXPECT_EQ(program.run({"meter", "log.holdband", "Meter", "1,234"}).status, 1)
        << "could be a thousand";
}

TEST(CommandLine, ConflictsBeyondTheFirstTwentyAreCounted)
{
    const WorkedProgram program;
    std::string first = "Time,Beer\n";
    std::string second = "Time,Beer\n";
    for (int minute = 10; minute < 35; ++minute) {
        const std::string at = "2026-03-09 00:" + std::to_string(minute);
        first += at + ",20\n";
        second += at + ",21\n";
    }
    program.write("first.csv", first);
    program.write("second.csv", second);
    ASSERT_EQ(program.run({"import", "log.holdband", "first.csv"}).status, 0);
    const Outcome again = program.run({"import", "log.holdband", "second.csv"});
    EXPECT_EQ(again.status, 0) << again.err;
    EXPECT_TRUE(holds(again.out, "25 conflicting")) << again.out;
    EXPECT_TRUE(holds(again.out, "  and 5 more conflicting\n")) << again.out;
}

TEST(CommandLine, LoadNamesUnusedColumnsAndOddDataInALog)
{
    const Program program;
    program.write("g.csv", "Time,Glycol (F),Extra\n2026-03-09 00:00,24,1\n2026-03-09 01:00,25,1\n");
    program.write("g.json", R"json({"holdband":1,"sensors":[{"name":"Glycol","reads":"coolant"}],
        "files":[{"file":"g.csv","columns":{"Glycol":"Glycol (F)"}}]})json");
    const Outcome loaded = program.run({"load", "g.holdband", "g.json"});
    EXPECT_EQ(loaded.status, 0);
    EXPECT_TRUE(holds(loaded.err, "g.csv: column Glycol (F): the median 25 is odd")) << loaded.err;
    EXPECT_TRUE(holds(loaded.err, "the column \"Extra\" was left out")) << loaded.err;
}

TEST(CommandLine, AConflictIsReportedInTheLogbooksOwnTime)
{
    const Program program;
    program.write("s.json", R"({"holdband":1,"zone":"America/Denver",
        "sensors":[{"name":"Beer","reads":"beer"}]})");
    ASSERT_EQ(program.run({"load", "s.holdband", "s.json"}).status, 0);
    program.write("b.csv", "Time,Beer (F)\n2026-03-14 02:00,68\n2026-03-14 02:00,67\n");
    const Outcome imported = program.run({"import", "s.holdband", "b.csv"});
    EXPECT_TRUE(
        holds(imported.out,
              "conflict, line 3, Beer: 67 at 2026-03-14T02:00:00-06:00, where 68 is stored"))
        << imported.out;
}

} // namespace
} // namespace holdband::test
