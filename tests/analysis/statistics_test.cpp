// Time-weighted moments and quantiles: section 3 of the method. Figures by hand.
#include "core/analysis/statistics.h"
#include "tests/analysis/builders.h"

#include <cmath>
#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

Track trackOf(const Series& series, double untilHour, double gapHours)
{
    return cover(series, toMilliseconds(Hours{gapHours}), {hour(0), hour(untilHour)});
}

double quantile(const Track& track, double share)
{
    return timeQuantiles(track, 0.0, std::array{share}).at(0);
}

TEST(TimeMoments, OfOnePiece)
{
    // −1 → 3: mean 1; mean square (1 − 3 + 9)/3 = 7/3; variance 7/3 − 1 = 4/3; mean absolute:
    // a quarter of the time 0.5, three quarters 1.5: 1.25.
    TimeMoments moments;
    moments.addPiece(hourMs, -1, 3);
    EXPECT_NEAR(moments.mean(), 1.0, 1e-12);
    EXPECT_NEAR(moments.rootMeanSquare(), std::sqrt(7.0 / 3.0), 1e-12);
    EXPECT_NEAR(moments.standardDeviation(), std::sqrt(4.0 / 3.0), 1e-12);
    EXPECT_NEAR(moments.meanAbsolute(), 1.25, 1e-12);
}

TEST(TimeMoments, WeighByTime)
{
    // 1 for 3 h, 5 for 1 h: mean 2, mean square 7, variance 3.
    TimeMoments moments;
    moments.addPiece(3 * hourMs, 1, 1);
    TimeMoments other;
    other.addPiece(hourMs, 5, 5);
    other.addPiece(0.0, 99, 99);
    moments.add(other);
    EXPECT_DOUBLE_EQ(moments.mean(), 2.0);
    EXPECT_NEAR(moments.rootMeanSquare(), std::sqrt(7.0), 1e-12);
    EXPECT_NEAR(moments.standardDeviation(), std::sqrt(3.0), 1e-12);
    EXPECT_DOUBLE_EQ(moments.weightMs(), 4 * hourMs);
}

TEST(Quantiles, OfAUniformPiece)
{
    const Track track = trackOf(series({{0, 10}, {1, 30}}), 1, 1);
    EXPECT_NEAR(quantile(track, 0.05), 11.0, 1e-9);
    EXPECT_NEAR(quantile(track, 0.50), 20.0, 1e-9);
    EXPECT_NEAR(quantile(track, 0.95), 29.0, 1e-9);
    EXPECT_NEAR(quantile(track, 1.0), 30.0, 1e-9);
}

TEST(Quantiles, AreTheSmallestValueWithThatShare)
{
    // Half the time at 18, half at 22, with a gap between: at 18 half the time is at or below.
    const Track halves = trackOf(series({{0, 18}, {10, 18}, {30, 22}, {40, 22}}), 40, 10);
    EXPECT_EQ(quantile(halves, 0.5), 18.0);
    EXPECT_EQ(quantile(halves, 0.50001), 22.0);
    // 1 h of 20 at 18: 5 % are at or below it.
    const Track few = trackOf(series({{0, 18}, {1, 18}, {21, 22}, {40, 22}}), 40, 19);
    EXPECT_EQ(quantile(few, 0.05), 18.0);
    EXPECT_EQ(quantile(few, 0.95), 22.0);
}

TEST(Quantiles, MixPiecesAndLevels)
{
    // 0 → 4 in 2 h (2 K an hour), then 1 for 2 h (a gap between). At or below 1: 0.5 + 2 of 4 h.
    const Track track = trackOf(series({{0, 0}, {2, 4}, {10, 1}, {12, 1}}), 12, 2);
    EXPECT_NEAR(quantile(track, 0.05), 0.4, 1e-9);  // 0.2 h
    EXPECT_NEAR(quantile(track, 0.125), 1.0, 1e-9); // 0.5 h, where the level begins
    EXPECT_NEAR(quantile(track, 0.5), 1.0, 1e-9);   // 2 h
    EXPECT_NEAR(quantile(track, 0.75), 2.0, 1e-9);  // 3 h: 2 + 1
}

TEST(Quantiles, OfNoTimeAndOfOneLevel)
{
    EXPECT_TRUE(timeQuantiles(trackOf(series({{0, 1}}), 1, 1), 0.0, std::array{0.5}).empty());
    EXPECT_EQ(quantile(trackOf(series({{0, 7}, {1, 7}}), 1, 1), 0.05), 7.0);
}

TEST(Quantiles, CountFromAnInstantOn)
{
    // 0 → 10 in 10 h, from 5 h on: uniform between 5 and 10.
    const Track track = trackOf(series({{0, 0}, {10, 10}}), 10, 10);
    EXPECT_NEAR(timeQuantiles(track, 5 * hourMs, std::array{0.5}).at(0), 7.5, 1e-9);
    EXPECT_NEAR(momentsOf(track, 5 * hourMs).mean(), 7.5, 1e-12);
}

} // namespace
} // namespace holdband::test
