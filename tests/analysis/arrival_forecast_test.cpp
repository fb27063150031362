// When a crash arrives: the worked example of method.md 8.3 to six digits, and edge cases whose
// answers follow from its rules or from exact formulas.
#include "core/analysis/arrival_forecast.h"

#include "core/analysis/arrival_spread.h"
#include "core/analysis/cooling_curve.h"
#include "tests/analysis/crashes.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <utility>
#include <vector>

namespace holdband::test {
namespace {

using namespace analysis;

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
constexpr double endless = std::numeric_limits<double>::infinity();

/// T = 2 + 16 e^(−0.2 t), each 15 min, of method.md's example.
ArrivalQuestion exampleAt(double hours)
{
    return toTwo(NewtonFall{2.0, 16.0, 0.2}.readings(hours));
}

CrashRecord pastCrash(const NewtonFall& fall, double litres = 20.0, bool shared = false)
{
    return {fall.readings(60.0), litres, shared};
}

void expectHours(const ArrivalForecast& forecast, double middle, double low, double high)
{
    ASSERT_EQ(forecast.answer, ArrivalAnswer::hours);
    EXPECT_NEAR(*forecast.middleH, middle, 6e-6 * middle);
    EXPECT_NEAR(*forecast.lowH, low, 6e-6 * low);
    EXPECT_NEAR(*forecast.highH, high, 6e-6 * high);
}

// method.md 8.3, example.
TEST(ArrivalForecast, TheCurvesOfTheExample)
{
    const auto blocks = blockMeans(exampleAt(9.0).readings, 4.5, 9.0, 12);
    ASSERT_EQ(blocks.size(), 12U);
    const auto curves = coolingCurvesOf(blocks, 9.0);
    ASSERT_TRUE(curves);
    EXPECT_NEAR(curves->best.now, 4.62960, 5e-6);
    EXPECT_NEAR(curves->best.rate, 0.545134, 5e-7);
    EXPECT_NEAR(curves->accepted.front().pace, 0.163665, 5e-7);
    EXPECT_NEAR(curves->accepted.back().pace, 0.248915, 5e-7);
}

// method.md 8.3, example.
TEST(ArrivalForecast, TheExampleWithoutPastCrashes)
{
    const ArrivalForecast forecast = arrivalForecastOf(exampleAt(9.0));
    expectHours(forecast, 5.99614, 3.47796, 10.3118);
    EXPECT_EQ(forecast.source, ArrivalSource::curve);
    EXPECT_EQ(forecast.pastCrashes, 0U);
}

// method.md 8.3, example.
TEST(ArrivalForecast, TheExampleWithAPastCrash)
{
    ArrivalQuestion question = exampleAt(9.0);
    question.past.push_back(pastCrash({1.0, 17.0, 0.18}));
    const ArrivalForecast forecast = arrivalForecastOf(question);
    expectHours(forecast, 3.53872, 2.25135, 5.56222);
    EXPECT_EQ(forecast.source, ArrivalSource::pastCrashes);
    EXPECT_EQ(forecast.pastCrashes, 1U);
    EXPECT_TRUE(forecast.byPace);
}

// Straight lines, where crossings are exact: 1 K/h from 18 to 3 °C. The running one has come to
// 15.75 °C, 15 % of the way, after 4.5 h, and to 12 °C, 40 %, after 12 h.
TEST(ArrivalForecast, BeforeTwoFifthsOfTheWayVolumeScales)
{
    ArrivalQuestion question = toTwo(straightFall(18.0, 0.5, 11.5));
    question.litres = 30.0;
    question.past.push_back({straightFall(18.0, 1.0, 20.0), 20.0, false});
    const ArrivalForecast forecast = arrivalForecastOf(question);
    ASSERT_EQ(forecast.answer, ArrivalAnswer::hours);
    EXPECT_FALSE(forecast.byPace);
    EXPECT_NEAR(*forecast.middleH, (12.25 - 3.0) * 30.0 / 20.0, 1e-9);
    // t(0.95, 4) = 2.131847, tables of Student's distribution.
    EXPECT_NEAR(std::log(*forecast.highH / *forecast.middleH), 2.131847 * 0.15 * std::sqrt(2.0),
                1e-6);
}

TEST(ArrivalForecast, FromTwoFifthsOfTheWayItsOwnPaceScales)
{
    ArrivalQuestion question = toTwo(straightFall(18.0, 0.5, 12.0));
    question.litres = 30.0;
    question.past.push_back({straightFall(18.0, 1.0, 20.0), 20.0, false});
    const ArrivalForecast forecast = arrivalForecastOf(question);
    EXPECT_TRUE(forecast.byPace);
    EXPECT_NEAR(*forecast.middleH, (12.0 - 3.0) / 0.5, 1e-9);
}

TEST(ArrivalForecast, UnknownVolumesDoNotScale)
{
    ArrivalQuestion question = toTwo(straightFall(18.0, 0.5, 4.0));
    question.past.push_back({straightFall(18.0, 1.0, 20.0), 20.0, false});
    EXPECT_NEAR(*arrivalForecastOf(question).middleH, 13.0, 1e-9);
}

// Two past crashes of 1 and 0.5 K/h: 13 h and 26 h from 16 °C. Q = (ln 2)²/2, s² = (4c² + Q)/5.
TEST(ArrivalForecast, TwoPastCrashesArePooled)
{
    ArrivalQuestion question = toTwo(straightFall(18.0, 0.5, 4.0));
    question.past.push_back({straightFall(18.0, 1.0, 20.0), {}, false});
    question.past.push_back({straightFall(18.0, 0.5, 40.0), {}, false});
    const ArrivalForecast forecast = arrivalForecastOf(question);
    EXPECT_EQ(forecast.pastCrashes, 2U);
    EXPECT_NEAR(*forecast.middleH, 13.0 * std::sqrt(2.0), 1e-9);
    const double variance = (4.0 * 0.15 * 0.15 + std::log(2.0) * std::log(2.0) / 2.0) / 5.0;
    // t(0.95, 5) = 2.015048, tables of Student's distribution.
    EXPECT_NEAR(std::log(*forecast.middleH / *forecast.lowH), 2.015048 * std::sqrt(variance * 1.5),
                1e-6);
}

// A past crash that began at 15 °C, below the 15.75 °C from which the pace counts: from 14.99 °C,
// and the missing 0.76 K at the 1 K/h of its first quarter.
TEST(ArrivalForecast, APastCrashThatBeganLowerIsExtended)
{
    ArrivalQuestion question = toTwo(straightFall(18.0, 0.5, 16.0));
    question.past.push_back({straightFall(15.0, 1.0, 20.0), {}, false});
    EXPECT_NEAR(*arrivalForecastOf(question).middleH, (10.0 - 3.0) / 0.5, 1e-9);
}

TEST(ArrivalForecast, PastCrashesOfTheOtherKindDoNotCount)
{
    ArrivalQuestion question = exampleAt(9.0);
    question.past.push_back(pastCrash({1.0, 17.0, 0.18}, 20.0, true));
    EXPECT_EQ(arrivalForecastOf(question).source, ArrivalSource::curve);
    question.shared = true;
    const ArrivalForecast shared = arrivalForecastOf(question);
    EXPECT_EQ(shared.source, ArrivalSource::pastCrashes);
    EXPECT_NEAR(std::log(*shared.highH / *shared.middleH), 2.131847 * 0.25 * std::sqrt(2.0), 1e-6);
}

TEST(ArrivalForecast, PastCrashesThatDidNotPassTheWayDoNotCount)
{
    ArrivalQuestion question = exampleAt(9.0);
    question.past.push_back(pastCrash({3.5, 16.0, 0.2}));                // never in the band
    question.past.push_back({straightFall(4.0, 1.0, 5.0), {}, false});   // begun too low
    question.past.push_back({straightFall(0.0, -1.0, 20.0), {}, false}); // a warm-up
    question.past.push_back({{}, {}, false});
    question.past.push_back({{{1.0, notANumber}, {notANumber, 3.0}}, {}, false});
    const ArrivalForecast forecast = arrivalForecastOf(question);
    EXPECT_EQ(forecast.source, ArrivalSource::curve);
    EXPECT_NEAR(*forecast.middleH, 5.99614, 5e-6);
}

TEST(ArrivalForecast, TheCurveWaitsForAnHourAndAHalf)
{
    const ArrivalForecast soon = arrivalForecastOf(exampleAt(1.25));
    EXPECT_EQ(soon.answer, ArrivalAnswer::notYet);
    EXPECT_EQ(soon.notYet, NotYet::tooSoon);
    EXPECT_FALSE(soon.middleH || soon.lowH || soon.highH);
    EXPECT_NE(arrivalForecastOf(exampleAt(1.5)).notYet, NotYet::tooSoon);
}

TEST(ArrivalForecast, PastCrashesWaitForHalfAnHour)
{
    for (const double hours : {0.25, 0.5}) {
        ArrivalQuestion question = exampleAt(hours);
        question.past.push_back(pastCrash({1.0, 17.0, 0.18}));
        EXPECT_EQ(arrivalForecastOf(question).answer,
                  hours < 0.5 ? ArrivalAnswer::notYet : ArrivalAnswer::hours);
    }
}

// Each 2 h: the 4.5 h up to 9 h hold 6, 8 and none of the odd hours.
TEST(ArrivalForecast, FewReadingsAreTooFew)
{
    const ArrivalForecast forecast =
        arrivalForecastOf(toTwo(NewtonFall{2.0, 16.0, 0.2}.readings(10.0, 2.0)));
    EXPECT_EQ(forecast.answer, ArrivalAnswer::notYet);
    EXPECT_EQ(forecast.notYet, NotYet::fewBlocks);
    EXPECT_EQ(arrivalForecastOf(toTwo({{3.0, 10.0}})).notYet, NotYet::fewBlocks);
}

TEST(ArrivalForecast, AGapLeavesBlocksOut)
{
    ArrivalQuestion question = exampleAt(9.0);
    const auto without = [&question](double from, double to) {
        ArrivalQuestion cut = question;
        std::erase_if(cut.readings, [from, to](const TemperatureAt& reading) {
            return reading.hours > from && reading.hours < to;
        });
        return arrivalForecastOf(cut);
    };
    const ArrivalForecast short2h = without(5.9, 7.9);
    ASSERT_EQ(short2h.answer, ArrivalAnswer::hours);
    const double truth = 5.0 * std::log(16.0) - 9.0; // 2 + 16 e^(−0.2 t) = 3
    EXPECT_LT(*short2h.lowH, truth);
    EXPECT_GT(*short2h.highH, truth);
    EXPECT_EQ(without(4.4, 7.6).notYet, NotYet::fewBlocks);
}

TEST(ArrivalForecast, HardlyFallenIsTooEarly)
{
    // 0.6 K/h: at 1.5 h 0.9 K, at 1.75 h 1.05 K of 9 K.
    EXPECT_EQ(arrivalForecastOf(toTwo(straightFall(12.0, 0.6, 1.6, 0.05))).notYet,
              NotYet::hardlyFallen);
    EXPECT_EQ(arrivalForecastOf(toTwo(straightFall(12.0, 0.6, 1.75, 0.05))).notYet, NotYet::none);
    // 1.2 K, but less than a tenth of 15 K.
    EXPECT_EQ(arrivalForecastOf(toTwo(straightFall(18.0, 0.6, 2.0, 0.05))).notYet,
              NotYet::hardlyFallen);
}

TEST(ArrivalForecast, AlreadyThere)
{
    EXPECT_EQ(arrivalForecastOf(exampleAt(14.0)).answer, ArrivalAnswer::arrived);
    // The first entry counts, also where it left again.
    EXPECT_EQ(arrivalForecastOf(toTwo({{0.0, 18.0}, {5.0, 3.0}, {6.0, 4.0}})).answer,
              ArrivalAnswer::arrived);
    EXPECT_EQ(arrivalForecastOf(toTwo({{0.0, 2.5}})).answer, ArrivalAnswer::arrived);
    EXPECT_EQ(arrivalForecastOf(toTwo({{0.0, 1.0}})).answer, ArrivalAnswer::arrived);
}

TEST(ArrivalForecast, AWarmUpIsTheMirrorImage)
{
    ArrivalQuestion question = mirrored(exampleAt(9.0), 10.0);
    EXPECT_EQ(question.targetC, 18.0);
    expectHours(arrivalForecastOf(question), 5.99614, 3.47796, 10.3118);
    question.past.push_back(pastCrash({19.0, -17.0, 0.18}));
    expectHours(arrivalForecastOf(question), 3.53872, 2.25135, 5.56222);
}

// It levels off at 5 °C, short of 3 °C: after 6 h no curve arrives.
TEST(ArrivalForecast, LevelsOffBeforeTheBand)
{
    const NewtonFall fall{5.0, 13.0, 0.4};
    const ArrivalForecast forecast = arrivalForecastOf(toTwo(fall.readings(10.0)));
    EXPECT_EQ(forecast.answer, ArrivalAnswer::willNotArrive);
    ASSERT_TRUE(forecast.levelsOffC);
    EXPECT_NEAR(*forecast.levelsOffC, 5.0, 0.05);
    EXPECT_FALSE(forecast.middleH || forecast.lowH || forecast.highH);
    const auto warm = arrivalForecastOf(mirrored(toTwo(fall.readings(10.0)), 10.0));
    EXPECT_NEAR(*warm.levelsOffC, 15.0, 0.05);
}

TEST(ArrivalForecast, BeforeSixHoursTheTopStaysOpen)
{
    const ArrivalForecast forecast =
        arrivalForecastOf(toTwo(NewtonFall{5.0, 13.0, 1.0}.readings(5.75)));
    EXPECT_EQ(forecast.answer, ArrivalAnswer::openTop);
    ASSERT_TRUE(forecast.lowH);
    EXPECT_GT(*forecast.lowH, 0.0);
    EXPECT_FALSE(forecast.middleH || forecast.highH || forecast.levelsOffC);
}

// Another batch takes its turn: it may get colder when that has finished.
TEST(ArrivalForecast, ASharedSetupIsNotSaidToLevelOff)
{
    ArrivalQuestion question = toTwo(NewtonFall{5.0, 13.0, 0.4}.readings(10.0));
    question.shared = true;
    const ArrivalForecast forecast = arrivalForecastOf(question);
    EXPECT_EQ(forecast.answer, ArrivalAnswer::openTop);
    EXPECT_GT(*forecast.lowH, 0.0);
    question.readings = straightFall(18.0, 1.0, 5.0);
    for (double hours = 5.25; hours <= 20.0; hours += 0.25)
        question.readings.push_back({hours, 13.0 + 0.1 * (hours - 5.0)});
    EXPECT_EQ(arrivalForecastOf(question).answer, ArrivalAnswer::willNotArrive) << "it gets warmer";
}

TEST(ArrivalForecast, ASharedSetupIsLessSure)
{
    ArrivalQuestion question = exampleAt(9.0);
    const ArrivalForecast alone = arrivalForecastOf(question);
    question.shared = true;
    const ArrivalForecast shared = arrivalForecastOf(question);
    ASSERT_EQ(shared.answer, ArrivalAnswer::hours);
    // The fastest third is the first: a mean slope between those of 4.5 and 6 h, 1.30 and 0.96 K/h.
    EXPECT_LT(*shared.lowH, 0.95 * (4.62960 - 3.0) / 0.96);
    EXPECT_GT(*shared.lowH, 0.95 * (4.62960 - 3.0) / 1.31);
    EXPECT_LT(*shared.lowH, *alone.lowH);
    EXPECT_GE(*shared.highH, *alone.highH);
}

// A fall that turned into a rise after 5 h levels off where it is.
TEST(ArrivalForecast, GettingWarmerWillNotArrive)
{
    std::vector<TemperatureAt> readings = straightFall(18.0, 1.0, 5.0);
    for (double hours = 5.25; hours <= 20.0; hours += 0.25)
        readings.push_back({hours, 13.0 + 0.1 * (hours - 5.0)});
    const ArrivalForecast forecast = arrivalForecastOf(toTwo(readings));
    EXPECT_EQ(forecast.answer, ArrivalAnswer::willNotArrive);
    EXPECT_NEAR(*forecast.levelsOffC, 14.5, 0.01);
}

TEST(ArrivalForecast, NeverFallenIsTooEarlyForEver)
{
    EXPECT_EQ(arrivalForecastOf(toTwo(straightFall(18.0, -0.1, 20.0))).notYet,
              NotYet::hardlyFallen);
}

// 0.5 K/h, straight: 8 °C after 20 h, 10 h left. Over 10 h no curve of the pace that the F-formula
// takes fits, so this one is the greatest: (8 − 2)/0.5·ln((8 − 2)/(3 − 2)).
TEST(ArrivalForecast, AStraightFallMaySlowDown)
{
    const double slowest = 12.0 * std::log(6.0);
    expectHours(arrivalForecastOf(toTwo(straightFall(18.0, 0.5, 20.0))), std::sqrt(10.0 * slowest),
                0.95 * 10.0, 1.05 * slowest);
}

TEST(ArrivalForecast, AKnownFloorShortensTheTop)
{
    ArrivalQuestion question = toTwo(straightFall(18.0, 0.5, 20.0));
    question.toleranceK = 0.3;
    EXPECT_NEAR(*arrivalForecastOf(question).highH, 1.05 * 12.0 * std::log(6.0 / 0.3), 1e-6);
    question.floorC = -4.0;
    EXPECT_NEAR(*arrivalForecastOf(question).highH, 1.05 * 24.0 * std::log(12.0 / 6.3), 1e-6);
    question.floorC = 2.5; // the band cannot be reached
    EXPECT_EQ(arrivalForecastOf(question).answer, ArrivalAnswer::openTop);
}

TEST(ArrivalForecast, WithoutToleranceTheTargetIsOnlyComeNearTo)
{
    ArrivalQuestion question = exampleAt(9.0);
    question.toleranceK = 0.0;
    EXPECT_EQ(arrivalForecastOf(question).answer, ArrivalAnswer::openTop);
}

TEST(ArrivalForecast, ValuesThatAreNotFiniteAreLeftOut)
{
    ArrivalQuestion question = exampleAt(9.0);
    question.readings.insert(question.readings.begin(),
                             {{0.0, notANumber}, {notANumber, 3.0}, {-1.0, 30.0}});
    question.readings.push_back({endless, 2.0});
    question.readings.push_back({9.0, -endless});
    question.floorC = notANumber;
    expectHours(arrivalForecastOf(question), 5.99614, 3.47796, 10.3118);
}

TEST(ArrivalForecast, NoQuestion)
{
    EXPECT_EQ(arrivalForecastOf(toTwo({})).answer, ArrivalAnswer::noQuestion);
    EXPECT_EQ(arrivalForecastOf(toTwo({{1.0, notANumber}})).answer, ArrivalAnswer::noQuestion);
    for (const auto& [target, tolerance] :
         {std::pair{notANumber, 1.0}, {2.0, notANumber}, {endless, 1.0}, {2.0, -1.0}}) {
        ArrivalQuestion question = exampleAt(9.0);
        question.targetC = target;
        question.toleranceK = tolerance;
        EXPECT_EQ(arrivalForecastOf(question).answer, ArrivalAnswer::noQuestion);
    }
}

TEST(ArrivalForecast, TheOrderOfReadingsDoesNotMatter)
{
    ArrivalQuestion question = exampleAt(9.0);
    std::swap(question.readings[3], question.readings[20]);
    expectHours(arrivalForecastOf(question), 5.99614, 3.47796, 10.3118);
}

// A window of 1,000 h: e^(3·1000) would overflow.
TEST(ArrivalForecast, ALongStandstillDoesNotOverflow)
{
    const ArrivalForecast forecast =
        arrivalForecastOf(toTwo(NewtonFall{5.0, 13.0, 0.4}.readings(2000.0)));
    EXPECT_EQ(forecast.answer, ArrivalAnswer::willNotArrive);
    EXPECT_NEAR(*forecast.levelsOffC, 5.0, 1e-6);
}

// method.md 8, head: s = c and ν = 4 without errors; (4c² + Q)/(3 + n) with them.
TEST(ArrivalSpread, IsModerated)
{
    constexpr double assumed = 0.15 * 0.15;
    EXPECT_DOUBLE_EQ(moderatedSpread(assumed, 0.0, 0).variance, assumed);
    EXPECT_DOUBLE_EQ(moderatedSpread(assumed, 0.0, 0).freedom, 4.0);
    EXPECT_DOUBLE_EQ(moderatedSpread(assumed, 0.0, 1).variance, assumed);
    EXPECT_DOUBLE_EQ(moderatedSpread(assumed, 0.06, 2).variance, 0.03);
    EXPECT_DOUBLE_EQ(moderatedSpread(assumed, 0.06, 2).freedom, 5.0);
}

} // namespace
} // namespace holdband::test
