// The input of the same-weather model, its results, and when it gives a decision. Section 5 of the
// method. Figures by hand.
#include "core/analysis/same_weather.h"
#include "tests/analysis/builders.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

Span hours(double from, double to)
{
    return {hour(from), hour(to)};
}

/// A level beer and a room with one reading per hour, from hour 0 to `until`.
RunInput steadyRun(double until, double roomCelsius)
{
    Batch batch = batchOf({hold("Hold", 20.0)}, until);
    Series beer;
    Series room;
    for (int i = 0; i <= static_cast<int>(until); ++i) {
        beer.at.push_back(hour(i));
        beer.value.push_back(20.0);
        room.value.push_back(roomCelsius);
    }
    room.at = beer.at;
    RunInput input = runInput(batch, std::move(beer), 90);
    input.ambient = std::move(room);
    input.ambientGap = std::chrono::minutes{90};
    return input;
}

std::vector<QuietPair> quietOf(const RunInput& input, const std::vector<Span>& between,
                               double quietAfterHours = 72)
{
    return quietPairs(input, analyseRun(input).judged, between,
                      toMilliseconds(Hours{quietAfterHours}));
}

std::vector<Span> spansOf(const std::vector<QuietPair>& pairs)
{
    std::vector<Span> spans;
    for (const QuietPair& pair : pairs)
        spans.push_back(pair.span);
    return spans;
}

TEST(QuietPairs, BeginNoSoonerThanTheWaitAfterPitching)
{
    const std::vector<Span> between{hours(60, 72), hours(71.9, 84), hours(72, 84), hours(84, 96)};
    const RunInput input = steadyRun(100, 29.0);
    EXPECT_THAT(spansOf(quietOf(input, between)), ElementsAre(hours(72, 84), hours(84, 96)));
    EXPECT_THAT(spansOf(quietOf(input, between, 60)),
                ElementsAre(between[0], between[1], between[2], between[3]));
    EXPECT_NEAR(quietOf(input, between)[0].liftK, 9.0, 1e-9);
}

TEST(QuietPairs, AreWhollyInsideTheBatch)
{
    const std::vector<Span> between{hours(84, 96), hours(96, 108)};
    EXPECT_THAT(spansOf(quietOf(steadyRun(100, 29.0), between)), ElementsAre(hours(84, 96)));
}

TEST(QuietPairs, AreWhollyInHoldTime)
{
    // A crash at 100 h that arrives at 110 h (20 → 2 ± 1 falls below 3 after 17/18 of 10.588 h).
    RunInput input = steadyRun(140, 29.0);
    input.batch.schedule = {hold("Hold", 20.0, 100), hold("Crash", 2.0)};
    for (std::size_t i = 0; i < input.judging.beer.size(); ++i)
        input.judging.beer.value[i] = i <= 100   ? 20.0
                                      : i >= 110 ? 2.9
                                                 : 20.0 - 1.71 * (static_cast<double>(i) - 100.0);
    const std::vector<Span> between{hours(80, 92), hours(92, 104), hours(104, 116),
                                    hours(116, 128)};
    const auto pairs = quietOf(input, between);
    EXPECT_THAT(spansOf(pairs), ElementsAre(hours(80, 92), hours(116, 128)));
    EXPECT_NEAR(pairs.at(1).liftK, 26.1, 1e-9);
}

TEST(QuietPairs, MayContinueFromOneHoldToTheNext)
{
    RunInput input = steadyRun(120, 29.0);
    input.batch.schedule = {hold("Hold", 20.0, 90), hold("Goes on", 20.0)};
    EXPECT_THAT(spansOf(quietOf(input, {hours(84, 96)})), ElementsAre(hours(84, 96)));
}

TEST(QuietPairs, NeedAKnownLift)
{
    RunInput input = steadyRun(120, 29.0);
    input.ambient.breaks = {81, 91}; // 80–81 and 90–91 not covered
    // 12 h with 11 of them known are 91.7 %, 8 h with 7 known 87.5 %.
    EXPECT_THAT(spansOf(quietOf(input, {hours(72, 84), hours(86, 94), hours(100, 112)})),
                ElementsAre(hours(72, 84), hours(100, 112)));
    EXPECT_NEAR(quietOf(input, {hours(72, 84)})[0].liftK, 9.0, 1e-9) << "of the known time";
    input.ambient = {};
    EXPECT_THAT(quietOf(input, {hours(100, 112)}), IsEmpty());
}

TEST(QuietPairs, ColdRoomsHaveNoCoolingLift)
{
    EXPECT_EQ(quietOf(steadyRun(120, 12.0), {hours(100, 112)}).at(0).liftK, 0.0);
}

TEST(TimesBetweenReadings, AreThePlainPairs)
{
    const SetupEnergy setup = oneMeter({meterReading(0, 5.0), meterReading(12, 6.0),
                                        meterReading(24, 1.0, 2, MeterEvent::reset),
                                        meterReading(36, 2.0), meterReading(48, 1.5)});
    EXPECT_THAT(timesBetweenReadings(setup), ElementsAre(hours(0, 12), hours(24, 36)));
}

TEST(TimesBetweenReadings, OfTwoMetersAreThoseOfTheFirst)
{
    const SetupEnergy setup({meterSource("One", {meterReading(0, 0), meterReading(12, 1),
                                                 meterReading(24, 2), meterReading(36, 3)}),
                             meterSource("Two", {meterReading(0.1, 0), meterReading(12.1, 1),
                                                 meterReading(24.1, 2), meterReading(36.1, 3)})});
    // Before 0.1 h the second meter is not known.
    EXPECT_THAT(timesBetweenReadings(setup),
                ElementsAre(hours(0, 12), hours(12, 24), hours(24, 36)));
    const std::vector<SetupRun> alone{
        {"A", hours(0, 40), true, {{{hours(0, 12), 5}, {hours(12, 24), 6}, {hours(24, 36), 7}}}}};
    const auto pairs = weatherPairs(setup, timesBetweenReadings(setup), alone);
    ASSERT_EQ(pairs.size(), 2u);
    EXPECT_NEAR(pairs[0].watts, 2000.0 / 12.0, 1e-6);
}

TEST(TimesBetweenReadings, EndWithTheMetersService)
{
    EnergySource old =
        meterSource("Old", {meterReading(0, 0), meterReading(12, 1), meterReading(24, 2)});
    old.to = hour(12);
    EnergySource fresh = meterSource("New", {meterReading(12, 0), meterReading(24, 1)});
    fresh.from = hour(12);
    EXPECT_THAT(timesBetweenReadings(SetupEnergy({old, fresh})),
                ElementsAre(hours(0, 12), hours(12, 24)));
}

TEST(WeatherPairs, ShareThePowerAmongTheBatchesThatRan)
{
    const SetupEnergy setup =
        oneMeter({meterReading(0, 0), meterReading(12, 1.2), meterReading(24, 3.6)});
    const std::vector<Span> between{hours(0, 12), hours(12, 24)};
    const SetupRun a{"A", hours(-100, 24), true, {{{between[0], 4.0}, {between[1], 5.0}}}};
    SetupRun b{"B", hours(12, 60), false, {{{between[1], 9.0}}}};
    const auto pairs = weatherPairs(setup, between, {a, b});
    ASSERT_EQ(pairs.size(), 2u);
    EXPECT_NEAR(pairs[0].watts, 100.0, 1e-9);
    EXPECT_NEAR(pairs[1].watts, 100.0, 1e-9) << "200 W for two";
    EXPECT_NEAR(pairs[1].liftK, 7.0, 1e-9) << "the mean of both";
    EXPECT_THAT(pairs[1].of, ElementsAre("A", "B"));
    b.quiet = std::vector<QuietPair>{}; // still fermenting
    EXPECT_EQ(weatherPairs(setup, between, {a, b}).size(), 1u);
    b.quiet.reset(); // not examined
    EXPECT_EQ(weatherPairs(setup, between, {a, b}).size(), 1u);
}

TEST(WeatherPairs, AreOnlyThoseOfTheRequestedBatches)
{
    const SetupEnergy setup = oneMeter({meterReading(0, 0), meterReading(12, 1.2)});
    const SetupRun other{"Other", hours(0, 24), false, {{{hours(0, 12), 4.0}}}};
    EXPECT_THAT(weatherPairs(setup, {hours(0, 12)}, {other}), IsEmpty());
}

WeatherPair point(double from, double lift, double watts, double length = 12)
{
    return {hours(from, from + length), lift, watts, {"A"}};
}

/// 10 W plus 2 W per K, with steps of ± `off` W off the line, alternating between a number of
/// batches.
std::vector<WeatherPair> line(int count, double leastLift, double step, double off = 1.0,
                              int batches = 3)
{
    std::vector<WeatherPair> pairs;
    for (int i = 0; i < count; ++i) {
        const double lift = leastLift + step * i;
        pairs.push_back(point(12.0 * i, lift, 10.0 + 2.0 * lift + (i % 2 == 0 ? off : -off)));
        pairs.back().of = {"A" + std::to_string(i % batches)};
    }
    return pairs;
}

TEST(LiftModel, DecidesWithThreePairsOfEachOfThreeBatchesOverThreeKelvins)
{
    const LiftModel model = liftModel(line(9, 4.0, 0.375));
    EXPECT_TRUE(model.decides());
    EXPECT_DOUBLE_EQ(model.leastLift, 4.0);
    EXPECT_DOUBLE_EQ(model.mostLift, 7.0);
}

TEST(LiftModel, HasItsCautions)
{
    EXPECT_THAT(liftModel(line(5, 4.0, 1.0)).cautions,
                ElementsAre(ModelCaution::fewPairs, ModelCaution::fewGroups));
    EXPECT_THAT(liftModel(line(9, 4.0, 0.37)).cautions, ElementsAre(ModelCaution::narrowLift));
    EXPECT_THAT(liftModel(line(9, 4.0, 0.4, 30.0)).cautions, ElementsAre(ModelCaution::scattered));
    EXPECT_THAT(liftModel(line(8, 4.0, 1.0)).cautions, ElementsAre(ModelCaution::fewGroups))
        << "three batches, one of which has only two pairs (method, section 8.2)";
    EXPECT_THAT(liftModel(line(8, 4.0, 1.0, 1.0, 2)).cautions,
                ElementsAre(ModelCaution::fewBatches))
        << "it takes three (method, section 5)";
    EXPECT_THAT(liftModel(line(2, 4.0, 5.0)).cautions,
                ElementsAre(ModelCaution::noLine, ModelCaution::fewPairs));
    EXPECT_THAT(liftModel({}).cautions, ElementsAre(ModelCaution::noLine, ModelCaution::fewPairs,
                                                    ModelCaution::narrowLift));
}

TEST(LiftModel, WeighsByHours)
{
    // Two long times on one line and a short one off it.
    const LiftModel model =
        liftModel({point(0, 0, 10, 1000), point(1000, 10, 30, 1000), point(2000, 5, 80, 0.001)});
    ASSERT_TRUE(model.fit());
    EXPECT_NEAR(model.fit()->intercept, 10.0, 0.001);
    EXPECT_NEAR(model.fit()->slope, 2.0, 1e-6);
}

TEST(LiftModel, GivesTheEnergyOfTheReferenceHold)
{
    const LiftModel model = liftModel(line(6, 4.0, 0.6, 0.0));
    const auto at = atReference(model, {6.0, 100.0});
    ASSERT_TRUE(at);
    EXPECT_NEAR(at->watts.value, 22.0, 1e-9);
    EXPECT_NEAR(at->kwh.value, 2.2, 1e-9);
    EXPECT_FALSE(at->outside);
    EXPECT_TRUE(atReference(model, {7.1, 100.0})->outside);
    EXPECT_FALSE(atReference(liftModel({}), {6.0, 100.0}));
}

TEST(LiftModel, TheReferenceHoldsIntervalIsTheMeansTimesItsHours)
{
    const LiftModel model = liftModel(line(8, 3.0, 1.0));
    const auto at = atReference(model, {5.0, 200.0});
    EXPECT_NEAR(at->kwh.halfWidth, model.interval->meanResponse(5.0).halfWidth * 0.2, 1e-12);
    EXPECT_NEAR(at->oneMoreKwh.halfWidth, model.interval->oneMoreBatch(5.0).halfWidth * 0.2, 1e-12);
    EXPECT_GT(at->oneMoreKwh.halfWidth, at->kwh.halfWidth);
}

TEST(SameWeather, OneIsAheadOnlyIfBothDecideAndTheIntervalsDoNotOverlap)
{
    const auto ahead = [](const std::vector<WeatherPair>& a, const std::vector<WeatherPair>& b) {
        const LiftModel left = liftModel(a);
        const LiftModel right = liftModel(b);
        return aheadInSameWeather(left, atReference(left, {6.0, 1.0}), right,
                                  atReference(right, {6.0, 1.0}));
    };
    auto dearer = line(9, 3.0, 1.0);
    for (WeatherPair& pair : dearer)
        pair.watts += 20.0;
    EXPECT_EQ(ahead(line(9, 3.0, 1.0), dearer), Ahead::a);
    EXPECT_EQ(ahead(dearer, line(9, 3.0, 1.0)), Ahead::b);
    EXPECT_EQ(ahead(line(9, 3.0, 1.0), line(9, 3.0, 1.0)), Ahead::tooClose);
    EXPECT_EQ(ahead(line(5, 3.0, 1.0), dearer), std::nullopt) << "five pairs decide nothing";
    EXPECT_EQ(ahead({}, dearer), std::nullopt);
}

TEST(SameWeather, NoPowerIsBelowZero)
{
    EXPECT_EQ(notNegative({1.0, 3.0}), (Bounded{1.0, 0.0, 4.0}));
    EXPECT_EQ(notNegative({-2.0, 1.0}), (Bounded{0.0, 0.0, 0.0}));
}

} // namespace
} // namespace holdband::test
