// Several files, folders and standard input in one call of `import`; workbooks and JSON lines.
#include "tests/app/program.h"
#include "tests/intake/workbook_maker.h"

namespace holdband::test {
namespace {

std::string logOf(const std::string& day)
{
    return "Time,Beer\n" + day + " 00:00,20.5\n" + day + " 01:00,20.75\n";
}

std::size_t placeIn(const std::string& text, const std::string& part)
{
    return text.find(part);
}

TEST(ImportFiles, AreReadInTheOrderOfTheirFirstRows)
{
    const WorkedProgram program;
    program.write("a.csv", logOf("2026-03-10"));
    program.write("b.csv", gzipped(logOf("2026-03-08")));
    program.write("c.csv", logOf("2026-03-09"));
    const Outcome outcome = program.run({"import", "log.holdband", "a.csv", "b.csv", "c.csv"});
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_LT(placeIn(outcome.out, "b.csv: 2 rows read"),
              placeIn(outcome.out, "c.csv: 2 rows read"));
    EXPECT_LT(placeIn(outcome.out, "c.csv: 2 rows read"),
              placeIn(outcome.out, "a.csv: 2 rows read"));
    EXPECT_TRUE(holds(outcome.out, "3 files: 3 imported, 0 refused.\n"
                                   "  b.csv: 2 readings new\n  c.csv: 2 readings new\n"
                                   "  a.csv: 2 readings new\n"))
        << outcome.out;
    EXPECT_EQ(program.shell("sqlite3 log.holdband 'SELECT count(*) FROM imports'").out, "4\n")
        << "each file is an import of its own";
}

TEST(ImportFiles, ARefusedOneDoesNotStopTheOthers)
{
    const WorkedProgram program;
    program.write("a.csv", logOf("2026-03-10"));
    program.write("bad.csv", "Time,Beer\n03/04/26 00:00,20\n");
    program.write("c.csv", logOf("2026-03-09"));
    const Outcome outcome =
        program.run({"import", "log.holdband", "bad.csv", "a.csv", "missing.csv", "c.csv"});
    EXPECT_EQ(outcome.status, 3) << "the highest of the files' statuses";
    EXPECT_TRUE(holds(outcome.err, "--date-order")) << outcome.err;
    EXPECT_TRUE(holds(outcome.out, "4 files: 2 imported, 2 refused.\n"
                                   "  c.csv: 2 readings new\n  a.csv: 2 readings new\n"
                                   "  bad.csv: refused\n  missing.csv: refused\n"))
        << outcome.out;
    const Outcome again = program.run({"import", "log.holdband", "bad.csv", "a.csv"});
    EXPECT_EQ(again.status, 1);
    EXPECT_TRUE(holds(again.out, "a.csv: 0 readings new")) << again.out;
}

TEST(ImportFiles, AFolderGivesItsLogsAndEachFileCountsOnce)
{
    const WorkedProgram program;
    program.shell("mkdir -p logs/inner none");
    program.write("logs/b.csv", logOf("2026-03-09"));
    program.write("logs/a.csv.gz", gzipped(logOf("2026-03-08")));
    program.write("logs/picture.png", "x");
    program.write("logs/.hidden.csv", "x");
    program.write("logs/inner/c.csv", logOf("2026-03-11"));
    const Outcome dry =
        program.run({"import", "log.holdband", "logs", "logs/../logs/b.csv", "--dry-run"});
    EXPECT_EQ(dry.status, 0) << dry.err;
    EXPECT_TRUE(holds(dry.out, "2 files: 2 can be imported, 0 refused.\n"
                               "  logs/a.csv.gz: 2 readings new\n  logs/b.csv: 2 readings new\n"))
        << dry.out;
    const Outcome none = program.run({"import", "log.holdband", "none"});
    EXPECT_EQ(none.status, 3);
    EXPECT_TRUE(holds(none.err, "none: there is no log in this folder")) << none.err;
}

TEST(ImportFiles, StandardInputIsReadToItsEnd)
{
    const WorkedProgram program;
    program.write("l.csv", logOf("2026-03-08"));
    program.write("m.csv.gz", gzipped(logOf("2026-03-09")));
    const Outcome piped = program.shell("cat l.csv | $HOLDBAND import log.holdband -");
    EXPECT_EQ(piped.status, 0) << piped.err;
    EXPECT_TRUE(holds(piped.out, "standard input: 2 rows read; 2 readings new")) << piped.out;
    EXPECT_TRUE(holds(program.shell("$HOLDBAND import log.holdband - < l.csv").out, "2 already"));
    EXPECT_TRUE(
        holds(program.shell("cat m.csv.gz | $HOLDBAND import log.holdband /dev/stdin l.csv").out,
              "  standard input: 2 readings new\n"));
    const Outcome empty = program.shell("$HOLDBAND import log.holdband - < /dev/null");
    EXPECT_EQ(empty.status, 1);
    EXPECT_TRUE(holds(empty.err, "standard input: the file is empty")) << empty.err;
    EXPECT_EQ(program.run({"import", "log.holdband", "-", "-"}).status, 2);
}

TEST(ImportFiles, RejectsGoWithOneFile)
{
    const WorkedProgram program;
    program.write("a.csv", logOf("2026-03-08"));
    program.write("b.csv", logOf("2026-03-09"));
    const Outcome outcome =
        program.run({"import", "log.holdband", "a.csv", "b.csv", "--rejects", "r.csv"});
    EXPECT_EQ(outcome.status, 2);
    EXPECT_TRUE(holds(outcome.err, "--rejects goes with one file")) << outcome.err;
}

TEST(ImportFiles, AWorkbooksSheetIsChosenByItsName)
{
    const WorkedProgram program;
    const std::string header = rowOf(textCell("Time") + textCell("Beer"));
    const auto sheet = [&](const std::string& day) {
        return header + rowOf(numberCell(day, 1) + numberCell("20.5"));
    };
    program.write("l.csv",
                  workbookBytes({{{"July", sheet("46089.25")}, {"August", sheet("46090.25")}},
                                 {},
                                 {"dd.mm.yy hh:mm"}}));
    const Outcome first = program.run({"import", "log.holdband", "l.csv"});
    EXPECT_EQ(first.status, 0) << first.err;
    EXPECT_TRUE(holds(first.out, "1 reading new")) << first.out;
    EXPECT_TRUE(holds(first.err, "the sheet \"July\" was read; the workbook also has: August"))
        << first.err;
    EXPECT_TRUE(holds(program.run({"import", "log.holdband", "l.csv", "--sheet", "August"}).out,
                      "1 reading new"));
    const Outcome wrong = program.run({"import", "log.holdband", "l.csv", "--sheet", "May"});
    EXPECT_EQ(wrong.status, 1);
    EXPECT_TRUE(holds(wrong.err, "the sheets are: July, August")) << wrong.err;
}

TEST(ImportFiles, JsonLinesAndBlanksAreRead)
{
    const WorkedProgram program;
    program.write("l.jsonl", "{\"time\": \"2026-03-08T00:00\", \"probe\": {\"c\": 20.5}}\n");
    const Outcome json =
        program.run({"import", "log.holdband", "l.jsonl", "--column", "Beer=probe.c"});
    EXPECT_EQ(json.status, 0) << json.err;
    EXPECT_TRUE(holds(json.out, "1 reading new")) << json.out;
    program.write("l.txt", "Date Time Beer\n2026-03-09 00:00 20.5\n");
    for (const std::vector<std::string>& options :
         {std::vector<std::string>{"--time", "Date+Time"}, {"--delimiter", "space"}}) {
        std::vector<std::string> call{"import", "log.holdband", "l.txt", "--dry-run"};
        call.insert(call.end(), options.begin(), options.end());
        EXPECT_TRUE(holds(program.run(call).out, "1 reading new"));
    }
}

} // namespace
} // namespace holdband::test
