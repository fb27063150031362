// All batches of a setup: one line each and the sums.
#include "core/results/overview/season.h"
#include "tests/results/described_logbook.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using results::Season;
using ::testing::HasSubstr;

/// Two batches one after the other, each two days at 20 °C except six hours at 24 °C in the second,
/// and a third without any data. 2.4 kWh and 4.8 kWh at 0.25 per kWh.
const char* const description = R"json({
  "holdband": 1, "currency": "EUR", "price_per_kwh": 0.25,
  "setups": [ { "name": "Loop", "kind": "coolant loop",
                "parts": [ { "item": "pump", "quantity": 2, "price": 21.5 } ] },
              { "name": "Shelf" } ],
  "sensors": [ { "name": "S", "reads": "beer", "accuracy_c": 0.1 },
               { "name": "T", "reads": "beer" } ],
  "meters": [ { "name": "M", "setup": "Loop", "resolution_kwh": 0.01 } ],
  "batches": [
    { "name": "Second", "setup": "Loop", "pitched": "2026-03-03 00:00", "ended": "2026-03-05 00:00",
      "beer_sensor": "S", "tolerance_c": 1, "schedule": [ { "stage": "Hold", "target_c": 20 } ] },
    { "name": "First", "setup": "Loop", "pitched": "2026-03-01 00:00", "ended": "2026-03-03 00:00",
      "beer_sensor": "S", "tolerance_c": 1, "schedule": [ { "stage": "Hold", "target_c": 20 } ] },
    { "name": "Blind", "setup": "Loop", "pitched": "2026-03-06 00:00", "ended": "2026-03-07 00:00",
      "beer_sensor": "T", "tolerance_c": 1, "schedule": [ { "stage": "Hold", "target_c": 20 } ] } ],
  "files": [ { "file": "log.csv", "columns": { "S": "S (C)" } } ],
  "meter_readings": [ { "meter": "M", "at": "2026-03-01 00:00", "kwh": 0.00 },
                      { "meter": "M", "at": "2026-03-03 00:00", "kwh": 2.40 },
                      { "meter": "M", "at": "2026-03-05 00:00", "kwh": 7.20 } ] })json";

std::string seasonLog()
{
    std::string text = "Time,S (C)\n";
    for (int half = 0; half <= 192; ++half) {
        const bool warm = half >= 120 && half < 132;
        text += std::to_string(1'772'323'200LL + 1800LL * half) + (warm ? ",24\n" : ",20\n");
    }
    return text;
}

class SeasonTest : public ::testing::Test {
protected:
    void SetUp() override
    {
        files.write("log.csv", seasonLog());
        logbook = files.load(description, "2026-03-10T00:00:00Z");
        ASSERT_TRUE(logbook);
    }

    Season season(const std::string& setup) const
    {
        const auto read = results::reviewSeason(*logbook, setup);
        EXPECT_TRUE(read) << (read ? "" : read.error().sentence());
        return read.value_or(Season{});
    }

    DescribedLogbook files;
    std::unique_ptr<store::LogbookFile> logbook;
};

} // namespace

TEST_F(SeasonTest, ListsTheBatchesInOrderOfPitching)
{
    const Season loop = season("Loop");
    ASSERT_EQ(loop.batches.size(), 3u);
    EXPECT_EQ(loop.batches[0].batch, "First");
    EXPECT_EQ(loop.batches[0].verdict, analysis::Verdict::stayed);
    EXPECT_EQ(loop.batches[1].batch, "Second");
    EXPECT_EQ(loop.batches[1].verdict, analysis::Verdict::left);
    EXPECT_EQ(loop.batches[1].excursions, 1u);
    EXPECT_NEAR(loop.batches[1].worstPeak, 3.0, 1e-9);
    EXPECT_EQ(loop.batches[2].verdict, analysis::Verdict::notEnoughData);
    EXPECT_FALSE(loop.batches[2].energy.any());
}

TEST_F(SeasonTest, AddsUpTheMeteredEnergy)
{
    const Season loop = season("Loop");
    EXPECT_EQ(loop.metered, 2u);
    EXPECT_NEAR(loop.energy.kwh, 7.2, 1e-9);
    // Each ± 0.005 at both ends, the bounds of the two added.
    EXPECT_NEAR(loop.energy.low, 7.2 - 0.02, 1e-9);
    EXPECT_NEAR(loop.energy.high, 7.2 + 0.02, 1e-9);
    ASSERT_TRUE(loop.cost);
    EXPECT_NEAR(loop.cost->amount, 1.8, 1e-9);
    EXPECT_EQ(loop.priced, 2u);
    EXPECT_EQ(loop.parts, 43.0);
}

TEST_F(SeasonTest, HasASentence)
{
    EXPECT_EQ(season("Loop").sentence,
              "3 batches of Loop: 1 stayed in the band, 1 left it, 1 has not enough data. The 2 "
              "that were metered used 7.20 kWh (7.18 – 7.22) for 1.80 EUR.");
    EXPECT_EQ(season("Shelf").sentence, "Shelf has no batch yet.");
}

TEST_F(SeasonTest, AnUnknownSetupListsSuggestions)
{
    const auto none = results::reviewSeason(*logbook, "Lopo");
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, ProblemKind::data);
    EXPECT_THAT(none.error().sentence(), HasSubstr("Loop"));
}

} // namespace holdband::test
