// What people expect of any command line: short options, help, quiet, names in other letters, one
// exit status where a target exists.
#include "app/table.h"
#include "tests/app/program.h"

namespace holdband::test {
namespace {

TEST(Conventions, ShortOptionsAndTheCommandHelp)
{
    const Program program;
    EXPECT_EQ(program.run({"-h"}).out, program.run({"--help"}).out);
    EXPECT_EQ(program.run({"help"}).out, program.run({"--help"}).out);
    EXPECT_EQ(program.run({"-V"}).out, program.run({"--version"}).out);
    EXPECT_EQ(program.run({"verdict", "-h"}).out, program.run({"verdict", "--help"}).out);
    EXPECT_EQ(program.run({"help", "verdict"}).out, program.run({"verdict", "--help"}).out);
    EXPECT_EQ(program.run({"verdict", "-V"}).out, program.run({"--version"}).out);
    EXPECT_TRUE(holds(program.run({"verdict", "-h"}).out, "-q, --quiet"));
    const Outcome unknown = program.run({"help", "verdcit"});
    EXPECT_EQ(unknown.status, 2);
    EXPECT_TRUE(holds(unknown.err, "did you mean verdict?")) << unknown.err;
}

TEST(Conventions, QuietLeavesOutWhatWasDoneButNoResultAndNoWarning)
{
    const WorkedProgram program;
    program.write("more.csv", "Time,Beer (C),Other\n2026-03-08 00:00,20,1\n");
    const Outcome imported = program.run({"import", "log.holdband", "more.csv", "--quiet"});
    EXPECT_EQ(imported.status, 0) << imported.err;
    EXPECT_EQ(imported.out, "");
    EXPECT_TRUE(holds(imported.err, "Other")) << "an ignored column is a warning";
    const Outcome copied = program.run({"backup", "-q", "log.holdband", "copy.holdband"});
    EXPECT_EQ(copied.status, 0);
    EXPECT_EQ(copied.err, "");
    EXPECT_EQ(program.run({"verdict", "-q", "log.holdband", "Worked"}).out,
              program.run({"verdict", "log.holdband", "Worked"}).out);
    EXPECT_NE(program.run({"verdict", "-q", "log.holdband", "Wrked"}).err, "");
}

TEST(Conventions, ColorsAreForTerminalsOrWhereTheyAreSaid)
{
    const WorkedProgram program;
    const std::string escape = "\x1b[";
    const std::string plain = program.run({"verdict", "log.holdband", "Worked"}).out;
    EXPECT_FALSE(holds(plain, escape)) << "standard output is no terminal here";
    const Outcome colored = program.run({"verdict", "log.holdband", "Worked", "--color", "always"});
    EXPECT_TRUE(holds(colored.out, "\x1b[1m")) << colored.out;
    const Outcome stripped = program.shell("$HOLDBAND verdict log.holdband Worked --color always "
                                           "| sed 's/\\x1b\\[[0-9;]*m//g'");
    EXPECT_EQ(stripped.out, plain) << "colors add nothing but emphasis";
    const Outcome failed =
        program.run({"verdict", "log.holdband", "Worked\x1b[31m", "--color", "always"});
    EXPECT_TRUE(failed.err.starts_with("\x1b[1;31mholdband:\x1b[0m ")) << failed.err;
    EXPECT_FALSE(holds(failed.err, "\x1b[31m")) << "a name's own control characters are shown";
    EXPECT_EQ(program.run({"verdict", "log.holdband", "Worked", "--color", "red"}).status, 2);
}

/// `script` gives the program a terminal.
TEST(Conventions, ATerminalGetsColorsUnlessNoColorIsSet)
{
    const WorkedProgram program;
    const auto atTerminal = [&](const std::string& settings, const std::string& options) {
        return program
            .shell(settings + " script -qec \"$HOLDBAND verdict log.holdband Worked " + options +
                   "\" /dev/null </dev/null")
            .out;
    };
    EXPECT_TRUE(holds(atTerminal("NO_COLOR= TERM=xterm", ""), "\x1b[1m"));
    EXPECT_FALSE(holds(atTerminal("NO_COLOR=1 TERM=xterm", ""), "\x1b["));
    EXPECT_FALSE(holds(atTerminal("NO_COLOR= TERM=dumb", ""), "\x1b["));
    EXPECT_FALSE(holds(atTerminal("NO_COLOR= TERM=xterm", "--color never"), "\x1b["));
    EXPECT_TRUE(holds(atTerminal("NO_COLOR=1 TERM=xterm", "--color always"), "\x1b[1m"));
}

TEST(Conventions, NamesAreFoundInOtherLetters)
{
    const WorkedProgram program;
    EXPECT_EQ(program.run({"verdict", "log.holdband", "WORKED"}).out,
              program.run({"verdict", "log.holdband", "Worked"}).out);
    EXPECT_EQ(program.run({"energy", "log.holdband", " worked "}).status, 0);
    const Outcome saved =
        program.run({"meter", "log.holdband", "meter", "6.5", "--at", "2026-03-08 00:00"});
    EXPECT_EQ(saved.out, "Meter: 6.5 kWh stored.\n") << saved.err;
    program.write("other.csv", "Time,Probe (C)\n2026-03-08 00:00,20\n");
    const Outcome imported =
        program.run({"import", "log.holdband", "other.csv", "--column", "beer=Probe (C)"});
    EXPECT_EQ(imported.status, 0) << imported.err;
    EXPECT_TRUE(holds(imported.out, "Beer: column"));
    const Outcome unknown = program.run({"verdict", "log.holdband", "worke"});
    EXPECT_EQ(unknown.status, 1);
    EXPECT_TRUE(holds(unknown.err, "did you mean Worked?")) << unknown.err;
}

TEST(Conventions, ATargetThatExistsIsStatusThree)
{
    const WorkedProgram program;
    program.write("taken", "mine");
    EXPECT_EQ(program.run({"new", "taken"}).status, 3);
    EXPECT_EQ(program.run({"backup", "log.holdband", "taken"}).status, 3);
    EXPECT_EQ(program.run({"export", "log.holdband", "taken"}).status, 3);
    program.write("more.csv", "Time,Beer (C)\n2026-03-08 00:00,20\n");
    EXPECT_EQ(program.run({"import", "log.holdband", "more.csv", "--rejects", "taken"}).status, 3);
    EXPECT_EQ(program.read("taken"), "mine");
}

TEST(Conventions, SuccessiveDaysWithoutAMeterAreOneRow)
{
    const Program program;
    program.write("d.json", R"json({
  "holdband": 1, "setups": [ { "name": "Loop" } ],
  "sensors": [ { "name": "Beer", "reads": "beer" } ],
  "meters": [ { "name": "Meter", "setup": "Loop" } ],
  "batches": [ { "name": "Long", "setup": "Loop", "pitched": "2026-01-01 00:00",
                 "ended": "2026-03-02 00:00", "beer_sensor": "Beer", "tolerance_c": 1,
                 "schedule": [ { "stage": "Hold", "target_c": 20 } ] } ],
  "meter_readings": [ { "meter": "Meter", "at": "2026-02-28 00:00", "kwh": 5 },
                      { "meter": "Meter", "at": "2026-03-02 00:00", "kwh": 6 } ] })json");
    ASSERT_EQ(program.run({"load", "l.holdband", "d.json"}).status, 0);
    const std::string text = program.run({"energy", "l.holdband", "Long"}).out;
    EXPECT_TRUE(holds(text, "not metered, 58 days")) << text;
    EXPECT_EQ(std::count(text.begin(), text.end(), '\n'), 9) << text;
    EXPECT_EQ(program.run({"energy", "l.holdband", "Long", "--json"}).json()["days"].size(), 60u);
}

TEST(Tables, GoOnBelowWhereTheyAreTooWide)
{
    app::Table table({"stage", "target", "covered", "inside"});
    table.add({"Primary", "66.0 °F", "99.5 %", "98.2 %"});
    EXPECT_EQ(table.text(80), "  stage     target  covered  inside\n"
                              "  Primary  66.0 °F   99.5 %  98.2 %\n");
    EXPECT_EQ(table.text(28), "  stage     target  covered\n"
                              "  Primary  66.0 °F   99.5 %\n\n"
                              "  stage    inside\n"
                              "  Primary  98.2 %\n");
    EXPECT_EQ(table.text(3), "  stage     target\n"
                             "  Primary  66.0 °F\n\n"
                             "  stage    covered\n"
                             "  Primary   99.5 %\n\n"
                             "  stage    inside\n"
                             "  Primary  98.2 %\n");
}

} // namespace
} // namespace holdband::test
