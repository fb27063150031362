// Intervals of a line by batch. The worked example is method.md 8.2's, to 6 digits.
#include "core/analysis/lift_interval.h"

#include "tests/analysis/lift_batches.h"

#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using namespace analysis;
using ::testing::ElementsAre;

const std::vector<BatchPoint> batchA = batch("a", {{4, 20}, {6, 25}, {8, 30}});
const std::vector<BatchPoint> batchB = batch("b", {{5, 25}, {7, 29}, {9, 33}});
const std::vector<BatchPoint> batchC = batch("c", {{3, 16}, {6, 23}, {9, 30}});

TEST(LiftInterval, OfThreeBatchesIsTheWorkedExample)
{
    const auto interval = LiftInterval::of(together({batchA, batchB, batchC}));
    ASSERT_TRUE(interval);
    EXPECT_EQ(interval->source(), SpreadSource::byBatch);
    EXPECT_EQ(interval->groups(), 3u);
    EXPECT_NEAR(interval->meanResponse(7.0).value, 27.2963, 5e-5);
    EXPECT_NEAR(interval->meanResponse(7.0).halfWidth, 4.51805, 5e-6);
    EXPECT_NEAR(interval->oneMoreBatch(7.0).halfWidth, 9.00014, 5e-6);
}

TEST(LiftInterval, OfTwoBatchesIsPartlyAssumed)
{
    const auto interval = LiftInterval::of(together({batchA, batchB}));
    ASSERT_TRUE(interval);
    EXPECT_EQ(interval->source(), SpreadSource::assumed);
    EXPECT_NEAR(interval->meanResponse(7.0).value, 28.2, 1e-9);
    EXPECT_NEAR(interval->meanResponse(7.0).halfWidth, 2.97207, 5e-6);
}

// By hand: y = 10 + 2x exactly, mean 22 at x = 6; so S² = (0.05 · 22)² with one batch, ν = 4, and
// nothing from the slope.
TEST(LiftInterval, OfOneBatchOnALineIsTheAssumptionAlone)
{
    const auto interval = LiftInterval::of(batch("a", {{4, 18}, {5, 20}, {7, 24}, {8, 26}}));
    ASSERT_TRUE(interval);
    const double t = boost::math::quantile(boost::math::students_t(4.0), 0.975);
    EXPECT_NEAR(interval->meanResponse(4.0).value, 18.0, 1e-9);
    EXPECT_NEAR(interval->meanResponse(4.0).halfWidth, t * 1.1, 1e-9);
    EXPECT_NEAR(interval->oneMoreBatch(4.0).halfWidth, t * 1.1 * std::sqrt(2.0), 1e-9);
    EXPECT_NEAR(interval->slope().halfWidth, 0.0, 1e-6);
}

TEST(LiftInterval, NeedsALine)
{
    EXPECT_FALSE(LiftInterval::of(batch("a", {{4, 18}, {5, 20}})));
    EXPECT_FALSE(LiftInterval::of(batch("a", {{4, 18}, {4, 20}, {4, 21}})));
    EXPECT_FALSE(LiftInterval::of({}));
}

TEST(LiftInterval, IsAssumedWhereALineWithoutOneBatchIsMissing)
{
    // Only c has another lift than 5.
    const auto interval = LiftInterval::of(
        together({batch("a", {{5, 20}, {5, 21}, {5, 22}}), batch("b", {{5, 20}, {5, 21}, {5, 22}}),
                  batch("c", {{4, 20}, {6, 21}, {8, 22}})}));
    ASSERT_TRUE(interval);
    EXPECT_EQ(interval->groups(), 3u);
    EXPECT_EQ(interval->source(), SpreadSource::assumed);
}

std::vector<BatchPoint> pointsOf(const std::vector<std::vector<std::string>>& batches)
{
    std::vector<BatchPoint> points;
    for (const auto& of : batches)
        points.push_back({{static_cast<double>(points.size()), 1.0, 1.0}, of});
    return points;
}

TEST(BatchGroups, AreBatchesThatShareNoPoint)
{
    const auto groups = batchGroups(
        pointsOf({{"a"}, {"a"}, {"a"}, {"b"}, {"b", "c"}, {"c"}, {"d"}, {"d"}, {"d"}, {"d"}}));
    EXPECT_THAT(groups, ElementsAre(ElementsAre(0u, 1u, 2u), ElementsAre(3u, 4u, 5u),
                                    ElementsAre(6u, 7u, 8u, 9u)));
}

TEST(BatchGroups, OfFewPointsJoinTheOneBeforeAndTheFirstTheNext)
{
    EXPECT_THAT(
        batchGroups(pointsOf({{"a"}, {"b"}, {"b"}, {"b"}, {"c"}, {"c"}, {"d"}, {"d"}, {"d"}})),
        ElementsAre(ElementsAre(0u, 1u, 2u, 3u, 4u, 5u), ElementsAre(6u, 7u, 8u)));
    EXPECT_THAT(batchGroups(pointsOf({{"a"}, {"b"}})), ElementsAre(ElementsAre(0u, 1u)));
    EXPECT_TRUE(batchGroups({}).empty());
}

} // namespace
} // namespace holdband::test
