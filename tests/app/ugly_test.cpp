// Bad input on the command line: a sentence, the right exit status, and an unchanged logbook.
#include "tests/app/program.h"

#include <sys/resource.h>
#include <sys/stat.h>

namespace holdband::test {
namespace {

struct Case {
    const char* what;
    std::string text;
    int status;
    const char* says;
};

std::string sensorsOnly(const std::string& more)
{
    return R"({"holdband":1,"setups":[{"name":"S"}],"sensors":[{"name":"Beer","reads":"beer"}])" +
           more + "}";
}

std::string batchWith(const std::string& keys)
{
    return sensorsOnly(R"(,"batches":[{"name":"B","setup":"S","beer_sensor":"Beer",)" + keys +
                       "}]");
}

/// Little-endian; ASCII only.
std::string utf16(const std::string& text, bool mark)
{
    std::string bytes = mark ? "\xFF\xFE" : "";
    for (const char c : text) {
        bytes += c;
        bytes += '\0';
    }
    return bytes;
}

TEST(UglyDescription, IsRefusedWithItsPlace)
{
    const std::string schedule = R"("schedule":[{"stage":"A","target_c":20}])";
    const std::string pitched = R"("pitched":"2026-03-07 18:00","tolerance_c":1,)";
    const Case cases[] = {
        {"empty", "", 1, "line 1"},
        {"no JSON", "{\"holdband\": 1,\n  oops }", 1, "line 2"},
        {"not ours", "{}", 1, "holdband"},
        {"newer", "{\"holdband\": 2}", 1, "newer"},
        {"unknown key", sensorsOnly(R"(,"setup":[])"), 1, "setups"},
        {"doubled key", R"({"holdband":1,"zone":"UTC","zone":"UTC"})", 1, "twice"},
        {"wrong type", R"({"holdband":1,"setups":{}})", 1, "setups"},
        {"bad zone", R"({"holdband":1,"zone":"Mars/Olympus"})", 1, "zone"},
        {"no stage", batchWith(pitched + R"("schedule":[])"), 1, "no stage"},
        {"ramp first",
         batchWith(pitched + R"("schedule":[{"stage":"A","kind":"ramp","target_c":20,"hours":4}])"),
         1, "ramp"},
        {"negative hours",
         batchWith(pitched + R"("schedule":[{"stage":"A","target_c":20,"hours":-4}])"), 1, "hours"},
        {"no tolerance", batchWith(R"("pitched":"2026-03-07 18:00",)" + schedule), 1, "tolerance"},
        {"tolerance 0", batchWith(R"("pitched":"2026-03-07 18:00","tolerance_c":0,)" + schedule), 1,
         "tolerance"},
        {"end before pitching", batchWith(pitched + R"("ended":"2026-03-06 18:00",)" + schedule), 1,
         "ends before"},
        {"two units",
         batchWith(pitched + R"("schedule":[{"stage":"A","target_c":20,"target_f":68}])"), 1,
         "twice"},
        {"no such sensor",
         sensorsOnly(R"(,"batches":[{"name":"B","setup":"S","beer_sensor":"Bier",)" + pitched +
                     schedule + "}]"),
         1, "batches[0]: there is no sensor \"Bier\""},
        {"missing hour",
         R"({"holdband":1,"zone":"America/Denver","journal":[{"at":"2026-03-08 02:30","text":"x"}]})",
         1, "journal[0].at"},
        {"doubled hour",
         R"({"holdband":1,"zone":"America/Denver","journal":[{"at":"2026-11-01 01:30","text":"x"}]})",
         1, "-07:00"},
        {"names differing in case", R"({"holdband":1,"setups":[{"name":"Loop"},{"name":"loop"}]})",
         1, "case"},
        {"newline in a name", R"({"holdband":1,"setups":[{"name":"Lo\nop"}]})", 1, "line break"},
        {"long name", R"({"holdband":1,"setups":[{"name":")" + std::string(10'000, 'x') + "\"}]}",
         1, "too long"},
        {"no UTF-8", "{\"holdband\":1,\"setups\":[{\"name\":\"L\xff\"}]}", 1, "JSON"},
        {"huge number", R"({"holdband":1,"price_per_kwh":1e400})", 1, "number"},
        {"meter below",
         R"({"holdband":1,"setups":[{"name":"S"}],"meters":[{"name":"M","setup":"S"}],)"
         R"("meter_readings":[{"meter":"M","at":"2026-03-07 08:00","kwh":5},)"
         R"({"meter":"M","at":"2026-03-07 20:00","kwh":4}]})",
         1, "meter_readings[1]"},
    };
    for (const Case& each : cases) {
        const Program program;
        program.write("d.json", each.text);
        const Outcome outcome = program.run({"load", "new.holdband", "d.json"});
        EXPECT_EQ(outcome.status, each.status) << each.what << ": " << outcome.err;
        ASSERT_STRNE(each.says, "") << each.what;
        EXPECT_TRUE(holds(outcome.err, each.says)) << each.what << ": " << outcome.err;
        EXPECT_EQ(outcome.out, "") << each.what;
        EXPECT_EQ(program.shell("ls").out, "d.json\n") << each.what;
    }
}

TEST(UglyCsv, IsRefusedAndTheLogbookIsUnchanged)
{
    const WorkedProgram program;
    const std::string before = program.read("log.holdband");
    const Case cases[] = {
        {"empty", "", 1, "empty"},
        {"header only", "Time,Beer\n", 1, "line 1: there are no rows below the header"},
        {"open quote", "Time,Beer\n2026-03-08 00:00,\"20\n2026-03-08 01:00,20\n", 1, "quote"},
        {"NUL", std::string("Time,Beer\n2026-03-08 00:00,2\0000\n", 31), 1,
         "u.csv, line 2, column Beer: no value beside the times in \"Time\" can be read: "
         "\"2\\x000\""},
        {"a date alone", "Date,Meter\n2026-03-08,1.02\n2026-03-09,0.97\n", 1,
         "u.csv, line 2, column Date: the times can't be read: \"2026-03-08\" has a date but no"},
        {"no time", "Beer\n20.0\n20.1\n", 1, "no column of times"},
        {"doubled header", "Time,Beer,Beer\n2026-03-08 00:00,20,21\n", 1, "Beer"},
        {"nothing known", "Time,Ale\n2026-03-08 00:00,20\n", 1, "--column"},
        {"a unit the values contradict",
         "Time,Beer (C)\n2026-03-08 00:00,68\n2026-03-08 01:00,68\n", 1, "--unit"},
    };
    for (const Case& each : cases) {
        program.write("u.csv", each.text);
        const Outcome outcome = program.run({"import", "log.holdband", "u.csv"});
        EXPECT_EQ(outcome.status, each.status) << each.what << ": " << outcome.out << outcome.err;
        ASSERT_STRNE(each.says, "") << each.what;
        EXPECT_TRUE(holds(outcome.err, each.says)) << each.what << ": " << outcome.err;
        EXPECT_EQ(program.read("log.holdband"), before) << each.what;
    }
}

TEST(UglyCsv, BadValuesAreRejectedWithTheirLinesAndTheRestIsStored)
{
    const WorkedProgram program;
    program.write("u.csv", "Time,Beer\n"
                           "2026-03-08 00:00,20.0\n"
                           "2026-03-08 01:00,nan\n" // a missing value, no reject
                           "2026-03-08 02:00,inf\n"
                           "2026-03-08 03:00,1e400\n"
                           "2026-03-08 04:00,-127\n"
                           "2026-03-08 05:00,999\n"
                           "2026-03-08 06:00,85\n"
                           "1970-01-01 00:00,20.0\n"
                           "2026-03-08 08:00,warm\n"
                           "2026-03-08 09:00\n"
                           "2026-03-08 10:00,20.5\n");
    const Outcome outcome = program.run({"import", "log.holdband", "u.csv"});
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_TRUE(holds(outcome.out, "2 readings new")) << outcome.out;
    for (const char* line : {"line 4", "line 5", "line 6", "line 7", "line 8", "line 9", "line 10"})
        EXPECT_TRUE(holds(outcome.out, line)) << line << "\n" << outcome.out;
}

TEST(UglyCsv, AcceptsWhatIsOddButReadable)
{
    const std::pair<const char*, std::string> cases[] = {
        {"byte-order mark", "\xEF\xBB\xBFTime,Beer\n2026-03-08 00:00,20\n"},
        {"UTF-16 with its mark", utf16("Time,Beer\n2026-03-08 00:00,20\n", true)},
        {"UTF-16 without", utf16("Time,Beer\n2026-03-08 00:00,20\n", false)},
        {"CR only", "Time,Beer\r2026-03-08 00:00,20\r"},
        {"ragged rows", "Time,Beer\n2026-03-08 00:00,20,,,\n2026-03-08 01:00\n"},
        {"rows backwards", "Time,Beer\n2026-03-08 00:00,20\n2026-03-07 20:00,20\n"},
        {"U+2212 minus", "Time,Beer\n2026-03-08 00:00,\xE2\x88\x92"
                         "1.5\n"},
        {"year 24", "Time,Beer\n03/31/24 00:00,20\n"},
        {"a half-written last line", "Time,Beer\n2026-03-08 00:00,20\n2026-03-08 01"},
        {"the same instant with two values",
         "Time,Beer\n2026-03-08 00:00,20\n2026-03-08 00:00,21\n"},
    };
    for (const auto& [what, text] : cases) {
        const WorkedProgram program;
        program.write("u.csv", text);
        const Outcome outcome = program.run({"import", "log.holdband", "u.csv"});
        EXPECT_EQ(outcome.status, 0) << what << ": " << outcome.err;
        EXPECT_FALSE(holds(outcome.out, "; 0 readings new")) << what << ": " << outcome.out;
        EXPECT_EQ(program.run({"check", "log.holdband"}).status, 0) << what;
    }
}

TEST(UglyCsv, AsksWhereItCanBeReadInTwoWays)
{
    const WorkedProgram program;
    const std::string before = program.read("log.holdband");
    const Case cases[] = {
        {"two date orders", "Time,Beer\n03/04/26 00:00,20\n", 1, "--date-order"},
        {"1,234", "Time;Meter\n2026-03-08 00:00;1,234\n", 1, "--decimal"},
        {"mixed decimal signs", "Time;Beer\n2026-03-08 00:00;20,5\n2026-03-08 01:00;20.5\n", 1,
         "decimal signs"},
        {"half a pair", "Time,Name,Value\n2026-03-08 00:00,Beer,20\n", 1, "--column"},
        {"a register that falls", "Time,Meter\n2026-03-08 00:00,900\n2026-03-09 00:00,2\n", 1,
         "--event"},
    };
    for (const Case& each : cases) {
        program.write("u.csv", each.text);
        const Outcome outcome = program.run({"import", "log.holdband", "u.csv"});
        EXPECT_EQ(outcome.status, each.status) << each.what << ": " << outcome.out << outcome.err;
        ASSERT_STRNE(each.says, "") << each.what;
        EXPECT_TRUE(holds(outcome.err, each.says)) << each.what << ": " << outcome.err;
        EXPECT_EQ(program.read("log.holdband"), before) << each.what;
    }
    EXPECT_EQ(program.run({"import", "log.holdband", "u.csv", "--names", "Name"}).status, 2);
    EXPECT_EQ(program.run({"import", "log.holdband", "u.csv", "--decimal", "dot"}).status, 2);
}

TEST(UglyCsv, ClockChangesAreNamedByHour)
{
    const WorkedProgram program;
    const std::string before = program.read("log.holdband");
    program.write("doubled.csv", "Time,Beer\n2026-11-01 00:30,20\n2026-11-01 01:30,20\n"
                                 "2026-11-01 02:30,20\n");
    const Outcome doubled =
        program.run({"import", "log.holdband", "doubled.csv", "--zone", "America/Denver"});
    EXPECT_EQ(doubled.status, 1);
    EXPECT_TRUE(holds(doubled.err, "exists twice")) << doubled.err;
    EXPECT_TRUE(program.read("log.holdband") == before) << "the file changed";
    program.write("missing.csv", "Time,Beer\n2026-03-08 01:30,20\n2026-03-08 02:30,20\n");
    const Outcome missing =
        program.run({"import", "log.holdband", "missing.csv", "--zone", "America/Denver"});
    EXPECT_EQ(missing.status, 0) << missing.err;
    EXPECT_TRUE(holds(missing.out, "line 3") && holds(missing.out, "does not exist"))
        << missing.out;
}

// An address space of 400 MB is enough for the program and its libraries, but not for the cell. The
// address sanitizer needs terabytes.
#ifdef __SANITIZE_ADDRESS__
const std::string addressLimit;
#else
const std::string addressLimit = "ulimit -v 400000; ";
#endif

/// The largest resident set of all programs run and waited for, KiB.
long largestChildKib()
{
    rusage usage{};
    getrusage(RUSAGE_CHILDREN, &usage);
    return usage.ru_maxrss;
}

TEST(UglyCsv, HugeCellsAndRowsAreRefusedInBoundedMemory)
{
    const WorkedProgram program;
    const std::string before = program.read("log.holdband");
    // The memory that the program needs for a log of one row, including its sanitizers.
    program.write("small.csv", "Time,Beer\n2026-03-08 00:00,warm\n");
    EXPECT_EQ(program.run({"import", "log.holdband", "small.csv"}).status, 1);
    const long usual = largestChildKib();
    program.shell(
        "{ printf 'Time,Beer\\n2026-03-08 00:00,'; head -c 200000000 /dev/zero | tr '\\0' "
        "7; echo; } > cell.csv;"
        "{ printf 'Time'; yes ',Beer' | head -100000 | tr -d '\\n'; printf '\\n2026-03-08 "
        "00:00'; yes ',20' | head -100000 | tr -d '\\n'; echo; } > wide.csv");
    for (const char* file : {"cell.csv", "wide.csv"}) {
        const Outcome outcome = program.shell(addressLimit +
                                              "timeout 60 $HOLDBAND import "
                                              "log.holdband " +
                                              file);
        EXPECT_EQ(outcome.status, 1) << file << ": " << outcome.err;
        EXPECT_TRUE(holds(outcome.err, "line ")) << file << ": " << outcome.err;
        EXPECT_EQ(program.read("log.holdband"), before) << file;
    }
    EXPECT_LT(largestChildKib() - usual, 200'000'000 / 1024 / 2) << "half of the cell alone";
}

TEST(UglyCsv, AFileThatGrowsWhileItIsReadGivesOnlyCompleteReadings)
{
    const WorkedProgram program;
    const Outcome outcome = program.shell(
        "printf 'Time,Beer\\n' > grow.csv;"
        "(for i in $(seq 1 20000); do echo \"$((1780000000 + 60 * i)),20.5\"; done >> grow.csv) & "
        "sleep 0.02; for k in 1 2 3 4 5; do $HOLDBAND import log.holdband grow.csv; s=$?; "
        "[ $s -le 1 ] || exit $s; done; wait; $HOLDBAND import log.holdband grow.csv && "
        "$HOLDBAND import log.holdband grow.csv");
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_TRUE(holds(outcome.out, "20000 rows read; 0 readings new, 20000 already there, 0 "
                                   "conflicting, 0 rejected"))
        << outcome.out;
    EXPECT_EQ(program.run({"check", "log.holdband"}).status, 0);
}

TEST(UglyCsv, AFileThatExistsForTheRejectsStopsTheImportBeforeItStores)
{
    const WorkedProgram program;
    const std::string before = program.read("log.holdband");
    program.write("u.csv", "Time,Beer\n2026-03-08 00:00,20.0\n2026-03-08 01:00,warm\n");
    program.write("r.csv", "mine");
    program.write("r.csv.part", "mine too");
    const Outcome outcome = program.run({"import", "log.holdband", "u.csv", "--rejects", "r.csv"});
    EXPECT_EQ(outcome.status, 3) << outcome.out << outcome.err;
    EXPECT_TRUE(holds(outcome.err, "r.csv: ")) << outcome.err;
    EXPECT_TRUE(holds(outcome.err, "nothing was changed; choose another name.")) << outcome.err;
    EXPECT_TRUE(program.read("log.holdband") == before) << "the file changed";
    EXPECT_EQ(program.read("r.csv"), "mine");
    EXPECT_EQ(program.run({"import", "log.holdband", "u.csv", "--rejects", "new.csv"}).status, 0);
    EXPECT_EQ(program.read("r.csv.part"), "mine too");
}

TEST(UglyCsv, ALogOfWhichEveryRowIsRejectedIsAFailure)
{
    const WorkedProgram program;
    const std::string before = program.read("log.holdband");
    program.write("u.csv", "Time,Beer\n2026-03-08 00:00,-127\n2026-03-08 01:00,999\n");
    const Outcome outcome = program.run({"import", "log.holdband", "u.csv", "--rejects", "r.csv"});
    EXPECT_EQ(outcome.status, 1) << outcome.out;
    EXPECT_TRUE(holds(outcome.err, "every row was rejected")) << outcome.err;
    EXPECT_TRUE(holds(program.read("r.csv"), "-127"));
    EXPECT_TRUE(program.read("log.holdband") == before) << "the file changed";
}

/// No control characters except line ends, no C1 controls, no marks that change the text direction.
bool isTame(const std::string& text)
{
    for (const char c : text) {
        if ((static_cast<unsigned char>(c) < ' ' && c != '\n') || c == '\x7f')
            return false;
    }
    for (const char* mark : {"\u009b", "\u0085", "\u202e", "\u2066", "\u200f", "\u2028"})
        if (holds(text, mark))
            return false;
    return true;
}

TEST(UglyCsv, EscapeSequencesOfAFileAreShownAndNotExecuted)
{
    const WorkedProgram program;
    program.write("e\x1b[2J.csv", "Time,Beer,\x1b]0;title\a,\u202eabc\n"
                                  "2026-03-08 00:00,20.5,1,1\n"
                                  "2026-03-08 01:00,\x1b[31mred\u009b1m,1,1\n"
                                  "2026-03-08 02:00\x1b[0m,20.5,1,1\n");
    const Outcome outcome = program.run({"import", "log.holdband", "e\x1b[2J.csv"});
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_TRUE(isTame(outcome.out)) << outcome.out;
    EXPECT_TRUE(isTame(outcome.err)) << outcome.err;
    EXPECT_TRUE(holds(outcome.out, "e\\x1b[2J.csv: 3 rows read")) << outcome.out;
    EXPECT_TRUE(holds(outcome.err, "\"\\x1b]0;title\\x07\"")) << outcome.err;
    EXPECT_TRUE(holds(outcome.err, "\\u202eabc")) << outcome.err;
    program.write("l.csv", "Time,\"Beer\n  rejected, line 9\"\n2026-03-09 00:00,20.5\n");
    const Outcome lines = program.run(
        {"import", "log.holdband", "l.csv", "--column", "Beer=Beer\n  rejected, line 9"});
    EXPECT_FALSE(holds(lines.out, "\n  rejected")) << lines.out << lines.err;
    const Outcome binary = program.run({"import", "log.holdband", "no\x1b[1mfile\nholdband: ok"});
    EXPECT_EQ(binary.status, 3);
    EXPECT_TRUE(isTame(binary.err)) << binary.err;
    EXPECT_TRUE(holds(binary.err, "no\\x1b[1mfile\\nholdband: ok")) << binary.err;
}

TEST(UglyNames, AreEscapedInTextAndUnchangedInJson)
{
    const Program program;
    program.write("worked.csv", workedLog());
    std::string description = workedDescription();
    const std::string plain = "\"name\": \"Worked\"";
    description.replace(description.find(plain), plain.size(), "\"name\": \"W\\u009b31m\\u202e\"");
    program.write("worked.json", description);
    const Outcome loaded = program.run({"load", "log.holdband", "worked.json"});
    ASSERT_EQ(loaded.status, 0) << loaded.err;
    const std::string name = "W\u009b31m\u202e";
    const Outcome text = program.run({"batches", "log.holdband"});
    EXPECT_TRUE(isTame(text.out)) << text.out;
    EXPECT_TRUE(holds(text.out, "W\\u009b31m\\u202e")) << text.out;
    const Outcome json = program.run({"batches", "log.holdband", "--json"});
    EXPECT_TRUE(isTame(json.out)) << json.out;
    EXPECT_EQ(json.json().at(0).at("name"), name);
    const Outcome verdict = program.run({"verdict", "log.holdband", name, "--json"});
    EXPECT_EQ(verdict.json().at("batch"), name) << verdict.err;
    EXPECT_TRUE(isTame(program.run({"verdict", "log.holdband", name + "x"}).err));
}

TEST(UglyCalls, WithoutADisplayTheWindowReportsIt)
{
    if (!hasWindow)
        GTEST_SKIP() << "this build has no window";
    const WorkedProgram program;
    const Outcome outcome =
        program.shell("unset QT_QPA_PLATFORM; \"$HOLDBAND\" log.holdband; echo status $?");
    EXPECT_TRUE(holds(outcome.out, "status 2")) << outcome.out;
    EXPECT_TRUE(holds(outcome.err, "there is no display")) << outcome.err;
    EXPECT_FALSE(holds(outcome.err, "xcb")) << outcome.err;
}

TEST(UglyCalls, ANewLogbookNeedsAName)
{
    const Program program;
    const Outcome outcome = program.run({"new", ""});
    EXPECT_EQ(outcome.status, 2) << outcome.err;
    EXPECT_EQ(outcome.out, "");
    EXPECT_TRUE(holds(outcome.err, "no name")) << outcome.err;
}

TEST(UglyCsv, RejectedRowsGoIntoAFileAndALongLogToItsSensors)
{
    const WorkedProgram program;
    program.write("long.csv", "When,Who,What\n08|03|26 00h00,Beer,20\n08|03|26 01h00,Beer,warm\n"
                              "08|03|26 02h00,Cat,1\n");
    const Outcome outcome = program.run({"import", "log.holdband", "long.csv", "--time", "When",
                                         "--pattern", "dd|MM|yy HH'h'mm", "--names", "Who",
                                         "--values", "What", "--rejects", "left-out.csv"});
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_TRUE(holds(outcome.out, "1 reading new")) << outcome.out;
    EXPECT_TRUE(holds(outcome.err, "ignored: Cat")) << outcome.err;
    EXPECT_EQ(program.read("left-out.csv"),
              "line,column,text,reason\n3,Beer,warm,is not a number\n");
}

TEST(UglyFiles, AreNamedForWhatTheyAre)
{
    const WorkedProgram program;
    const std::string before = program.read("log.holdband");
    ASSERT_EQ(mkfifo(program.path("pipe").c_str(), 0600), 0);
    program.shell("ln -s nowhere dangling; mkdir folder; ln -s worked.csv link.csv");
    for (const char* file : {"missing.csv", "folder", "pipe", "/dev/zero", "dangling"}) {
        EXPECT_EQ(program.run({"import", "log.holdband", file}).status, 3) << file;
        EXPECT_EQ(program.run({"load", "new.holdband", file}).status, 3) << file;
        EXPECT_EQ(program.run({"verdict", file, "Worked"}).status, 3) << file;
    }
    EXPECT_EQ(
        program.run({"import", "log.holdband", "link.csv", "--column", "Beer=Beer (C)"}).status, 0);
    EXPECT_TRUE(program.read("log.holdband") == before) << "the file changed";
}

TEST(UglyLogbooks, AreRefusedForWhatTheyAre)
{
    const WorkedProgram program;
    program.write("empty.holdband", "");
    program.write("text.holdband", "this is a shopping list, long enough to be read as a header\n");
    program.shell(
        "head -c 3000 log.holdband > short.holdband;"
        "sqlite3 other.holdband 'CREATE TABLE t (x)';"
        "cp log.holdband newer.holdband; sqlite3 newer.holdband 'PRAGMA user_version=1000';"
        "cp log.holdband hostile.holdband;"
        "sqlite3 hostile.holdband 'CREATE TRIGGER t AFTER INSERT ON acts BEGIN DELETE FROM "
        "readings; END';"
        "cp log.holdband changed.holdband; sqlite3 changed.holdband 'DROP VIEW v_energy; "
        "CREATE VIEW v_energy AS SELECT 1 AS kwh';"
        "cp log.holdband view.holdband; sqlite3 view.holdband 'CREATE VIEW v_mine AS SELECT 1'");
    const std::pair<const char*, const char*> cases[] = {
        {"empty.holdband", "empty"},           {"text.holdband", "no logbook"},
        {"short.holdband", "damaged"},         {"other.holdband", "another program"},
        {"newer.holdband", "newer"},           {"hostile.holdband", "trigger t"},
        {"changed.holdband", "view v_energy"}, {"view.holdband", "view v_mine"}};
    for (const auto& [file, says] : cases) {
        for (const auto& call : {std::vector<std::string>{"verdict", file, "Worked"},
                                 {"check", file},
                                 {"meter", file, "Meter", "7"},
                                 {"export", file, "out"}}) {
            const Outcome outcome = program.run(call);
            EXPECT_EQ(outcome.status, 3) << file << " " << call.front() << outcome.err;
            EXPECT_TRUE(holds(outcome.err, says)) << file << ": " << outcome.err;
        }
    }
}

// One changed value, as from a flipped bit: no command computes a figure from it.
TEST(UglyLogbooks, AChangedValueGivesNoFigure)
{
    const WorkedProgram program;
    for (const char* change :
         {"UPDATE meter_readings SET kwh = kwh + 64 WHERE id = (SELECT max(id) FROM "
          "meter_readings)",
          // The last value gets one more digit.
          "UPDATE reading_blocks SET logged = substr(logged, 1, length(logged) - 2) || 9 || "
          "char(93, 93)"}) {
        program.shell(std::string("cp log.holdband bit.holdband; sqlite3 bit.holdband '") + change +
                      "'");
        for (const auto& call : {std::vector<std::string>{"verdict", "bit.holdband", "Worked"},
                                 {"energy", "bit.holdband", "Worked", "--json"},
                                 {"batches", "bit.holdband"}}) {
            const Outcome outcome = program.run(call);
            EXPECT_EQ(outcome.status, 3) << change << ": " << call.front() << outcome.out;
            EXPECT_EQ(outcome.out, "") << change << ": " << call.front();
            EXPECT_TRUE(holds(outcome.err, "no longer fit their")) << outcome.err;
        }
        const Outcome exported =
            program.shell("rm -rf out; $HOLDBAND export bit.holdband out 2>&1");
        EXPECT_EQ(exported.status, 0) << "what can be read is saved";
        EXPECT_TRUE(holds(exported.out, "Damaged: ")) << exported.out;
    }
}

TEST(UglyDisk, AFullOneChangesNothing)
{
    const WorkedProgram program;
    const std::string before = program.read("log.holdband");
    std::string rows = "Time,Beer\n";
    for (int minute = 0; minute < 100'000; ++minute)
        rows += std::to_string(1'773'000'000 + minute * 60) + ",20." + std::to_string(minute % 10) +
                "\n";
    program.write("big.csv", rows);
    // The size limit simulates a full disk: the write fails in the middle.
    const Outcome import =
        program.shell("ulimit -f 300; $HOLDBAND import log.holdband big.csv 2>&1");
    EXPECT_EQ(import.status, 3) << import.out;
    EXPECT_EQ(program.run({"check", "log.holdband"}).status, 0);
    EXPECT_TRUE(program.read("log.holdband") == before) << "the file changed";
    const Outcome backup =
        program.shell("ulimit -f 20; $HOLDBAND backup log.holdband copy.holdband 2>&1");
    EXPECT_EQ(backup.status, 3) << backup.out;
    EXPECT_EQ(program.shell("ls copy*").out, "");
    EXPECT_EQ(program.shell("$HOLDBAND --help > /dev/full").status, 3);
}

} // namespace
} // namespace holdband::test
