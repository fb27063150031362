// The findings about the data of one run.
#include "core/results/overview/batch_list.h"
#include "core/results/run/run_review.h"
#include "tests/results/described_logbook.h"

namespace holdband::test {
namespace {

std::string describedRun(const std::string& setup, const std::string& equipment,
                         const std::string& more)
{
    return R"({"holdband":1,"setups":[{"name":"S")" + setup +
           R"(}],"sensors":[{"name":"Beer","reads":"beer"},{"name":"Watts","reads":"power_w","setup":"S"}],
        "meters":[)" +
           equipment + R"(],"batches":[{"name":"B","setup":"S","pitched":"2026-03-01 00:00",
        "ended":"2026-03-02 00:00","beer_sensor":"Beer","tolerance_c":1,
        "schedule":[{"stage":"Hold","target_c":20}]}])" +
           more + "}";
}

std::vector<std::string> findings(const DescribedLogbook& files, const std::string& description)
{
    const auto logbook = files.load(description, "2026-03-10T00:00:00Z");
    const auto run = results::reviewRun(*logbook, "B");
    EXPECT_TRUE(run) << run.error().sentence();
    return run ? run->findings : std::vector<std::string>{};
}

TEST(RunFindings, APowerLogIsNoRegisterThatWasReset)
{
    const DescribedLogbook files;
    files.write("w.csv", "Time,Watts (W)\n2026-03-01 00:00,80\n2026-03-01 01:00,80\n"
                         "2026-03-01 02:00,80\n2026-03-01 03:00,80\n");
    const auto logbook = files.load(
        describedRun("", "",
                     R"json(,"files":[{"file":"w.csv","columns":{"Watts":"Watts (W)"}}])json"),
        "2026-03-10T00:00:00Z");
    const auto run = results::reviewRun(*logbook, "B");
    ASSERT_TRUE(run);
    ASSERT_TRUE(run->figures.energy.whole.any());
    EXPECT_FALSE(run->figures.energy.whole.highKnown()) << "a power log has no bounds";
    EXPECT_EQ(run->findings, std::vector<std::string>{});
}

TEST(RunFindings, AResetWithoutARatedPowerHasNoUpperBound)
{
    const DescribedLogbook files;
    const std::string readings =
        R"(,"meter_readings":[{"meter":"M","at":"2026-03-01 00:00","kwh":5},
        {"meter":"M","at":"2026-03-01 12:00","kwh":1,"event":"reset"},
        {"meter":"M","at":"2026-03-02 00:00","kwh":2}])";
    EXPECT_EQ(findings(files, describedRun("", R"({"name":"M","setup":"S"})", readings)),
              std::vector<std::string>{"The register restarted at 0 during the batch and no rated "
                                       "power is known: what it used has no upper bound."});
}

TEST(RunFindings, MoreThanTheRatedPowerAllowsIsReported)
{
    const DescribedLogbook files;
    // 100 W for 12 h are 1.2 kWh.
    const std::string readings =
        R"(,"meter_readings":[{"meter":"M","at":"2026-03-01 00:00","kwh":5.0},
        {"meter":"M","at":"2026-03-01 12:00","kwh":8.0},{"meter":"M","at":"2026-03-02 00:00","kwh":9.0}])";
    EXPECT_EQ(findings(files, describedRun(R"(,"rated_power_w":100)", R"({"name":"M","setup":"S"})",
                                           readings)),
              std::vector<std::string>{"The meter M counted more than the setup's rated power "
                                       "allows between 1 pair of readings: the rated power was "
                                       "ignored there."});
}

TEST(OpenRun, EnergyContinuesToTheLastRoundWhileTheJudgingWaitsForTheLog)
{
    const DescribedLogbook files;
    const auto logbook = files.load(
        R"({"holdband":1,"setups":[{"name":"S"}],"sensors":[{"name":"Beer","reads":"beer"}],
        "meters":[{"name":"M","setup":"S"}],
        "batches":[{"name":"B","setup":"S","pitched":"2026-03-01 00:00","beer_sensor":"Beer",
            "tolerance_c":1,"schedule":[{"stage":"Hold","target_c":20}]}],
        "meter_readings":[{"meter":"M","at":"2026-03-01 00:00","kwh":5.0},
            {"meter":"M","at":"2026-03-02 00:00","kwh":9.0}]})",
        "2026-03-10T00:00:00Z");
    const auto run = results::reviewRun(*logbook, "B");
    ASSERT_TRUE(run) << run.error().sentence();
    EXPECT_DOUBLE_EQ(run->figures.energy.whole.kwh, 4.0);
    EXPECT_EQ(run->figures.judged.asPlanned.verdict, analysis::Verdict::notEnoughData);
    EXPECT_TRUE(run->findings.empty());
}

TEST(RunFindings, AMeterWithoutReadingsIsReported)
{
    const DescribedLogbook files;
    EXPECT_EQ(
        findings(files, describedRun("", R"({"name":"M","setup":"S"})", "")),
        (std::vector<std::string>{
            "No meter of this setup was read twice during the batch, so nothing was metered."}));
}

TEST(Oddities, MoreBatchesThanVesselsAreNamed)
{
    const DescribedLogbook files;
    const auto batch = [](const char* name, const char* pitched) {
        return std::string(R"({"name":")") + name + R"(","setup":"S","pitched":")" + pitched +
               R"(","ended":"2026-03-05 00:00","beer_sensor":"Beer","tolerance_c":1,
            "schedule":[{"stage":"Hold","target_c":20}]})";
    };
    const auto logbook = files.load(
        R"({"holdband":1,"setups":[{"name":"S"}],"sensors":[{"name":"Beer","reads":"beer"}],"batches":[)" +
            batch("A", "2026-03-01 00:00") + "," + batch("B", "2026-03-02 00:00") + "]}",
        "2026-03-10T00:00:00Z");
    const auto odd = results::findOddities(*logbook);
    ASSERT_TRUE(odd);
    EXPECT_NE(std::find(odd->begin(), odd->end(),
                        "When \"B\" was pitched, 2 batches ran on S, which has 1 vessel."),
              odd->end());
}

TEST(Oddities, TargetsThatAreProbablyMistypedAreNamed)
{
    const DescribedLogbook files;
    const auto logbook = files.load(
        R"({"holdband":1,"units":"us","setups":[{"name":"S"}],"sensors":[{"name":"Beer","reads":"beer"}],
        "batches":[{"name":"B","setup":"S","pitched":"2026-03-01 00:00","beer_sensor":"Beer",
          "tolerance_f":3,"schedule":[{"stage":"Warm","target_f":110,"hours":2},
          {"stage":"Hot","target_f":111,"hours":2},{"stage":"Edge","target_c":0,"hours":2},
          {"stage":"Ice","target_f":31}]}]})",
        "2026-03-10T00:00:00Z");
    const auto odd = results::findOddities(*logbook);
    ASSERT_TRUE(odd);
    std::vector<std::string> targets;
    for (const std::string& sentence : *odd) {
        if (sentence.find("target of") != std::string::npos)
            targets.push_back(sentence);
    }
    EXPECT_EQ(targets, (std::vector<std::string>{
                           "B: the target of Hot, 111.0 °F, is hotter than beer ferments.",
                           "B: the target of Ice, 31.0 °F, is below freezing."}));
}

} // namespace
} // namespace holdband::test
