// The time-weighted histogram: figures by hand.
#include "core/analysis/distribution.h"
#include "tests/analysis/builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;
using ::testing::DoubleNear;
using ::testing::ElementsAre;
using ::testing::Pointwise;

Track trackOf(const Series& series, double untilHour)
{
    return cover(series, std::chrono::hours{2}, {hour(0), hour(untilHour)});
}

std::vector<double> hoursIn(const Distribution& distribution)
{
    std::vector<double> hours;
    for (const double ms : distribution.binMs)
        hours.push_back(ms / hourMs);
    return hours;
}

TEST(Distribution, APieceIsSpreadEvenlyOverItsBins)
{
    // 0 → 4 in 2 h: half an hour in each unit.
    const auto spread =
        distributionOf(trackOf(series({{0, 0}, {2, 4}}), 2), 0.0, std::array{0.0, 1.0, 1.5, 4.0});
    EXPECT_THAT(hoursIn(spread), Pointwise(DoubleNear(1e-12), {0.5, 0.25, 1.25}));
    EXPECT_DOUBLE_EQ(spread.share(0), 0.25);
    EXPECT_DOUBLE_EQ(spread.belowMs + spread.aboveMs, 0.0);
}

TEST(Distribution, TimeBeyondTheOutermostEdgesIsCountedSeparately)
{
    // 0 → 4 → 0 in 4 h with bins from 1 to 3.
    const auto spread = distributionOf(trackOf(series({{0, 0}, {2, 4}, {4, 0}}), 4), 0.0,
                                       std::array{1.0, 2.0, 3.0});
    EXPECT_THAT(hoursIn(spread), Pointwise(DoubleNear(1e-12), {1.0, 1.0}));
    EXPECT_DOUBLE_EQ(spread.shareBelow(), 0.25);
    EXPECT_DOUBLE_EQ(spread.shareAbove(), 0.25);
}

TEST(Distribution, ALevelBelongsToTheBinAboveItAndTheLastEdgeToTheLastBin)
{
    const auto at = [](double level) {
        return hoursIn(distributionOf(trackOf(series({{0, level}, {1, level}}), 1), 0.0,
                                      std::array{-1.0, 0.0, 1.0}));
    };
    EXPECT_THAT(at(-1.0), ElementsAre(1.0, 0.0));
    EXPECT_THAT(at(0.0), ElementsAre(0.0, 1.0));
    EXPECT_THAT(at(1.0), ElementsAre(0.0, 1.0));
    EXPECT_THAT(at(1.0 + 5e-7), ElementsAre(0.0, 1.0)) << "the slack counts as inside";
    EXPECT_THAT(at(1.1), ElementsAre(0.0, 0.0));
}

TEST(Distribution, GapsAndTimeBeforeAreLeftOut)
{
    const Track track = trackOf(series({{0, 0}, {1, 1}, {9, 1}, {10, 2}}), 10);
    const auto all = distributionOf(track, 0.0, std::array{0.0, 1.0, 2.0});
    EXPECT_THAT(hoursIn(all), Pointwise(DoubleNear(1e-12), {1.0, 1.0}));
    const auto later = distributionOf(track, 0.5 * hourMs, std::array{0.0, 1.0, 2.0});
    EXPECT_THAT(hoursIn(later), Pointwise(DoubleNear(1e-12), {0.5, 1.0}));
    const auto none = distributionOf(Track{}, 0.0, std::array{0.0, 1.0});
    EXPECT_DOUBLE_EQ(none.share(0), 0.0);
    EXPECT_DOUBLE_EQ(none.shareAbove(), 0.0);
}

TEST(Distribution, OfTheWorkedExampleAgreesWithItsVerdict)
{
    const JudgedBatch batch = judged(batchOf({hold("Hold", 20.0)}, 10.0), workedSeries(), 90.0);
    const auto spread = distributionOf(batch, std::array{-1.0, 0.0, 1.0});
    EXPECT_NEAR(spread.belowMs, 1 * hourMs, 1e-6);
    EXPECT_NEAR(spread.aboveMs, 2 * hourMs, 1e-6);
    // Below the target: 20 → 19.5 (1 h), 19.5 → 19 (½ h), 19 → 19.5 (½ h). Above or at it: 20 →
    // 20.5 (1 h), 20.5 → 21 (½ h), 21 → 20 (½ h), 20 → 20 (1 h).
    EXPECT_THAT(hoursIn(spread), Pointwise(DoubleNear(1e-9), {2.0, 3.0}));
    const auto extent = extentOf(batch);
    ASSERT_TRUE(extent);
    EXPECT_DOUBLE_EQ(extent->least, -1.5);
    EXPECT_DOUBLE_EQ(extent->most, 2.0);
}

TEST(BandEdges, IncludeTheBandsOwnEdges)
{
    EXPECT_THAT(bandEdges(1.0, {-0.1, 0.2}, 2), ElementsAre(-1.0, -0.5, 0.0, 0.5, 1.0));
    EXPECT_THAT(bandEdges(1.0, {-1.2, 2.1}, 2),
                ElementsAre(-1.5, -1.0, -0.5, 0.0, 0.5, 1.0, 1.5, 2.0, 2.5));
    const auto wide = bandEdges(0.7, {-100.0, 100.0}, 3, 4);
    EXPECT_EQ(wide.size(), 25u) << "no further than four tolerances";
    EXPECT_THAT(wide, ::testing::AllOf(::testing::Contains(0.7), ::testing::Contains(-0.7)));
    EXPECT_TRUE(std::is_sorted(wide.begin(), wide.end()));
}

} // namespace
} // namespace holdband::test
