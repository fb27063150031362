// Where the total costs of two arrangements cross. Figures by hand.
#include "core/analysis/bounded.h"
#include "core/analysis/total_cost.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

SideCost cost(double parts, double perBatch, double doubt)
{
    return {parts, {perBatch, perBatch - doubt, perBatch + doubt}};
}

TEST(Crossing, IsWhereTheMoreExpensiveOneSavesWithEachBatch)
{
    // 400 + 1 N = 100 + 4 N at N = 100; savings 3 ± 1.
    const Crossing crossing = crossingOf(cost(400, 1, 0.5), cost(100, 4, 0.5));
    EXPECT_EQ(crossing.kind, CrossingKind::crosses);
    EXPECT_DOUBLE_EQ(crossing.batches, 100.0);
    EXPECT_EQ(crossing.cheaperFirst, Ahead::b);
    EXPECT_DOUBLE_EQ(*crossing.earliest, 75.0);
    EXPECT_DOUBLE_EQ(*crossing.latest, 150.0);
    EXPECT_TRUE(crossing.sure);
    const SideCost a = cost(400, 1, 0.5);
    EXPECT_DOUBLE_EQ(a.after(100), cost(100, 4, 0.5).after(100));
}

TEST(Crossing, IsTheSameFromTheOtherSide)
{
    const Crossing crossing = crossingOf(cost(100, 4, 0.5), cost(400, 1, 0.5));
    EXPECT_DOUBLE_EQ(crossing.batches, 100.0);
    EXPECT_EQ(crossing.cheaperFirst, Ahead::a);
    EXPECT_DOUBLE_EQ(*crossing.earliest, 75.0);
    EXPECT_DOUBLE_EQ(*crossing.latest, 150.0);
}

TEST(Crossing, IsNeverWhereTheCheaperOneStaysCheaper)
{
    const Crossing crossing = crossingOf(cost(100, 1, 0.2), cost(400, 4, 0.2));
    EXPECT_EQ(crossing.kind, CrossingKind::never);
    EXPECT_EQ(crossing.cheaperFirst, Ahead::a);
    EXPECT_TRUE(crossing.sure);
    EXPECT_FALSE(crossing.earliest);
}

TEST(Crossing, IsUncertainWhereTheBoundsAllowBoth)
{
    // A saves 300 on parts; its energy costs 0 … 2 more with each batch, or up to 1 less.
    const Crossing crosses = crossingOf({100, {2.0, 1.0, 3.0}}, {400, {1.5, 1.0, 2.0}});
    EXPECT_EQ(crosses.kind, CrossingKind::crosses);
    EXPECT_DOUBLE_EQ(crosses.batches, 600.0);
    EXPECT_DOUBLE_EQ(*crosses.earliest, 150.0);
    EXPECT_FALSE(crosses.latest);
    EXPECT_FALSE(crosses.sure);
    const Crossing never = crossingOf({100, {1.4, 1.0, 3.0}}, {400, {1.5, 1.0, 2.0}});
    EXPECT_EQ(never.kind, CrossingKind::never);
    EXPECT_DOUBLE_EQ(*never.earliest, 150.0);
    EXPECT_FALSE(never.sure);
}

TEST(Crossing, OfEqualParts)
{
    const Crossing crossing = crossingOf(cost(100, 1, 0.2), cost(100, 2, 0.2));
    EXPECT_EQ(crossing.kind, CrossingKind::never);
    EXPECT_EQ(crossing.cheaperFirst, Ahead::a);
    EXPECT_TRUE(crossing.sure);
    EXPECT_FALSE(crossingOf(cost(100, 1, 0.6), cost(100, 2, 0.6)).sure);
    EXPECT_EQ(crossingOf(cost(100, 1, 0), cost(100, 1, 0)).kind, CrossingKind::same);
}

TEST(Crossing, WithoutKnownBounds)
{
    const Crossing crossing = crossingOf({400, {1, {}, {}}}, {100, {4, {}, {}}});
    EXPECT_DOUBLE_EQ(crossing.batches, 100.0);
    EXPECT_FALSE(crossing.earliest);
    EXPECT_FALSE(crossing.sure);
}

} // namespace
} // namespace holdband::test
