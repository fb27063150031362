// Gap limits, covered pieces, exclusions and offsets: section 1 of the method. Figures by hand.
#include "core/analysis/calibration.h"
#include "tests/analysis/builders.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

Instant minute(double minutes)
{
    return hour(minutes / 60.0);
}

Series atMinutes(std::initializer_list<double> minutes)
{
    Series result;
    for (const double at : minutes) {
        result.at.push_back(minute(at));
        result.value.push_back(20.0);
    }
    return result;
}

Milliseconds gap(double minutes)
{
    return toMilliseconds(Hours{minutes / 60.0});
}

TEST(GapLimit, IsThreeTimesTheMedianOfAnOddCount)
{
    // Intervals 10, 10, 20 min: median 10, limit 30.
    EXPECT_EQ(defaultGapLimit(atMinutes({0, 10, 20, 40}), {minute(0), minute(40)}), gap(30));
    // Intervals 30, 10, 20 min: median 20 (the first is not it), limit 60.
    EXPECT_EQ(defaultGapLimit(atMinutes({0, 30, 40, 60}), {minute(0), minute(60)}), gap(60));
}

TEST(GapLimit, TakesTheMeanOfTheMiddleTwoOfAnEvenCount)
{
    // Intervals 10, 20 min: median 15, limit 45.
    EXPECT_EQ(defaultGapLimit(atMinutes({0, 10, 30}), {minute(0), minute(30)}), gap(45));
    // Intervals 10, 10, 20, 30 min: median 15, limit 45.
    EXPECT_EQ(defaultGapLimit(atMinutes({0, 10, 20, 40, 70}), {minute(0), minute(70)}), gap(45));
}

TEST(GapLimit, IsAtMostTwoHours)
{
    // Hourly readings would give 3 h.
    EXPECT_EQ(defaultGapLimit(atMinutes({0, 60, 120}), {minute(0), minute(120)}), gap(120));
    // 40 min gives just 2 h.
    EXPECT_EQ(defaultGapLimit(atMinutes({0, 40, 80}), {minute(0), minute(80)}), gap(120));
    EXPECT_EQ(defaultGapLimit(atMinutes({0, 39, 78}), {minute(0), minute(78)}), gap(117));
}

TEST(GapLimit, LooksOnlyAtReadingsInsideTheBatch)
{
    // Before pitching every minute, inside every 10 minutes; the piece from −1 to 0 is outside.
    const Series series = atMinutes({-3, -2, -1, 0, 10, 20, 21, 22, 23});
    EXPECT_EQ(defaultGapLimit(series, {minute(0), minute(20)}), gap(30));
}

TEST(GapLimit, WithoutAnIntervalInsideIsTheCap)
{
    EXPECT_EQ(defaultGapLimit(atMinutes({5}), {minute(0), minute(60)}), gap(120));
    EXPECT_EQ(defaultGapLimit({}, {minute(0), minute(60)}), gap(120));
}

TEST(Cover, APieceOfJustTheGapLimitIsCovered)
{
    const Series series = test::series({{0, 20}, {1, 20}});
    EXPECT_DOUBLE_EQ(cover(series, gap(60), {hour(0), hour(1)}).coveredMs(), hourMs);
    EXPECT_TRUE(cover(series, gap(60) - Milliseconds{1}, {hour(0), hour(1)}).empty());
}

TEST(Cover, PiecesThatStraddleAnEdgeCountForThePartInside)
{
    // 18 at −1 h to 22 at 1 h passes 20 at 0 h; 22 at 3 h; the span ends at 2 h.
    const Series series = test::series({{-1, 18}, {1, 22}, {3, 22}});
    const Track track = cover(series, gap(120), {hour(0), hour(2)});
    ASSERT_EQ(track.runs.size(), 1u);
    EXPECT_DOUBLE_EQ(track.coveredMs(), 2 * hourMs);
    EXPECT_DOUBLE_EQ(track.value.front(), 20.0);
    EXPECT_DOUBLE_EQ(track.value.back(), 22.0);
}

TEST(Cover, OnePieceMayStraddleBothEdges)
{
    // 18 at −1 h to 22 at 3 h: 1 K an hour, 19 at 0 h and 21 at 2 h.
    const Track track = cover(test::series({{-1, 18}, {3, 22}}), gap(240), {hour(0), hour(2)});
    ASSERT_EQ(track.ms.size(), 2u);
    EXPECT_DOUBLE_EQ(track.value[0], 19.0);
    EXPECT_DOUBLE_EQ(track.value[1], 21.0);
}

TEST(Cover, AStraddlingPieceIsJudgedByItsWholeLength)
{
    // The piece is 4 h long; the fact that only 2 h of it are inside does not make it covered.
    EXPECT_TRUE(cover(test::series({{-1, 18}, {3, 22}}), gap(180), {hour(0), hour(2)}).empty());
}

TEST(Cover, ALoneReadingCountsForNothing)
{
    const Series series = test::series({{0, 20}, {1, 20}, {4, 99}, {7, 20}, {8, 20}});
    const Track track = cover(series, gap(90), {hour(0), hour(8)});
    EXPECT_EQ(track.runs.size(), 2u);
    EXPECT_DOUBLE_EQ(track.coveredMs(), 2 * hourMs);
    EXPECT_EQ(std::count(track.value.begin(), track.value.end(), 99.0), 0);
}

TEST(Cover, IsEmptyForOneReadingOrAnEmptySpan)
{
    EXPECT_TRUE(cover(test::series({{0, 20}}), gap(60), {hour(0), hour(1)}).empty());
    EXPECT_TRUE(cover(test::series({{0, 20}, {1, 20}}), gap(60), {hour(1), hour(1)}).empty());
    EXPECT_TRUE(cover(test::series({{0, 20}, {1, 20}}), gap(60), {hour(2), hour(3)}).empty());
}

TEST(Exclusions, AnExcludedReadingIsNotBridged)
{
    Series series = test::series({{0, 20}, {1, 20}, {2, 80}, {3, 20}, {4, 20}});
    applyExclusions(series, {{hour(2), hour(2)}});
    // 1 h and 3 h are 2 h apart, inside the gap limit of 3 h, and still not joined.
    const Track track = cover(series, gap(180), {hour(0), hour(4)});
    EXPECT_EQ(track.runs.size(), 2u);
    EXPECT_DOUBLE_EQ(track.coveredMs(), 2 * hourMs);
}

TEST(Exclusions, AStretchBetweenReadingsLeavesThePieceUncovered)
{
    Series series = test::series({{0, 20}, {1, 20}, {2, 20}, {3, 20}, {4, 20}});
    applyExclusions(series, {{hour(1.25), hour(1.5)}});
    EXPECT_EQ(series.size(), 5u);
    EXPECT_DOUBLE_EQ(cover(series, gap(180), {hour(0), hour(4)}).coveredMs(), 3 * hourMs);
}

TEST(Exclusions, BreaksAlsoCountInASpanThatBeginsLater)
{
    Series series = test::series({{0, 20}, {1, 20}, {2, 20}, {3, 20}, {4, 20}, {5, 20}});
    applyExclusions(series, {{hour(0.5), hour(0.6)}, {hour(3), hour(3.2)}});
    // Of 1.5 … 5 h: 1.5–2 and 4–5 are covered, 2–4 is broken.
    EXPECT_DOUBLE_EQ(cover(series, gap(180), {hour(1.5), hour(5)}).coveredMs(), 1.5 * hourMs);
}

TEST(Offsets, ApplyFromTheirTimeUntilTheNextOneReplacesThem)
{
    Series series = test::series({{0, 20}, {1, 20}, {2, 20}, {3, 20}, {4, 20}});
    applyOffsets(series, {{hour(1), TemperatureDifference::kelvins(-0.5), {}},
                          {hour(3), TemperatureDifference::kelvins(0.25), {}}});
    // Not added up: 0.25 after 3 h, not −0.25.
    EXPECT_EQ(series.value, (std::vector<double>{20, 19.5, 19.5, 20.25, 20.25}));
}

TEST(Accuracy, IsTheLargestInForceDuringTheSpan)
{
    Sensor sensor;
    sensor.accuracy = TemperatureDifference::kelvins(0.5);
    const Offset calibrated{hour(10), {}, TemperatureDifference::kelvins(0.1)};
    sensor.offsets = {calibrated};
    EXPECT_DOUBLE_EQ(accuracyOver(sensor, {hour(0), hour(20)})->kelvins(), 0.5);
    EXPECT_DOUBLE_EQ(accuracyOver(sensor, {hour(10), hour(20)})->kelvins(), 0.1);
    sensor.accuracy.reset();
    EXPECT_FALSE(accuracyOver(sensor, {hour(0), hour(20)}));
    EXPECT_DOUBLE_EQ(accuracyOver(sensor, {hour(10), hour(20)})->kelvins(), 0.1);
    sensor.offsets.push_back({hour(15), {}, {}});
    EXPECT_FALSE(accuracyOver(sensor, {hour(10), hour(20)})) << "the second offset says nothing";
}

TEST(Difference, IsKnownWhereBothAreCovered)
{
    const Span span{hour(0), hour(6)};
    // a: 30 → 32 over 2 h, a gap, then 31 from 4 to 6 h. b: 20 from 0 to 5 h, hourly.
    const Track a = cover(test::series({{0, 30}, {2, 32}, {4.5, 31}, {6, 31}}), gap(120), span);
    const Track b =
        cover(test::series({{0, 20}, {1, 20}, {2, 20}, {3, 20}, {4, 20}, {5, 20}}), gap(60), span);
    const Track lift = difference(a, b);
    // 0–2 h and 4.5–5 h.
    EXPECT_DOUBLE_EQ(lift.coveredMs(), 2.5 * hourMs);
    EXPECT_EQ(lift.runs.size(), 2u);
    EXPECT_EQ(lift.value, (std::vector<double>{10, 11, 12, 11, 11}));
}

} // namespace
} // namespace holdband::test
