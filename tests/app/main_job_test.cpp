// The main task on the command line: from a hand-written description and a CSV log to verdict,
// energy and comparison.
#include "tests/app/program.h"

namespace holdband::test {
namespace {

// The figures come from the worked example at the end of the method in DEVELOPERS.md.
TEST(MainJob, TheWorkedExampleGivesItsVerdict)
{
    const WorkedProgram program;
    const Outcome outcome = program.run({"verdict", "log.holdband", "Worked", "--json"});
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    const auto json = outcome.json();
    EXPECT_EQ(json["verdict"], "left");
    EXPECT_TRUE(json["sure"].is_null());
    EXPECT_DOUBLE_EQ(json["hold_h"], 10.0);
    EXPECT_DOUBLE_EQ(json["covered_h"], 8.0);
    EXPECT_DOUBLE_EQ(json["coverage"], 0.8);
    EXPECT_DOUBLE_EQ(json["inside_h"], 5.0);
    EXPECT_DOUBLE_EQ(json["above_h"], 2.0);
    EXPECT_DOUBLE_EQ(json["below_h"], 1.0);
    const auto& stage = json["stages"][0];
    EXPECT_EQ(stage["arrived"], "2026-03-07T00:00:00.000Z");
    EXPECT_EQ(stage["arrival_seen"], false);
    EXPECT_DOUBLE_EQ(stage["mean_dev_c"], 0.21875);
    EXPECT_DOUBLE_EQ(stage["min_c"], 18.5);
    EXPECT_DOUBLE_EQ(stage["max_c"], 22.0);
    EXPECT_TRUE(stage["overshoot_c"].is_null());
    ASSERT_EQ(stage["excursions"].size(), 2u);
    const auto& first = stage["excursions"][0];
    EXPECT_EQ(first["start"], "2026-03-07T01:30:00.000Z");
    EXPECT_EQ(first["end"], "2026-03-07T03:30:00.000Z");
    EXPECT_EQ(first["side"], "above");
    EXPECT_DOUBLE_EQ(first["peak_c"], 1.0);
    EXPECT_DOUBLE_EQ(first["area_ch"], 1.125);
    EXPECT_EQ(first["cut"], "");
}

TEST(MainJob, TheWorkedExampleGivesItsEnergy)
{
    const WorkedProgram program;
    const Outcome outcome = program.run({"energy", "log.holdband", "Worked", "--json"});
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    const auto json = outcome.json();
    EXPECT_NEAR(json["kwh"], 0.90, 1e-12);
    EXPECT_NEAR(json["kwh_low"], 0.79, 1e-12);
    EXPECT_NEAR(json["kwh_high"], 1.41, 1e-12);
    EXPECT_DOUBLE_EQ(json["metered_h"], 10.0);
    EXPECT_EQ(json["partly_metered"], false);
    EXPECT_NEAR(json["mean_w"], 90.0, 1e-9);
    EXPECT_TRUE(json["cost"].is_null()) << "no price is known";
    EXPECT_TRUE(json["cooling_lift_ch"].is_null()) << "there is no ambient sensor";
    ASSERT_EQ(json["days"].size(), 1u);
    EXPECT_EQ(json["days"][0]["day"], "2026-03-07");
    EXPECT_DOUBLE_EQ(json["days"][0]["hours"], 10.0);
}

TEST(MainJob, TextsAreForPeople)
{
    const WorkedProgram program;
    const Outcome outcome = program.run({"verdict", "log.holdband", "Worked"});
    EXPECT_NE(outcome.out.find("Left the band twice: 3 h of 8 h held (37.5 %), worst 1 °C past the "
                               "edge."),
              std::string::npos)
        << outcome.out;
    EXPECT_NE(outcome.out.find("the beer sensor's accuracy is not on record"), std::string::npos);
    EXPECT_EQ(outcome.err, "");
}

TEST(MainJob, TheSampleLoadsAndComparesInBothWays)
{
    const Program program;
    const std::string sample = HOLDBAND_SAMPLE_DIR "/spring-trials.json";
    ASSERT_EQ(program.run({"load", "s.holdband", sample}).status, 0);
    const Outcome batches = program.run({"batches", "s.holdband", "--json"});
    ASSERT_EQ(batches.json().size(), 12u);
    for (const auto& sides : {std::pair("Ale 2", "Ale 3"), std::pair("Loop", "Cabinet")}) {
        const Outcome compared =
            program.run({"compare", "s.holdband", sides.first, sides.second, "--json"});
        ASSERT_EQ(compared.status, 0) << compared.err;
        EXPECT_EQ(compared.json()["measures"].size(), 17u);
        EXPECT_EQ(compared.json()["a"], sides.first);
    }
}

/// Name → verdict and certainty, as described in sample-data/README.md.
TEST(MainJob, TheSampleHasTheResultsOfItsScenario)
{
    const Program program;
    ASSERT_EQ(program.run({"load", "s.holdband", HOLDBAND_SAMPLE_DIR "/spring-trials.json"}).status,
              0);
    struct Expected {
        const char* batch;
        const char* verdict;
        bool sure;
    };
    const Expected story[] = {
        {"Lager 1", "stayed", true}, {"Ale 1", "stayed", false}, {"Saison 1", "stayed", true},
        {"Lager 2", "left", true},   {"Ale 2", "stayed", true},  {"Ale 3", "missed", true},
        {"Ale 4", "stayed", true},   {"Ale 5", "left", true},    {"Lager 3", "stayed", true},
        {"Ale 6", "left", true},     {"Ale 7", "stayed", false}, {"Ale 8", "stayed", true}};
    for (const Expected& expected : story) {
        const auto json = program.run({"verdict", "s.holdband", expected.batch, "--json"}).json();
        EXPECT_EQ(json["verdict"], expected.verdict) << expected.batch;
        EXPECT_EQ(json["sure"], expected.sure) << expected.batch;
    }
}

TEST(MainJob, LoadAndExportAreInverse)
{
    const Program program;
    ASSERT_EQ(program.run({"load", "s.holdband", HOLDBAND_SAMPLE_DIR "/spring-trials.json"}).status,
              0);
    ASSERT_EQ(program.run({"export", "s.holdband", "first"}).status, 0);
    ASSERT_EQ(program.run({"load", "t.holdband", "first/logbook.json"}).status, 0);
    ASSERT_EQ(program.run({"export", "t.holdband", "second"}).status, 0);
    EXPECT_EQ(program.shell("diff -r first second").out, "");
    for (const char* command : {"verdict", "energy"})
        EXPECT_EQ(program.run({command, "s.holdband", "Ale 2", "--json"}).out,
                  program.run({command, "t.holdband", "Ale 2", "--json"}).out);
}

TEST(MainJob, CorrectionsSurviveAnExport)
{
    const Program program;
    ASSERT_EQ(program.run({"load", "s.holdband", HOLDBAND_SAMPLE_DIR "/spring-trials.json"}).status,
              0);
    ASSERT_EQ(program.run({"export", "s.holdband", "out"}).status, 0);
    const auto json = nlohmann::json::parse(program.read("out/logbook.json"));
    int corrected = 0;
    for (const auto& reading : json["meter_readings"])
        corrected += reading.contains("was") ? 1 : 0;
    EXPECT_EQ(corrected, 1);
    EXPECT_GT(json["journal"].size(), 0u);
    EXPECT_EQ(json["exclusions"].size(), 1u);
    EXPECT_EQ(json["files"][0]["origin"]["file"], "loop.csv");
}

} // namespace
} // namespace holdband::test
