// `compare` on the command line, on the sample's own files: its output, its JSON, its refusals.
#include "tests/app/program.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using ::testing::HasSubstr;

class CompareCommand : public ::testing::Test {
protected:
    static void SetUpTestSuite()
    {
        s_program = std::make_unique<Program>();
        const std::string sample = HOLDBAND_SAMPLE_DIR "/spring-trials.json";
        const Outcome loaded = s_program->run({"load", "s.holdband", sample});
        ASSERT_EQ(loaded.status, 0) << loaded.err;
    }
    static void TearDownTestSuite() { s_program.reset(); }

    static Outcome compare(std::vector<std::string> arguments)
    {
        arguments.insert(arguments.begin(), {"compare", "s.holdband"});
        return s_program->run(arguments);
    }

    static std::unique_ptr<Program> s_program;
};

std::unique_ptr<Program> CompareCommand::s_program;

TEST_F(CompareCommand, BeginsWithTheSentenceOfTheWindow)
{
    for (const std::vector<std::string>& sides :
         {std::vector<std::string>{"Loop", "Cabinet"}, {"Ale 1", "Ale 2"}}) {
        std::vector<std::string> asJson = sides;
        asJson.push_back("--json");
        const auto headline = compare(asJson).json()["headline"].get<std::string>();
        ASSERT_THAT(headline, ::testing::AnyOf(HasSubstr(sides.front()), HasSubstr(sides.back())));
        const Outcome text = compare(sides);
        EXPECT_THAT(text.out, ::testing::StartsWith("A is " + sides.front() + ", B is " +
                                                    sides.back() + ".\n" + headline + "\n"));
        const std::size_t first = text.out.find(headline);
        EXPECT_EQ(text.out.find(headline, first + 1), std::string::npos) << "only once";
    }
}

TEST_F(CompareCommand, PrintsAllOfTwoSetups)
{
    const Outcome outcome = compare({"Loop", "Cabinet"});
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    for (const char* part : {"A is Loop, B is Cabinet.", "How fair is this?", "each batch",
                             "Without a batch Loop used", "In the same weather (the room",
                             "of the mean power (CV(RMSE))", "Money\n", "Judgement\n", " leads "})
        EXPECT_THAT(outcome.out, HasSubstr(part));
}

TEST_F(CompareCommand, TheFixedKeysAreUnchangedAndFurtherOnesFollow)
{
    const auto json = compare({"Loop", "Cabinet", "--json"}).json();
    const std::vector<std::string> fixed{"a", "b", "measures", "notes"};
    std::vector<std::string> keys;
    for (const auto& [key, value] : json["measures"][0].items())
        keys.push_back(key);
    EXPECT_THAT(keys, ::testing::UnorderedElementsAre(
                          "measure", "unit", "better", "a", "a_low", "a_high", "b", "b_low",
                          "b_high", "ratio_a_to_b", "ratio_low", "ratio_high", "ahead"));
    for (const std::string& key : fixed)
        EXPECT_TRUE(json.contains(key)) << key;
    EXPECT_EQ(json["measures"].size(), 17u);
    const auto& energy = json["each_batch"][0]["a"];
    ASSERT_EQ(energy["batches"].size(), 6u);
    double sum = 0.0;
    for (const auto& batch : energy["batches"])
        sum += batch["value"].get<double>();
    EXPECT_NEAR(energy["mean"].get<double>(), sum / 6.0, 1e-9);
    EXPECT_EQ(energy["mean"], json["measures"][0]["a"]);
    EXPECT_EQ(json["idle"].size(), 2u);
    const auto& model = json["same_weather"]["b"];
    EXPECT_EQ(model["n"].get<std::size_t>(), model["points"].size());
    EXPECT_GT(model["n"].get<int>(), 6);
    EXPECT_LT(model["w_per_c_low"].get<double>(), model["w_per_c"].get<double>());
    EXPECT_LT(model["mean_w_high"].get<double>(), model["one_more_w_high"].get<double>());
    EXPECT_EQ(model["interval_from"], "batches");
    EXPECT_EQ(model["groups"], 6);
    // Two of Loop's six batches ran at once and are one group (method, section 8.2).
    EXPECT_EQ(json["same_weather"]["a"]["interval_from"], "batches");
    EXPECT_EQ(json["same_weather"]["a"]["groups"], 5);
    EXPECT_EQ(json["same_weather"]["ahead"], "b");
    EXPECT_TRUE(json["money"]["scenarios"][0].contains("crossing"));
    EXPECT_EQ(json["judgement"]["lead"], "b");
}

TEST_F(CompareCommand, EachBatchsFigureIsThatOfItsOwnEnergy)
{
    const auto json = compare({"Loop", "Cabinet", "--json"}).json();
    for (const auto& batch : json["each_batch"][0]["b"]["batches"]) {
        const auto own =
            s_program->run({"energy", "s.holdband", batch["batch"].get<std::string>(), "--json"});
        EXPECT_NEAR(own.json()["kwh"].get<double>(), batch["value"].get<double>(), 1e-9);
    }
}

TEST_F(CompareCommand, UsesTheTickedBatches)
{
    const auto json =
        compare({"Loop", "Cabinet", "--only", "Ale 1", "--only", "Ale 2", "--json"}).json();
    EXPECT_EQ(json["batches_a"], (nlohmann::json{"Ale 1", "Ale 2"}));
    EXPECT_EQ(json["batches_b"].size(), 6u);
    const Outcome refused = compare({"Loop", "Cabinet", "--only", "Ale 9"});
    EXPECT_EQ(refused.status, 1);
    EXPECT_THAT(refused.err, HasSubstr("there is no batch \"Ale 9\"; did you mean "));
}

TEST_F(CompareCommand, CountsFromAStage)
{
    const auto json = compare({"Ale 1", "Ale 2", "--from", "Crash", "--json"}).json();
    EXPECT_EQ(json["alignment"]["from"], "Crash");
    EXPECT_EQ(json["alignment"]["common_stages"],
              (nlohmann::json{"Primary", "Rise", "Rest", "Crash"}));
    EXPECT_THAT(json["energy_sentence"].get<std::string>(), HasSubstr("from the start of Crash"));
    const Outcome refused = compare({"Ale 1", "Saison 1", "--from", "Crash"});
    EXPECT_EQ(refused.status, 1);
    EXPECT_THAT(refused.err, HasSubstr("there is no stage \"Crash\" in both \"Ale 1\" and \"Saison "
                                       "1\"; in both there are Primary"));
}

TEST_F(CompareCommand, WrongPairsAndCallsHaveTheirStatus)
{
    EXPECT_EQ(compare({"Loop", "Loop"}).status, 1);
    EXPECT_THAT(compare({"Loop", "Loop"}).err, HasSubstr("can't be compared with itself"));
    EXPECT_EQ(compare({"Loop", "Ale 1"}).status, 1);
    EXPECT_EQ(compare({"Loop", "Cabinet", "--from", "Crash"}).status, 1);
    EXPECT_EQ(compare({"Ale 1", "Ale 2", "--only", "Ale 3"}).status, 1);
    EXPECT_EQ(compare({"Ale 1"}).status, 2);
    EXPECT_EQ(compare({"Ale 1", "Ale 2", "--form", "Crash"}).status, 2);
}

TEST_F(CompareCommand, ReportsThatTwoBatchesShareAMeter)
{
    const Outcome outcome = compare({"Ale 1", "Saison 1"});
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_THAT(outcome.out, HasSubstr("both ran at once on one meter for 8.9 days"));
}

} // namespace
} // namespace holdband::test
