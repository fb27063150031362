// The overview of the logbook: rows for simultaneous batches, and ticks for rounds read and missed.
#include "core/results/overview/lanes.h"
#include "core/results/run/run_review.h"
#include "tests/results/described_logbook.h"

namespace holdband::test {
namespace {

using results::Lane;
using results::LanesReview;

std::string batch(const std::string& name, const std::string& pitched, const std::string& ended)
{
    return R"({"name":")" + name +
           R"(","setup":"S","beer_sensor":"Beer","tolerance_c":1,"pitched":")" + pitched + "\"" +
           (ended.empty() ? "" : ",\"ended\":\"" + ended + "\"") +
           R"(,"schedule":[{"stage":"Hold","target_c":20}]})";
}

std::string describedLanes(const std::string& batches, const std::string& readings,
                           const std::string& meters = R"({"name":"M","setup":"S"})")
{
    return R"({"holdband":1,"setups":[{"name":"S","vessels":2},{"name":"Idle"}],
        "sensors":[{"name":"Beer","reads":"beer"}],"meters":[)" +
           meters + R"(],"batches":[)" + batches + R"(],"meter_readings":[)" + readings + "]}";
}

LanesReview lanesOf(const std::string& description, const std::string& now)
{
    const DescribedLogbook logbook;
    const auto opened = logbook.load(description, now);
    const auto lanes = results::reviewLanes(*opened);
    EXPECT_TRUE(lanes) << lanes.error().sentence();
    return lanes.value_or(LanesReview{});
}

TEST(Lanes, ABarHasTheVerdictOfItsRunAfterAChangedPlan)
{
    const DescribedLogbook files;
    files.write("log.csv", "time,Beer [C]\n2026-03-01 00:00,20\n2026-03-02 00:00,20\n"
                           "2026-03-02 00:10,10\n2026-03-03 00:00,10\n");
    const auto logbook = files.load(
        R"({"holdband":1,"setups":[{"name":"S"}],"sensors":[{"name":"Beer","reads":"beer"}],
        "batches":[{"name":"B","setup":"S","pitched":"2026-03-01 00:00","gap_limit_min":2880,
            "ended":"2026-03-03 00:00","beer_sensor":"Beer","tolerance_c":1,
            "schedule":[{"stage":"Hold","target_c":20}],
            "plan_changes":[{"from":"2026-03-02 00:00","why":"colder",
                "schedule":[{"stage":"Hold","target_c":20,"hours":24},
                            {"stage":"Cold","target_c":10}]}]}],
        "files":[{"file":"log.csv","time":"time","columns":{"Beer":"Beer [C]"}}]})",
        "2026-03-10T12:00:00Z");
    const auto lanes = results::reviewLanes(*logbook);
    const auto run = results::reviewRun(*logbook, "B");
    ASSERT_TRUE(lanes) << lanes.error().sentence();
    ASSERT_TRUE(run) << run.error().sentence();
    EXPECT_EQ(lanes->lanes[0].bars[0].headline, run->words.headline);
    EXPECT_EQ(lanes->lanes[0].bars[0].verdict, analysis::Verdict::stayed) << run->words.headline;
}

TEST(Lanes, BatchesAtTheSameTimeHaveSeparateRows)
{
    const LanesReview review =
        lanesOf(describedLanes(batch("A", "2026-03-01 00:00", "2026-03-05 00:00") + "," +
                                   batch("B", "2026-03-03 00:00", "2026-03-07 00:00") + "," +
                                   batch("C", "2026-03-05 00:00", "2026-03-06 00:00") + "," +
                                   batch("D", "2026-03-08 00:00", ""),
                               ""),
                "2026-03-10T12:00:00Z");
    ASSERT_EQ(review.lanes.size(), 2u);
    const Lane& lane = review.lanes[0];
    ASSERT_EQ(lane.bars.size(), 4u);
    EXPECT_EQ(lane.rows, 2);
    EXPECT_EQ(lane.bars[0].row, 0);
    EXPECT_EQ(lane.bars[1].row, 1);
    EXPECT_EQ(lane.bars[2].row, 0) << "C begins when A ends";
    EXPECT_EQ(lane.bars[3].row, 0);
    EXPECT_TRUE(lane.bars[3].open);
    EXPECT_EQ(lane.bars[3].span.end, review.now) << "an open batch ends now";
    EXPECT_EQ(review.shown, (Span{lane.bars[0].span.start, review.now}));
    EXPECT_EQ(review.lanes[1].rows, 1);
    EXPECT_TRUE(review.lanes[1].bars.empty());
    EXPECT_TRUE(review.rounds.empty());
}

std::vector<std::string> ticks(const LanesReview& review)
{
    std::vector<std::string> all;
    for (const results::RoundTick& tick : review.rounds)
        all.push_back(rfc3339Utc(tick.at).substr(8, 8) + (tick.missed ? " missed" : ""));
    return all;
}

TEST(Lanes, RoundsThatWereDueAndNotReadAreMissed)
{
    const std::string readings = R"({"meter":"M","at":"2026-03-01 07:30","kwh":1},
        {"meter":"M","at":"2026-03-02 18:30","kwh":2})";
    EXPECT_EQ(
        ticks(lanesOf(describedLanes(batch("A", "2026-03-01 06:00", "2026-03-03 12:00"), readings),
                      "2026-03-06T12:00:00Z")),
        (std::vector<std::string>{"01T07:30", "01T18:00 missed", "02T07:00 missed", "02T18:30",
                                  "03T07:00 missed"}));
}

TEST(Lanes, NoRoundIsMissedWhereNoMeterWasInService)
{
    const std::string meter = R"({"name":"M","setup":"S","to":"2026-03-02 00:00"})";
    const std::string readings = R"({"meter":"M","at":"2026-03-01 07:30","kwh":1})";
    EXPECT_EQ(ticks(lanesOf(describedLanes(batch("A", "2026-03-01 06:00", "2026-03-03 12:00"),
                                           readings, meter),
                            "2026-03-06T12:00:00Z")),
              (std::vector<std::string>{"01T07:30", "01T18:00 missed"}));
}

} // namespace
} // namespace holdband::test
