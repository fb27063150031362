// Interval arithmetic and the rule for who is ahead: section 6 of the method.
#include "core/analysis/bounded.h"

#include <gtest/gtest.h>
#include <limits>

namespace holdband::test {
namespace {

using namespace analysis;

TEST(Bounded, DifferenceAndRatioByIntervalArithmetic)
{
    const Bounded a{10, 9, 12};
    const Bounded b{5, 4, 6};
    // 9 − 6 … 12 − 4; 9/6 … 12/4.
    EXPECT_EQ(differenceOf(a, b), (Bounded{5, 3, 8}));
    EXPECT_EQ(ratioOf(a, b), (Bounded{2, 1.5, 3}));
}

TEST(Bounded, RatioToZeroIsAbsentOrUnbounded)
{
    EXPECT_FALSE(ratioOf(Bounded{10, 9, 12}, exactly(0)));
    EXPECT_EQ(ratioOf(Bounded{10, 9, 12}, Bounded{5, 0, 6}), (Bounded{2, 1.5, std::nullopt}));
    EXPECT_FALSE(ratioOf(std::nullopt, exactly(1)));
    EXPECT_FALSE(differenceOf(exactly(1), std::nullopt));
}

TEST(Bounded, SizeOfAFigure)
{
    EXPECT_EQ(sizeOf(Bounded{-0.3, -0.8, 0.2}), (Bounded{0.3, 0.0, 0.8}));
    EXPECT_EQ(sizeOf(Bounded{-2, -3, -1}), (Bounded{2, 1, 3}));
    EXPECT_EQ(sizeOf(Bounded{2, 1, 3}), (Bounded{2, 1, 3}));
    EXPECT_EQ(sizeOf(Bounded{-2, std::nullopt, std::nullopt}).value, 2.0);
}

TEST(Bounded, UncertaintyHasAFloor)
{
    EXPECT_EQ(withUncertainty(0.3, 0.5, 0.0), (Bounded{0.3, 0.0, 0.8}));
    EXPECT_FALSE(withUncertainty(0.3, std::nullopt, 0.0).bounded());
}

TEST(Bounded, OfEnergyWithoutAnUpperEnd)
{
    const Bounded figure = fromEnergy({3, 2.95, std::numeric_limits<double>::infinity(), {}});
    EXPECT_EQ(figure.low, 2.95);
    EXPECT_FALSE(figure.high);
}

TEST(Ahead, OnlyWhereBoundsDoNotOverlap)
{
    const Bounded small{1, 0.5, 1.5};
    EXPECT_EQ(whoIsAhead(small, Bounded{2, 1.6, 2.4}, Better::less), Ahead::a);
    EXPECT_EQ(whoIsAhead(small, Bounded{2, 1.6, 2.4}, Better::more), Ahead::b);
    EXPECT_EQ(whoIsAhead(Bounded{2, 1.6, 2.4}, small, Better::less), Ahead::b);
    EXPECT_EQ(whoIsAhead(small, Bounded{2, 1.5, 2.4}, Better::less), Ahead::tooClose);
    EXPECT_EQ(whoIsAhead(small, Bounded{2, 1.2, 2.4}, Better::less), Ahead::tooClose);
}

TEST(Ahead, NotByTheRoundingOfBinaryFractions)
{
    // Two registers of 0.1 kWh: 3.2 ± 0.1 and 3.4 ± 0.1 touch at 3.3 (method, section 6).
    const Bounded less{3.2, 3.2 - 0.1, 3.2 + 0.1};
    const Bounded more{3.4, 0.1 * 33.000000000000007, 3.5};
    ASSERT_LT(*less.high, *more.low);
    EXPECT_EQ(whoIsAhead(less, more, Better::less), Ahead::tooClose);
    EXPECT_EQ(whoIsAhead(more, less, Better::less), Ahead::tooClose);
    const Bounded apart{3.4, 3.3 * (1.0 + 3e-9), 3.5};
    EXPECT_EQ(whoIsAhead(less, apart, Better::less), Ahead::a);
}

TEST(Ahead, NobodyWithoutKnownBounds)
{
    const Bounded plain{1, std::nullopt, std::nullopt};
    EXPECT_FALSE(whoIsAhead(plain, Bounded{9, 8, 10}, Better::less));
    EXPECT_FALSE(whoIsAhead(std::nullopt, Bounded{9, 8, 10}, Better::less));
    // A reset leaves no upper bound: at least 8 is still more than at most 2.
    EXPECT_EQ(whoIsAhead(Bounded{9, 8, std::nullopt}, Bounded{1, 0, 2}, Better::less), Ahead::b);
    EXPECT_FALSE(whoIsAhead(Bounded{9, 1, std::nullopt}, Bounded{1, 0, 2}, Better::less));
}

TEST(Ahead, PlainSumsAreTheirOwnBounds)
{
    EXPECT_EQ(whoIsAhead(exactly(120), exactly(121), Better::less), Ahead::a);
    EXPECT_EQ(whoIsAhead(exactly(120), exactly(120), Better::less), Ahead::tooClose);
}

} // namespace
} // namespace holdband::test
