// The energy of the running batches below the rounds: the same figures as in their runs.
#include "core/results/rounds/running_energy.h"
#include "tests/results/described_logbook.h"

namespace holdband::test {
namespace {

/// Two setups with a meter each, S in use by two batches, of which one has ended; T has one running
/// batch. V has no meter.
const std::string twoSetups = R"({"holdband":1,"zone":"UTC",
    "setups":[{"name":"S"},{"name":"T"},{"name":"V"}],
    "sensors":[{"name":"Beer","reads":"beer"},{"name":"Other","reads":"beer"},
               {"name":"Third","reads":"beer"}],
    "meters":[{"name":"M","setup":"S","resolution_kwh":0.01},
              {"name":"N","setup":"T","resolution_kwh":0.01}],
    "batches":[
        {"name":"Late","setup":"S","pitched":"2026-03-02 07:00","beer_sensor":"Beer",
         "tolerance_c":1,"schedule":[{"stage":"Hold","target_c":20}]},
        {"name":"Early","setup":"T","pitched":"2026-03-01 07:00","beer_sensor":"Other",
         "tolerance_c":1,"schedule":[{"stage":"Hold","target_c":20}]},
        {"name":"Unmetered","setup":"V","pitched":"2026-03-01 07:00","beer_sensor":"Third",
         "tolerance_c":1,"schedule":[{"stage":"Hold","target_c":20}]},
        {"name":"Done","setup":"S","pitched":"2026-03-01 07:00","ended":"2026-03-02 07:00",
         "beer_sensor":"Beer","tolerance_c":1,"schedule":[{"stage":"Hold","target_c":20}]}],
    "meter_readings":[
        {"meter":"M","at":"2026-03-01 07:00","kwh":1.00},
        {"meter":"M","at":"2026-03-02 07:00","kwh":3.00},
        {"meter":"M","at":"2026-03-02 19:00","kwh":3.50},
        {"meter":"M","at":"2026-03-03 07:00","kwh":4.25},
        {"meter":"N","at":"2026-03-01 07:00","kwh":10.0},
        {"meter":"N","at":"2026-03-02 07:00","kwh":10.4}]})";

TEST(RunningEnergy, IsCountedFromEachBatchsPitching)
{
    const DescribedLogbook folder;
    const auto logbook = folder.load(twoSetups, "2026-03-03T08:00:00Z");
    const auto running = results::reviewRunningEnergy(*logbook);
    ASSERT_TRUE(running) << running.error().sentence();
    EXPECT_EQ(rfc3339Utc(running->now), "2026-03-03T08:00:00.000Z");
    ASSERT_EQ(running->batches.size(), 2u) << "neither the ended one nor one without a meter";
    const results::RunningBatch& early = running->batches[0];
    EXPECT_EQ(early.batch, "Early");
    EXPECT_EQ(early.setupIndex, 1);
    ASSERT_EQ(early.curve.size(), 2u);
    EXPECT_NEAR(early.curve[1].kwh, 0.4, 1e-9);
    const results::RunningBatch& late = running->batches[1];
    EXPECT_EQ(late.batch, "Late");
    EXPECT_EQ(late.setupIndex, 0);
    ASSERT_EQ(late.curve.size(), 3u);
    EXPECT_EQ(rfc3339Utc(late.curve[0].at), "2026-03-02T07:00:00.000Z");
    EXPECT_EQ(late.curve[0].kwh, 0.0);
    EXPECT_NEAR(late.curve[1].kwh, 0.5, 1e-9);
    EXPECT_NEAR(late.curve[2].kwh, 1.25, 1e-9);
}

TEST(RunningEnergy, IsEmptyWhereNothingRuns)
{
    const DescribedLogbook folder;
    const auto logbook = folder.load(R"({"holdband":1,"zone":"UTC","setups":[{"name":"S"}],
        "meters":[{"name":"M","setup":"S"}]})",
                                     "2026-03-03T08:00:00Z");
    const auto running = results::reviewRunningEnergy(*logbook);
    ASSERT_TRUE(running) << running.error().sentence();
    EXPECT_TRUE(running->batches.empty());
}

} // namespace
} // namespace holdband::test
