// Can the setup hold the plan? Expectations by hand from method.md 8.1.
#include "core/analysis/hold_need.h"

#include "core/analysis/moving_mean.h"
#include "tests/analysis/builders.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace holdband::test {
namespace {

using namespace analysis;

/// Points of (hours, value) without a gap.
Track trackOf(std::initializer_list<std::pair<double, double>> points)
{
    Track track{hour(0), {}, {}, {{0, points.size() - 1}}};
    for (const auto& [hours, value] : points) {
        track.ms.push_back(hours * msPerHour);
        track.value.push_back(value);
    }
    return track;
}

TEST(GreatestMean, IsExactOnStraightPieces)
{
    // A tent of 10 h from 0 to 10 and back: the best 8 h are 6 to 14 h, mean (6 + 10) / 2.
    const Track tent = trackOf({{0, 0}, {10, 10}, {20, 0}});
    EXPECT_NEAR(greatestMean(tent, 8 * msPerHour).value(), 8.0, 1e-9);
    // A skew one: to 10 in 4 h, back in 16 h. The edges are equal, at 5, from 2 to 12 h.
    const Track skew = trackOf({{0, 0}, {4, 10}, {20, 0}});
    EXPECT_NEAR(greatestMean(skew, 10 * msPerHour).value(), 7.5, 1e-9);
    EXPECT_NEAR(greatestMean(trackOf({{0, 1}, {10, 3}}), 10 * msPerHour).value(), 2.0, 1e-9);
    EXPECT_FALSE(greatestMean(tent, 21 * msPerHour));
    EXPECT_FALSE(greatestMean({}, msPerHour));
}

TEST(GreatestMean, NeverGoesOverAGap)
{
    Track gap = trackOf({{0, 9}, {5, 9}, {6, 1}, {18, 1}});
    gap.runs = {{0, 1}, {2, 3}};
    EXPECT_NEAR(greatestMean(gap, 6 * msPerHour).value(), 1.0, 1e-9);
}

std::vector<PlacedStage> plan(double coldHours)
{
    return placeStages(
        batchOf({hold("Ferment", 18.0, 216), hold("Crash", 2.0, coldHours)}, 216 + coldHours),
        hour(216 + coldHours));
}

TEST(NeededLift, OfATypedRoomIsItsWarmHalfAboveTheColdestTarget)
{
    const TypedRoom room{22.0, 4.0};
    EXPECT_NEAR(neededLift(plan(48), room).value(), 20.0 + 4.0 / std::numbers::pi, 1e-9);
    // 6 h at 2 °C and 6 h at 18 °C.
    EXPECT_NEAR(neededLift(plan(6), room).value(), 12.0 + 4.0 / std::numbers::pi, 1e-9);
    EXPECT_FALSE(neededLift({}, room));
}

TEST(NeededLift, OfARecordedRoomIsItsGreatest12Hours)
{
    // 10 °C but for 24 h around the 240th hour, up to 22 °C and back: best 12 h mean 19 °C.
    const Track room = trackOf({{0, 10}, {228, 10}, {240, 22}, {252, 10}, {264, 10}});
    EXPECT_NEAR(neededLift(plan(48), room).value(), 19.0 - 2.0, 1e-9);
    EXPECT_FALSE(neededLift(plan(48), trackOf({{300, 10}, {400, 10}})));
}

TEST(TimesInBand, EndWhereTheDeviationCrossesAnEdge)
{
    // In from +1 K at 1 h to −1 K at 3 h, and from −1 K at 5 h on.
    const Track deviation = trackOf({{0, 2}, {4, -2}, {6, 0}, {7, 0}});
    const auto times = timesInBand(deviation, 1.0);
    ASSERT_EQ(times.size(), 2u);
    // The slack of section 3, 1e-6 K, is 4 ms here.
    EXPECT_NEAR(hoursBetween(zero, times[0].start), 1.0, 2e-6);
    EXPECT_NEAR(hoursBetween(zero, times[0].end), 3.0, 2e-6);
    EXPECT_NEAR(hoursBetween(zero, times[1].start), 5.0, 2e-6);
    EXPECT_EQ(times[1].end, hour(7));
    EXPECT_TRUE(timesInBand(trackOf({{0, 2}, {4, 3}}), 1.0).empty());
}

TEST(SeenLift, CountsFrom96HoursAndOnlyInBandThroughout)
{
    // The lift falls by 1 K in 10 h from 30 K.
    const Track lift = trackOf({{0, 30}, {300, 0}});
    EXPECT_NEAR(seenLift(lift, {{hour(0), hour(300)}}, zero).value(), 30 - 10.2, 1e-9);
    EXPECT_NEAR(seenLift(lift, {{hour(0), hour(107)}, {hour(150), hour(300)}}, zero).value(),
                30 - 15.6, 1e-9);
    // Two stages that touch are one time in the band.
    EXPECT_NEAR(seenLift(lift, {{hour(0), hour(100)}, {hour(100), hour(300)}}, zero).value(),
                30 - 10.2, 1e-9);
    EXPECT_FALSE(seenLift(lift, {{hour(0), hour(107)}}, zero));
}

TEST(HoldOutlook, ComparesTheNeedWithWhatWasSeen)
{
    EXPECT_EQ(holdOutlook(9.0, 10.0), HoldOutlook::heldMore);
    EXPECT_EQ(holdOutlook(9.1, 10.0), HoldOutlook::atEdge);
    EXPECT_EQ(holdOutlook(10.0, 10.0), HoldOutlook::atEdge);
    EXPECT_EQ(holdOutlook(10.1, 10.0), HoldOutlook::beyondSeen);
    EXPECT_EQ(holdOutlook(10.0, {}), HoldOutlook::unknown);
    EXPECT_EQ(holdOutlook({}, 10.0), HoldOutlook::unknown);
}

} // namespace
} // namespace holdband::test
