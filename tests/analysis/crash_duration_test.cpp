// How long a crash will take. Expectations by hand from method.md 8.1.
#include "core/analysis/crash_duration.h"

#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <gtest/gtest.h>
#include <utility>
#include <vector>

namespace holdband::test {
namespace {

using namespace analysis;

/// Runs of (hours, °C).
Track beerOf(const std::vector<std::vector<std::pair<double, double>>>& runs)
{
    Track track;
    for (const auto& run : runs) {
        const std::size_t first = track.ms.size();
        for (const auto& [hours, celsius] : run) {
            track.ms.push_back(hours * msPerHour);
            track.value.push_back(celsius);
        }
        track.runs.push_back({first, track.ms.size() - 1});
    }
    return track;
}

TEST(HoursToCool, AreBetweenTheFirstTimesAtOrBelow)
{
    // 18 °C at 1 h, 3 °C at 9.5 h, and up again later.
    const Track beer = beerOf({{{0, 19}, {2, 17}, {9, 4}, {10, 2}, {11, 4}, {12, 2}}});
    EXPECT_NEAR(hoursToCool(beer, 18.0, 3.0).value(), 8.5, 1e-9);
    EXPECT_NEAR(hoursToCool(beer, 17.0, 2.0).value(), 8.0, 1e-9);
}

TEST(HoursToCool, GoOnAtTheRateOfTheFirstQuarterWhereTheCrashBeganLower)
{
    // Greatest of three: 16.01, so it began at 16. The way to 4 °C is 12 K, its first quarter to
    // 13 °C. 16 °C at 0.5 + 0.01/0.25 · 0.5 h.
    const Track beer =
        beerOf({{{0, 15.9}, {0.5, 16.01}, {1.0, 15.76}, {3.0, 13.0}, {8.0, 4.0}, {9.0, 3.0}}});
    const double began = 0.5 + 0.01 / 0.25 * 0.5;
    const double rate = 3.0 / (3.0 - began);
    EXPECT_NEAR(hoursToCool(beer, 18.0, 4.0).value(), 8.0 - began + 2.0 / rate, 1e-9);
}

TEST(HoursToCool, AreUnknownWhereItNeverGotThereOrThatWasNotSeen)
{
    EXPECT_FALSE(hoursToCool(beerOf({{{0, 19}, {9, 4}}}), 18.0, 3.0));
    EXPECT_FALSE(hoursToCool(beerOf({{{0, 19}, {5, 10}}, {{9, 2}, {10, 2}}}), 18.0, 3.0));
    EXPECT_FALSE(hoursToCool(beerOf({{{0, 2}, {9, 1}}}), 18.0, 3.0));
    EXPECT_FALSE(hoursToCool(beerOf({{{0, 19}, {9, 1}}}), 3.0, 3.0));
    EXPECT_FALSE(hoursToCool({}, 18.0, 3.0));
}

PastCrash crashOf(double hours, double litres)
{
    return {beerOf({{{0, 18}, {hours, 2}}}), litres};
}

TEST(CrashDuration, IsTheGeometricMeanAtThePlansVolume)
{
    // 20 and 45 h at 20 and 40 L: at 30 L 30 and 33.75 h, each to 2 °C from 18.
    const std::vector<PastCrash> past{crashOf(20.0, 20.0), crashOf(45.0, 40.0)};
    const auto made = crashDuration(past, {18.0, 2.0, 30.0}, false);
    ASSERT_TRUE(made);
    EXPECT_EQ(made->crashes, 2u);
    EXPECT_NEAR(made->hours, std::sqrt(30.0 * 33.75), 1e-9);
    const double distance = std::log(33.75 / 30.0) / 2.0;
    const double variance = (4.0 * 0.15 * 0.15 + 2.0 * distance * distance) / 5.0;
    const double half =
        boost::math::quantile(boost::math::students_t(5.0), 0.95) * std::sqrt(variance * 1.5);
    EXPECT_NEAR(made->low, made->hours * std::exp(-half), 1e-9);
    EXPECT_NEAR(made->high, made->hours * std::exp(half), 1e-9);
}

TEST(CrashDuration, OfOneCrashIsTheAssumptionAlone)
{
    const std::vector<PastCrash> past{crashOf(20.0, 20.0), {{}, 20.0}};
    for (const auto& [shared, assumed] : {std::pair{false, 0.15}, std::pair{true, 0.25}}) {
        const auto made = crashDuration(past, {18.0, 2.0, 20.0}, shared);
        ASSERT_TRUE(made);
        EXPECT_EQ(made->crashes, 1u);
        EXPECT_NEAR(std::log(made->high / made->hours), 2.13185 * assumed * std::sqrt(2.0), 5e-6);
    }
    EXPECT_FALSE(crashDuration({}, {18.0, 2.0, 20.0}, false));
}

} // namespace
} // namespace holdband::test
