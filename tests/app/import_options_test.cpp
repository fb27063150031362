// The options of `import` for the layout of a log.
#include "tests/app/program.h"

namespace holdband::test {
namespace {

TEST(ImportOptions, TheDelimiterAndTheHeadersLineCanBeSet)
{
    const WorkedProgram program;
    program.write("l.csv", "Logger|Serial\nTime|Beer\nWhen|Upper\n2026-03-08 00:00|20.5\n"
                           "2026-03-08 01:00|20.6\n");
    const Outcome outcome = program.run(
        {"import", "log.holdband", "l.csv", "--delimiter", "bar", "--header-line", "2"});
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_TRUE(holds(outcome.out, "2 readings new")) << outcome.out;
    EXPECT_TRUE(holds(outcome.out, "line 3")) << "the row below is no reading: " << outcome.out;
}

TEST(ImportOptions, ALogWithoutAHeaderHasNumberedColumns)
{
    const WorkedProgram program;
    program.write("l.csv", "2026-03-08 00:00;20.5\n2026-03-08 01:00;20.6\n");
    const Outcome outcome = program.run({"import", "log.holdband", "l.csv", "--header-line", "0",
                                         "--column", "Beer=column 2", "--delimiter", ";"});
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_TRUE(holds(outcome.out, "2 readings new")) << outcome.out;
}

TEST(ImportOptions, ImpossibleOptionsAreRefusedWithTheirPlaceAndStoreNothing)
{
    const WorkedProgram program;
    const std::string before = program.read("log.holdband");
    program.write("l.csv", "Time,Beer\n2026-03-08 00:00,20.5\n");
    struct Case {
        std::vector<std::string> options;
        int status;
        const char* says;
    };
    const Case cases[] = {
        {{"--header-line", "9"}, 1, "l.csv: no row begins in line 9"},
        {{"--header-line", "2"}, 1, "l.csv, line 2: this is no header"},
        {{"--delimiter", "tab", "--header-line", "1"}, 1, "l.csv, line 1: the header has only one"},
        {{"--header-line", "first"}, 2, "--header-line can't be \"first\""},
        {{"--header-line", "-1"}, 2, "--header-line can't be \"-1\""},
        {{"--delimiter", "dash"}, 2, "comma, semicolon, tab, bar, space"},
        {{"--unit-column", "Unit"}, 2, "--names and --values"},
        {{"--time-unit", "weeks"}, 2, "seconds, minutes, hours, days"},
        {{"--start", "2026-03-08 00:00"}, 1, "the times don't count from a start"},
    };
    for (const Case& each : cases) {
        std::vector<std::string> call{"import", "log.holdband", "l.csv"};
        call.insert(call.end(), each.options.begin(), each.options.end());
        const Outcome outcome = program.run(call);
        EXPECT_EQ(outcome.status, each.status) << each.says << ": " << outcome.err;
        EXPECT_TRUE(holds(outcome.err, each.says)) << outcome.err;
    }
    EXPECT_EQ(program.read("log.holdband"), before);
}

TEST(ImportOptions, AStartAndAUnitOfTimeDecideWhatItsTimesAre)
{
    const WorkedProgram program;
    program.write("l.csv", "x,Beer\n0,20.5\n90,20.6\n");
    const Outcome asked = program.run({"import", "log.holdband", "l.csv"});
    EXPECT_EQ(asked.status, 1);
    EXPECT_TRUE(holds(asked.err, "--time-unit seconds")) << asked.err;
    const Outcome unit = program.run({"import", "log.holdband", "l.csv", "--time-unit", "minutes"});
    EXPECT_EQ(unit.status, 1);
    EXPECT_TRUE(holds(unit.err, "minutes since a start that the file doesn't say")) << unit.err;
    const Outcome decided = program.run({"import", "log.holdband", "l.csv", "--time-unit",
                                         "minutes", "--start", "2026-03-09 06:30"});
    EXPECT_EQ(decided.status, 0) << decided.err;
    EXPECT_TRUE(holds(decided.out, "2 readings new")) << decided.out;
    EXPECT_TRUE(holds(decided.out, "(minutes since 2026-03-09 06:30)")) << decided.out;
}

TEST(ImportOptions, TheZoneIsNamedAndAskedForIfTheHeaderHasNone)
{
    const WorkedProgram program;
    const std::string before = program.read("log.holdband");
    program.write("l.csv", "Time (CST),Beer\n2026-03-08 00:00,20.5\n");
    const Outcome asked = program.run({"import", "log.holdband", "l.csv"});
    EXPECT_EQ(asked.status, 1);
    EXPECT_TRUE(holds(asked.err, "l.csv, column Time (CST): ")) << asked.err;
    EXPECT_TRUE(holds(asked.err, "--zone")) << asked.err;
    EXPECT_TRUE(program.read("log.holdband") == before);
    const Outcome decided =
        program.run({"import", "log.holdband", "l.csv", "--zone", "Asia/Shanghai"});
    EXPECT_EQ(decided.status, 0) << decided.err;
    EXPECT_TRUE(holds(decided.out, "times read as Asia/Shanghai (as set")) << decided.out;
    program.write("m.csv", "\"Date Time, GMT-05:00\",Beer\n2026-03-09 00:00,20.5\n");
    EXPECT_TRUE(holds(program.run({"import", "log.holdband", "m.csv"}).out,
                      "times read as UTC−05:00 (from the header \"Date Time, GMT-05:00\")"));
}

TEST(ImportOptions, LoadNamesTheZoneAndAsksForItByItsKey)
{
    const Program program;
    program.write("worked.json", workedDescription());
    program.write("worked.csv", workedLog());
    const Outcome loaded = program.run({"load", "log.holdband", "worked.json"});
    EXPECT_TRUE(holds(loaded.out, "times read as UTC (the description's zone)")) << loaded.out;
    std::string log = workedLog();
    program.write("worked.csv", "Time (EST)" + log.substr(log.find(',')));
    const Outcome asked = program.run({"load", "other.holdband", "worked.json"});
    EXPECT_EQ(asked.status, 1);
    EXPECT_TRUE(holds(asked.err, "\"zone\": ")) << asked.err;
    EXPECT_FALSE(holds(asked.err, "--zone")) << asked.err;
}

TEST(ImportOptions, ALongLogNamesTheUnitOfEachRow)
{
    const WorkedProgram program;
    program.write("l.csv", "Time,Name,Value,Unit\n2026-03-08 00:00,Beer,68,°F\n"
                           "2026-03-08 01:00,Beer,20,°C\n2026-03-08 02:00,Beer,528,°R\n");
    const Outcome outcome = program.run({"import", "log.holdband", "l.csv", "--names", "Name",
                                         "--values", "Value", "--unit-column", "Unit"});
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_TRUE(holds(outcome.out, "2 readings new")) << outcome.out;
    EXPECT_TRUE(holds(outcome.out, "line 4")) << outcome.out;
    EXPECT_TRUE(holds(outcome.err, "1 value in another unit converted to °F")) << outcome.err;
}

} // namespace
} // namespace holdband::test
