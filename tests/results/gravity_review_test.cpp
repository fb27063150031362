// Gravities measured in a batch: listed with their attenuation, and used in place of a final
// gravity that was not given.
#include "core/results/run/explain.h"
#include "tests/results/described_logbook.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

std::string describedGravities(const std::string& gravities, const std::string& readings)
{
    return R"json({"holdband":1,"setups":[{"name":"S"}],"sensors":[{"name":"Beer","reads":"beer"}],
        "batches":[{"name":"B","setup":"S","pitched":"2026-03-01 00:00","ended":"2026-03-09 00:00",
        "beer_sensor":"Beer","tolerance_c":1,)json" +
           gravities + R"json("schedule":[{"stage":"Hold","target_c":20}]}],
        "hand_readings":[)json" +
           readings + "]}";
}

results::RunReview reviewed(const DescribedLogbook& files, const std::string& description)
{
    const auto logbook = files.load(description, "2026-03-10T00:00:00Z");
    auto run = results::reviewRun(*logbook, "B");
    EXPECT_TRUE(run) << run.error().sentence();
    return run ? std::move(*run) : results::RunReview{};
}

const char* twoReadings =
    R"json({"batch":"B","at":"2026-03-04 08:00","value":1.030,"unit":"SG"},
       {"batch":"B","at":"2026-03-08 08:00","value":1.010,"unit":"SG"})json";

TEST(MeasuredGravities, AreListedWithTheirAttenuation)
{
    const DescribedLogbook files;
    const auto run =
        reviewed(files, describedGravities(R"("original_gravity":1.050,"final_gravity":1.012,)",
                                           twoReadings));
    const auto& points = run.figures.gravities;
    ASSERT_EQ(points.size(), 2u);
    EXPECT_DOUBLE_EQ(points[0].gravity.specific(), 1.030);
    EXPECT_NEAR(*points[0].apparentAttenuation, 40.0, 1e-9);
    EXPECT_NEAR(*points[1].apparentAttenuation, 80.0, 1e-9);
    ASSERT_TRUE(run.figures.fermentation);
    EXPECT_DOUBLE_EQ(run.figures.fermentation->final.specific(), 1.012) << "the given one counts";
    EXPECT_FALSE(run.figures.fermentation->measuredAt);
}

TEST(MeasuredGravities, TheLastReplacesAFinalGravityThatIsNotSet)
{
    const DescribedLogbook files;
    const auto run =
        reviewed(files, describedGravities(R"("original_gravity":1.050,)", twoReadings));
    ASSERT_TRUE(run.figures.fermentation);
    EXPECT_NEAR(run.figures.fermentation->apparentAttenuation, 80.0, 1e-9);
    EXPECT_EQ(run.figures.fermentation->measuredAt, *parseRfc3339("2026-03-08T08:00:00Z"));
    EXPECT_EQ(
        results::explain(run, results::Figure::apparentAttenuation),
        "Fall in gravity over the original gravity's excess over water: (1.050 − 1.010) ÷ (1.050 − "
        "1) = 80.0 %. No final gravity is given: the last measured one, of 8 Mar 08:00, is used.");
}

TEST(MeasuredGravities, AWarmSampleIsCorrectedToTheHydrometersTemperature)
{
    // Water has 998.2065 kg/m³ at 20 °C and 997.0470 at 25 °C (IAPWS): 1.010 × 1.001163 = 1.01117.
    const DescribedLogbook files;
    const auto run = reviewed(
        files,
        describedGravities(R"("original_gravity":1.050,)",
                           R"json({"batch":"B","at":"2026-03-08 08:00","value":1.010,"unit":"SG",
                            "sample_c":25})json"));
    ASSERT_EQ(run.figures.gravities.size(), 1u);
    EXPECT_NEAR(run.figures.gravities[0].gravity.specific(), 1.01117, 1e-5);
    EXPECT_DOUBLE_EQ(run.figures.gravities[0].reading.gravity.specific(), 1.010);
    EXPECT_THAT(results::explain(run, results::Figure::alcoholSimple),
                ::testing::EndsWith("is used, corrected from a sample at 25.0 °C to a "
                                    "hydrometer's 20.0 °C."));
}

TEST(MeasuredGravities, DegreesPlatoAreAcceptedToo)
{
    // 12 °P are 1.04837 (NBS Circular 440, Table 114).
    const DescribedLogbook files;
    const auto run = reviewed(
        files, describedGravities(
                   "", R"json({"batch":"B","at":"2026-03-02 08:00","value":12,"unit":"°P"})json"));
    ASSERT_EQ(run.figures.gravities.size(), 1u);
    EXPECT_NEAR(run.figures.gravities[0].gravity.specific(), 1.04837, 2e-5);
    EXPECT_FALSE(run.figures.gravities[0].apparentAttenuation) << "no original gravity is given";
    EXPECT_FALSE(run.figures.fermentation);
    EXPECT_EQ(results::explain(run, results::Figure::alcoholBalling),
              "This needs the original gravity, which is not on record.");
}

TEST(MeasuredGravities, WithoutAnyThereIsNoFermentation)
{
    const DescribedLogbook files;
    const auto run = reviewed(files, describedGravities(R"("original_gravity":1.050,)", ""));
    EXPECT_FALSE(run.figures.fermentation);
    EXPECT_EQ(results::explain(run, results::Figure::apparentAttenuation),
              "This needs the final gravity: none is given, and none was measured.");
}

} // namespace
} // namespace holdband::test
