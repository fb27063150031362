// Packed logs through the program: import, dry run, description.
#include "tests/app/program.h"
#include "tests/intake/packing.h"

namespace holdband::test {
namespace {

TEST(PackedFiles, AreImportedLikePlainOnes)
{
    const WorkedProgram program;
    program.write("l.csv.gz", gzipped("Time,Beer\n2026-03-08 00:00,20.5\n2026-03-08 01:00,x\n"));
    const Outcome dry = program.run({"import", "log.holdband", "l.csv.gz", "--dry-run"});
    EXPECT_EQ(dry.status, 0) << dry.err;
    EXPECT_TRUE(holds(dry.out, "l.csv.gz: 2 rows read; 1 reading new")) << dry.out;
    const Outcome outcome = program.run({"import", "log.holdband", "l.csv.gz"});
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_TRUE(holds(outcome.out, "1 reading new")) << outcome.out;
    EXPECT_TRUE(holds(outcome.out, "line 3")) << outcome.out;
    program.write("l.csv", zipped({{"l.csv", "Time,Beer\n2026-03-08 00:00,20.5\n"}}));
    EXPECT_TRUE(holds(program.run({"import", "log.holdband", "l.csv"}).out, "1 already there"));
}

TEST(PackedFiles, BrokenOnesAreRefusedAndTheLogbookIsUnchanged)
{
    const WorkedProgram program;
    const std::string before = program.read("log.holdband");
    const std::string log = "Time,Beer\n2026-03-08 00:00,20.5\n";
    struct Case {
        std::string bytes;
        const char* says;
    };
    const Case cases[] = {
        {zipped({}), "l.zip: the archive is empty"},
        {zipped({{"a.csv", log}, {"b.csv", log}}), "a.csv, b.csv"},
        {zipped({{"a.zip", zipped({{"a.csv", log}})}}), "inside an archive"},
        {zipped({{"a.csv", log}}).substr(0, 60), "l.zip, byte 60: "},
        {gzipped(log).substr(0, 30), "l.zip, byte 30: "},
        {"\x1F\x8B noise \x01\x02", "l.zip, byte "},
        {"\x7F\x02 noise, \"of\xFF\" any \x01 kind;\n\x03\t\x80", "l.zip"},
    };
    for (const Case& each : cases) {
        program.write("l.zip", each.bytes);
        const Outcome outcome = program.run({"import", "log.holdband", "l.zip"});
        EXPECT_EQ(outcome.status, 1) << each.says << ": " << outcome.err;
        EXPECT_TRUE(holds(outcome.err, each.says)) << each.says << ": " << outcome.err;
        EXPECT_EQ(outcome.out, "") << each.says;
    }
    EXPECT_EQ(program.read("log.holdband"), before);
}

TEST(PackedFiles, ADescriptionMayNameOne)
{
    const Program program;
    program.write("worked.json", workedDescription());
    program.write("worked.csv", gzipped(workedLog()));
    const Outcome loaded = program.run({"load", "log.holdband", "worked.json"});
    EXPECT_EQ(loaded.status, 0) << loaded.err;
    EXPECT_TRUE(holds(loaded.out, "10 readings new")) << loaded.out;
}

} // namespace
} // namespace holdband::test
