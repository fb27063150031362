// When the beer has arrived and when an excursion is over: sections 2 and 3 of the method. Figures
// by hand, target 20 °C ± 1 K. Times are minutes.
#include "tests/analysis/builders.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

constexpr double msPerMinute = 60'000.0;

Series minutes(std::initializer_list<std::pair<double, double>> points)
{
    Series result;
    for (const auto& [minute, value] : points) {
        result.at.push_back(hour(minute / 60.0));
        result.value.push_back(value);
    }
    return result;
}

struct Times {
    double dwell = 60.0;
    double back = 15.0;
};

Batch batchWith(Schedule schedule, std::optional<double> endedMinute, Times times)
{
    Batch batch = batchOf(std::move(schedule),
                          endedMinute ? std::optional(*endedMinute / 60.0) : std::nullopt);
    batch.bandTimes = {toMilliseconds(Hours{times.dwell / 60.0}),
                       toMilliseconds(Hours{times.back / 60.0})};
    return batch;
}

Judging judging(const Batch& batch, Series beer, double gapMinutes = 240)
{
    return judged(batch, std::move(beer), gapMinutes).asPlanned;
}

BandJudgement stageOf(const Batch& batch, Series beer, double gapMinutes = 240)
{
    return judging(batch, std::move(beer), gapMinutes).stages.at(0);
}

// ---- Arrival

/// Falls 1 K in 20 min: 21 °C is passed at 40 min. Out again at 70 min (30 min inside), back at 90.
Series slowArrival()
{
    return minutes({{0, 23}, {60, 20}, {80, 22}, {100, 20}, {300, 20}});
}

TEST(Dwell, TheBeerArrivesWhereItStaysForTheDwell)
{
    const BandJudgement stage = stageOf(batchWith({hold("Hold", 20)}, 300, {}), slowArrival());
    ASSERT_TRUE(stage.arrival);
    EXPECT_NEAR(stage.arrival->ms, 90 * msPerMinute, 1e-6);
    EXPECT_NEAR(stage.arrival->deviation, 1.0, 1e-12);
    EXPECT_TRUE(stage.arrival->seen);
    EXPECT_EQ(stage.visits, 1u);
    // The visit is settling like the rest, and what came after it is no excursion.
    EXPECT_NEAR(stage.settlingMs, 90 * msPerMinute, 1e-6);
    EXPECT_NEAR(stage.insideMs, 210 * msPerMinute, 1e-6);
    EXPECT_TRUE(stage.excursions.empty());
}

TEST(Dwell, AStayOfJustTheDwellIsAnArrival)
{
    // 30 min inside from 40 to 70 min.
    EXPECT_NEAR(stageOf(batchWith({hold("Hold", 20)}, 300, {30, 15}), slowArrival()).arrival->ms,
                40 * msPerMinute, 1e-6);
    EXPECT_NEAR(stageOf(batchWith({hold("Hold", 20)}, 300, {31, 15}), slowArrival()).arrival->ms,
                90 * msPerMinute, 1e-6);
}

TEST(Dwell, WithoutADwellTheFirstEntryCounts)
{
    const BandJudgement stage = stageOf(batchWith({hold("Hold", 20)}, 300, {0, 15}), slowArrival());
    EXPECT_NEAR(stage.arrival->ms, 40 * msPerMinute, 1e-6);
    EXPECT_EQ(stage.visits, 0u);
    ASSERT_EQ(stage.excursions.size(), 1u);
    EXPECT_NEAR(stage.excursions[0].outsideMs, 20 * msPerMinute, 1e-6);
    // Also where it only touches the edge: 23 → 21 → 22 at 60 min.
    EXPECT_NEAR(stageOf(batchWith({hold("Hold", 20)}, 300, {0, 15}),
                        minutes({{0, 23}, {60, 21}, {120, 22}, {240, 20}, {300, 20}}))
                    .arrival->ms,
                60 * msPerMinute, 1e-6);
}

TEST(Dwell, ASensorsNoiseMakesNoExcursionsOfASlowArrival)
{
    // Falls by 0.3 K in 30 min with a noise of ± 0.2 K: 21.25, 20.95, 21.1, 20.8, 20.95, 20.65 …
    const Series noisy = minutes({{0, 21.25},
                                  {30, 20.95},
                                  {60, 21.1},
                                  {90, 20.8},
                                  {120, 20.95},
                                  {150, 20.65},
                                  {180, 20.8},
                                  {300, 20}});
    // In at 25 min (21.25 → 20.95 passes 21 after 5/6 of the piece), out at 40, in at 70.
    const Judging now = judging(batchWith({hold("Hold", 20)}, 300, {}), noisy);
    EXPECT_NEAR(now.stages[0].arrival->ms, 70 * msPerMinute, 1e-6);
    EXPECT_EQ(now.verdict, Verdict::stayed);
    const Judging before = judging(batchWith({hold("Hold", 20)}, 300, {0, 0}), noisy);
    EXPECT_NEAR(before.stages[0].arrival->ms, 25 * msPerMinute, 1e-6);
    EXPECT_EQ(before.verdict, Verdict::left);
    EXPECT_NEAR(before.totals.aboveMs, 30 * msPerMinute, 1e-6);
}

TEST(Dwell, TheLookAheadEndsAtTheStagesEnd)
{
    // 30 min inside until the stage ends at 120: all that was seen is inside.
    const BandJudgement inside = stageOf(batchWith({hold("Hold", 20)}, 120, {}), slowArrival());
    EXPECT_NEAR(inside.arrival->ms, 90 * msPerMinute, 1e-6);
    EXPECT_FALSE(inside.missed);
    // The stage ends at 80 min, outside: a visit of 30 min is no arrival.
    const BandJudgement outside = stageOf(batchWith({hold("Hold", 20)}, 80, {}), slowArrival());
    EXPECT_FALSE(outside.arrival);
    EXPECT_TRUE(outside.missed);
    EXPECT_EQ(outside.visits, 1u);
    EXPECT_NEAR(outside.settlingMs, 80 * msPerMinute, 1e-6);
}

TEST(Dwell, TheLookAheadEndsAtTheLastReading)
{
    const Series beer = minutes({{0, 23}, {60, 20}, {80, 22}, {100, 20}, {110, 20}});
    const BandJudgement open = stageOf(batchWith({hold("Hold", 20)}, std::nullopt, {}), beer);
    EXPECT_NEAR(open.arrival->ms, 90 * msPerMinute, 1e-6);
}

TEST(Dwell, TheLookAheadEndsAtAGap)
{
    // Inside from 40 min to the gap at 60 min; after it outside: it had arrived.
    const BandJudgement inside = stageOf(
        batchWith({hold("Hold", 20)}, 300, {}),
        minutes({{0, 23}, {60, 20}, {180, 22}, {190, 22}, {210, 20}, {270, 20}, {300, 20}}), 60);
    EXPECT_NEAR(inside.arrival->ms, 40 * msPerMinute, 1e-6);
    ASSERT_EQ(inside.excursions.size(), 1u);
    EXPECT_NEAR(inside.excursions[0].startMs, 180 * msPerMinute, 1e-6);
    // Inside from 40 to 70 min, and outside at the gap at 80: no arrival before it. Behind it the
    // beer is inside at once, and stays: an arrival that nobody saw.
    const BandJudgement outside =
        stageOf(batchWith({hold("Hold", 20)}, 300, {}),
                minutes({{0, 23}, {60, 20}, {80, 22}, {180, 20}, {240, 20}, {300, 20}}), 60);
    EXPECT_NEAR(outside.arrival->ms, 180 * msPerMinute, 1e-6);
    EXPECT_FALSE(outside.arrival->seen);
    EXPECT_NEAR(outside.settlingMs, 80 * msPerMinute, 1e-6);
    EXPECT_NEAR(outside.holdMs, 220 * msPerMinute, 1e-6);
}

TEST(Dwell, IsNotAskedOfABeerThatStartsInside)
{
    // Inside for 20 min at the start, then out: the stage never settles.
    const BandJudgement stage = stageOf(batchWith({hold("Hold", 20)}, 300, {}),
                                        minutes({{0, 20}, {40, 22}, {80, 20}, {300, 20}}));
    EXPECT_EQ(stage.arrival, (Arrival{0.0, 0.0, false}));
    EXPECT_FALSE(stage.settles);
    EXPECT_EQ(stage.excursions.size(), 1u);
}

TEST(Dwell, SettlingLastsAtMostTheAllowedHours)
{
    Stage stage = hold("Hold", 20);
    stage.settleAllowed = Hours{1};
    // Allowed until 60 min, in the visit from 40 to 70: then out 70–90, result.
    const BandJudgement result = stageOf(batchWith({stage}, 300, {}), slowArrival());
    EXPECT_NEAR(result.settlingMs, 60 * msPerMinute, 1e-6);
    EXPECT_NEAR(result.arrival->ms, 90 * msPerMinute, 1e-6);
    ASSERT_EQ(result.excursions.size(), 1u);
    EXPECT_NEAR(result.excursions[0].startMs, 70 * msPerMinute, 1e-6);
    EXPECT_NEAR(result.excursions[0].endMs, 90 * msPerMinute, 1e-6);
}

TEST(Dwell, OvershootAndRateAreTakenAtTheArrival)
{
    // 24 → 18 in 60 min passes the band from 30 to 50 min, back in from below at 70 min (19 °C),
    // 20.5 at 85 min. From +4 K to −1 K in 70 min; 1 K past the target at the arrival.
    const JudgedBatch batch = judged(batchWith({hold("Hold", 20)}, 300, {}),
                                     minutes({{0, 24}, {60, 18}, {85, 20.5}, {300, 20.5}}), 240);
    const BandJudgement& stage = batch.asPlanned.stages.at(0);
    EXPECT_NEAR(stage.arrival->ms, 70 * msPerMinute, 1e-6);
    const SettlingFigures figures = settlingFigures(batch.tracks.at(0), stage);
    EXPECT_NEAR(*figures.ratePerMs * 70 * msPerMinute, 5.0, 1e-9);
    EXPECT_NEAR(*figures.overshoot, 1.0, 1e-9);
}

// ---- Excursions

/// Above 35–55 and 65–75 min, back inside for 10 min between. 1 K past the edge both times; areas
/// 2.5 + 10 + 2.5 and 2.5 + 2.5 K·min.
Series twiceAbove()
{
    return minutes(
        {{0, 20}, {30, 20}, {40, 22}, {50, 22}, {60, 20}, {70, 22}, {80, 20}, {200, 20}});
}

TEST(Return, AShorterOneIsPartOfTheExcursion)
{
    const BandJudgement stage = stageOf(batchWith({hold("Hold", 20)}, 200, {}), twiceAbove());
    ASSERT_EQ(stage.excursions.size(), 1u);
    const Excursion& excursion = stage.excursions[0];
    EXPECT_NEAR(excursion.startMs, 35 * msPerMinute, 1e-6);
    EXPECT_NEAR(excursion.endMs, 75 * msPerMinute, 1e-6) << "the last crossing back";
    EXPECT_NEAR(excursion.outsideMs, 30 * msPerMinute, 1e-6) << "the sum of its stretches";
    EXPECT_NEAR(excursion.peak, 1.0, 1e-12);
    EXPECT_NEAR(excursion.peakMs, 40 * msPerMinute, 1e-6) << "the first of equals";
    EXPECT_NEAR(excursion.areaMs / msPerMinute, 20.0, 1e-9);
    EXPECT_EQ(excursion.cut, Cut::cameBack);
    EXPECT_NEAR(stage.aboveMs, 30 * msPerMinute, 1e-6);
    EXPECT_NEAR(stage.insideMs, 170 * msPerMinute, 1e-6);
}

TEST(Return, OfJustItsLengthEndsAnExcursion)
{
    const auto count = [](double back) {
        return stageOf(batchWith({hold("Hold", 20)}, 200, {60, back}), twiceAbove())
            .excursions.size();
    };
    EXPECT_EQ(count(0), 2u);
    EXPECT_EQ(count(10), 2u);
    EXPECT_EQ(count(10.01), 1u);
}

TEST(Return, IgnoreShorterThanIsComparedWithTheTimeOutside)
{
    // 30 min outside within 40 min.
    Batch batch = batchWith({hold("Hold", 20)}, 200, {});
    batch.ignoreShorterThan = std::chrono::minutes{30};
    EXPECT_EQ(judging(batch, twiceAbove()).verdict, Verdict::left);
    batch.ignoreShorterThan = std::chrono::minutes{31};
    EXPECT_EQ(judging(batch, twiceAbove()).verdict, Verdict::stayed);
}

TEST(Return, TheOtherEdgeEndsAnExcursionAtOnce)
{
    // 22 → 18 in 10 min is inside for 5 min: above 5–12.5, below 17.5–22.5, above 27.5–35 min.
    const BandJudgement stage =
        stageOf(batchWith({hold("Hold", 20)}, 100, {}),
                minutes({{0, 20}, {10, 22}, {20, 18}, {30, 22}, {40, 20}, {100, 20}}));
    ASSERT_EQ(stage.excursions.size(), 3u);
    EXPECT_EQ(stage.excursions[1].side, Side::below);
    EXPECT_NEAR(stage.excursions[0].endMs, 12.5 * msPerMinute, 1e-6);
    EXPECT_NEAR(stage.excursions[2].startMs, 27.5 * msPerMinute, 1e-6);
    for (const Excursion& excursion : stage.excursions)
        EXPECT_EQ(excursion.cut, Cut::cameBack);
}

/// Above 5–15 min, then inside until `last`.
Series backUntil(double last)
{
    return minutes({{0, 20}, {10, 22}, {20, 20}, {last, 20}});
}

TEST(Return, ABeerThatIsInsideAtAGapHasComeBack)
{
    // Back at 15 min; the covered time ends at 29 or 30 min, 14 or 15 min later.
    const auto cut = [](double last, double ended) {
        return stageOf(batchWith({hold("Hold", 20)}, ended, {}), backUntil(last), 30)
            .excursions.at(0);
    };
    for (const double last : {29.0, 30.0}) {
        for (const double ended : {last, 100.0}) {
            EXPECT_EQ(cut(last, ended).cut, Cut::cameBack);
            EXPECT_NEAR(cut(last, ended).endMs, 15 * msPerMinute, 1e-6) << "the last crossing back";
        }
    }
}

TEST(Return, AGapSplitsAnExcursion)
{
    // Above 5–15 and 45–55 min with a gap from 20 to 40 min between.
    const BandJudgement stage =
        stageOf(batchWith({hold("Hold", 20)}, 100, {60, 60}),
                minutes({{0, 20}, {10, 22}, {20, 20}, {40, 20}, {50, 22}, {60, 20}, {70, 20}}), 15);
    EXPECT_EQ(stage.excursions.size(), 2u);
}

TEST(Return, TheNextStageBeginsItsOwnExcursion)
{
    // The stage ends at 60 min between the two stretches of twiceAbove(), the beer inside.
    const Judging batch =
        judging(batchWith({hold("One", 20, 1), hold("Two", 20)}, 200, {}), twiceAbove());
    ASSERT_EQ(batch.stages[0].excursions.size(), 1u);
    ASSERT_EQ(batch.stages[1].excursions.size(), 1u);
    EXPECT_EQ(batch.stages[0].excursions[0].cut, Cut::cameBack);
    EXPECT_NEAR(batch.stages[1].excursions[0].startMs, 5 * msPerMinute, 1e-6);
}

TEST(Return, OneWarmEveningIsOneExcursion)
{
    // Above and below the edge in turn, 7.5 min inside each time: four stretches, one excursion.
    Series beer = minutes({{0, 20.5}, {30, 20.5}});
    for (int i = 0; i < 8; ++i) {
        beer.at.push_back(hour((37.5 + 7.5 * i) / 60.0));
        beer.value.push_back(i % 2 == 0 ? 21.2 : 20.8);
    }
    beer.at.push_back(hour(3));
    beer.value.push_back(20.5);
    const Judging now = judging(batchWith({hold("Hold", 20)}, 180, {}), beer);
    EXPECT_EQ(now.totals.excursions, 1u);
    const Judging before = judging(batchWith({hold("Hold", 20)}, 180, {0, 0}), beer);
    EXPECT_EQ(before.totals.excursions, 4u);
    EXPECT_DOUBLE_EQ(now.totals.aboveMs, before.totals.aboveMs);
}

TEST(Return, TheCheckTablesHourIsTheSameWithAndWithoutIt)
{
    // The check table's row (derived): 68 ± 3 °F; 68, 70, 73, 70, 68 every 15 min; out 20 min, one
    // excursion.
    for (const double back : {0.0, 15.0}) {
        const BandJudgement stage = stageOf(
            batchWith({hold("Hold", 20)}, 60, {60, back}),
            minutes(
                {{0, 20}, {15, 20 + 2 / 3.0}, {30, 20 + 5 / 3.0}, {45, 20 + 2 / 3.0}, {60, 20}}));
        ASSERT_EQ(stage.excursions.size(), 1u);
        EXPECT_NEAR(stage.excursions[0].outsideMs, 20 * msPerMinute, 1e-3);
    }
}

} // namespace
} // namespace holdband::test
