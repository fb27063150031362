// What is told about an open batch: the beer arrived, is out of its band, its log is silent.
#include "core/results/run/batch_events.h"
#include "tests/analysis/builders.h"
#include "tests/results/arrival_logbook.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using results::BatchEvent;
using results::BatchEventKind;
using results::BatchState;
using results::batchStateOf;
using results::eventsOf;

/// An open batch at 20 ± 1 °C, read each hour.
BatchState holding(Series beer, std::chrono::minutes ignored = {}, double firstHours = 100.0)
{
    Batch batch = batchOf({hold("Primary", 20.0, firstHours), hold("Crash", 2.0)}, {});
    batch.ignoreShorterThan = ignored;
    batch.bandTimes = {std::chrono::hours{2}, {}};
    const analysis::RunInput input = runInput(batch, std::move(beer), 90.0);
    BatchState state = batchStateOf(input, analysis::judgeRun(input));
    state.sensor = "Beer";
    return state;
}

std::vector<BatchEventKind> kindsOf(const BatchState& state, double hours)
{
    std::vector<BatchEventKind> kinds;
    for (const BatchEvent& event : eventsOf(state, hour(hours)))
        kinds.push_back(event.kind);
    return kinds;
}

std::string sentenceOf(const BatchState& state, double hours)
{
    const auto events = eventsOf(state, hour(hours));
    return events.size() == 1 ? events.front().sentence : "";
}

} // namespace

TEST(BatchEvents, ABeerInItsBandIsNone)
{
    EXPECT_TRUE(eventsOf(holding(series({{0, 20}, {1, 20}, {2, 20.5}})), hour(2)).empty());
}

TEST(BatchEvents, ABeerOutOfItsBandIsToldOnceItIsOutForLongEnough)
{
    // Above 21 °C from 1:30, so for half an hour at the reading of 2:00.
    const Series half = series({{0, 20}, {1, 20}, {2, 22}});
    EXPECT_THAT(kindsOf(holding(half), 2), testing::ElementsAre(BatchEventKind::outOfBand));
    EXPECT_TRUE(kindsOf(holding(half, std::chrono::minutes{31}), 2).empty());
    EXPECT_THAT(kindsOf(holding(half, std::chrono::minutes{30}), 2),
                testing::ElementsAre(BatchEventKind::outOfBand));
    const BatchState longer =
        holding(series({{0, 20}, {1, 20}, {2, 22}, {3, 22}, {3.5, 22}}), std::chrono::minutes{31});
    EXPECT_EQ(sentenceOf(longer, 3.5), "The beer has been above its band for 2 h.");
    EXPECT_EQ(eventsOf(longer, hour(3.5)).front().since, hour(1.5)) << "the same one goes on";
    EXPECT_EQ(eventsOf(holding(half), hour(2)).front().since, hour(1.5));
    const BatchState below = holding(series({{0, 20}, {1, 20}, {2, 18}}));
    EXPECT_EQ(sentenceOf(below, 2), "The beer has been below its band for 30 min.");
}

TEST(BatchEvents, ABeerThatCameBackIsNone)
{
    EXPECT_TRUE(kindsOf(holding(series({{0, 20}, {1, 22}, {2, 20}, {3, 20}})), 3).empty());
}

TEST(BatchEvents, AnArrivalAtANewTargetIsToldAtTheFirstReadingInTheBand)
{
    // Turned down at 2:00; 3 °C, the edge of the band, is passed at 4:30.
    const auto crash = [](std::initializer_list<std::pair<double, double>> readings) {
        return holding(series(readings), {}, 2.0);
    };
    EXPECT_TRUE(kindsOf(crash({{0, 20}, {1, 20}, {2, 20}, {3, 10}, {4, 4}}), 4).empty());
    const BatchState cold = crash({{0, 20}, {1, 20}, {2, 20}, {3, 10}, {4, 4}, {5, 2}});
    const auto events = eventsOf(cold, hour(5));
    ASSERT_EQ(events.size(), 1u);
    EXPECT_EQ(events[0].kind, BatchEventKind::arrived);
    EXPECT_EQ(events[0].since, hour(2)) << "the turning down: one arrival for each";
    // hour(0) is 2026-02-25 06:13:20 UTC.
    EXPECT_EQ(events[0].sentence, "The beer has been in its band of 2 °C since 10:43.");
}

TEST(BatchEvents, TheFirstStageIsNoArrival)
{
    EXPECT_TRUE(kindsOf(holding(series({{0, 24}, {1, 22}, {2, 20}, {3, 20}})), 3).empty());
}

TEST(BatchEvents, ALogIsSilentAfterItsGapLimit)
{
    BatchState state = holding(series({{0, 20}, {1, 20}}));
    EXPECT_TRUE(kindsOf(state, 2.5).empty()) << "90 min are the limit";
    EXPECT_THAT(kindsOf(state, 2.6), testing::ElementsAre(BatchEventKind::silent));
    EXPECT_EQ(sentenceOf(state, 2.6), "No reading of Beer since 07:13.");
    EXPECT_EQ(sentenceOf(state, 30), "No reading of Beer since 25 Feb 07:13.");
    EXPECT_EQ(eventsOf(state, hour(2.6)).front().since, hour(1));
    state.readByHand = true;
    EXPECT_TRUE(kindsOf(state, 30).empty()) << "nobody reads by hand every hour";
}

TEST(BatchEvents, WhereTheClockIsADayBackTimesHaveTheirDate)
{
    const BatchState cold =
        holding(series({{0, 20}, {1, 20}, {2, 20}, {3, 10}, {4, 4}, {5, 2}}), {}, 2.0);
    EXPECT_EQ(sentenceOf(cold, -19), "The beer has been in its band of 2 °C since 25 Feb 10:43.");
    EXPECT_THAT(kindsOf(holding(series({{0, 20}, {1, 20}})), -23), testing::IsEmpty())
        << "its readings are ahead of the clock: the log is not silent";
}

TEST(BatchEvents, AJumpOfTheClockBetweenTwoLooksIsFound)
{
    using namespace std::chrono_literals;
    results::LookClock clock(1min);
    const Instant start = hour(0);
    EXPECT_TRUE(clock.ranEvenly(start)) << "the first look";
    EXPECT_TRUE(clock.ranEvenly(start + 1min));
    EXPECT_TRUE(clock.ranEvenly(start + 3min)) << "a busy computer";
    EXPECT_FALSE(clock.ranEvenly(start + 8h)) << "a suspend";
    EXPECT_TRUE(clock.ranEvenly(start + 8h + 1min));
    EXPECT_FALSE(clock.ranEvenly(start + 7h)) << "the clock was set back";
    EXPECT_TRUE(clock.ranEvenly(start + 7h + 1min));
}

TEST(BatchEvents, ABatchWithoutReadingsIsNone)
{
    EXPECT_TRUE(kindsOf(holding({}), 50).empty());
}

TEST(BatchEvents, AreReadOfEveryOpenBatch)
{
    const DescribedLogbook files;
    CrashedBatch ended{"Ended", "2026-03-01T12:00:00Z"};
    ended.open = false;
    const CrashedBatch open{"Open", "2026-03-08T12:00:00Z", 16.0};
    const auto logbook = loadCrashes(files, {ended, open}, R"("units":"us",)");
    const auto states = results::openBatchStates(*logbook);
    ASSERT_TRUE(states) << states.error().sentence();
    ASSERT_EQ(states->size(), 1u);
    EXPECT_EQ(states->front().batch, "Open");
    EXPECT_EQ(states->front().sensor, "Beer");
    EXPECT_EQ(states->front().gapLimit, std::chrono::minutes{45}) << "three times the interval";
    // 3 °C after ln(16)/0.2 = 13.86 h: 13:51 past 9 Mar 12:00.
    EXPECT_EQ(eventsOf(states->front(), open.lastAt()).front().sentence,
              "The beer has been in its band of 35.6 °F since 01:51.");
}

} // namespace holdband::test
