// The options of `import` that say how a log is laid out.
#include "tests/app/program.h"

namespace holdband::test {
namespace {

TEST(ImportOptions, TheDelimiterAndTheHeadersLineAreSaid)
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

TEST(ImportOptions, WhatCannotBeIsRefusedWithItsPlaceAndKeepsNothing)
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
        {{"--delimiter", "dash"}, 2, "comma, semicolon, tab, bar"},
        {{"--unit-column", "Unit"}, 2, "--names and --values"},
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

TEST(ImportOptions, ALongLogSaysTheUnitOfEachRow)
{
    const WorkedProgram program;
    program.write("l.csv", "Time,Name,Value,Unit\n2026-03-08 00:00,Beer,68,°F\n"
                           "2026-03-08 01:00,Beer,20,°C\n2026-03-08 02:00,Beer,293,K\n");
    const Outcome outcome = program.run({"import", "log.holdband", "l.csv", "--names", "Name",
                                         "--values", "Value", "--unit-column", "Unit"});
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_TRUE(holds(outcome.out, "2 readings new")) << outcome.out;
    EXPECT_TRUE(holds(outcome.out, "line 4")) << outcome.out;
    EXPECT_TRUE(holds(outcome.err, "1 value in another unit converted to °F")) << outcome.err;
}

} // namespace
} // namespace holdband::test
