// Weighted least squares, and how a fit is graded. Figures by hand.
#include "core/analysis/regression.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace holdband::test {
namespace {

using namespace analysis;

TEST(Regression, OfFourPoints)
{
    // x 0 1 2 3, y 1 3 2 4: means 1.5 and 2.5; Sxx 5, Sxy 4, Syy 5. Slope 0.8, intercept 1.3;
    // residuals −0.3 0.9 −0.9 0.3, squares 1.8; s² = 0.9; R² = 1 − 1.8/5 = 0.64.
    const std::vector<FitPoint> points{{0, 1, 1}, {1, 3, 1}, {2, 2, 1}, {3, 4, 1}};
    const auto fit = fitLine(points);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->slope, 0.8, 1e-12);
    EXPECT_NEAR(fit->intercept, 1.3, 1e-12);
    EXPECT_NEAR(fit->residualSd, std::sqrt(0.9), 1e-12);
    EXPECT_NEAR(fit->rSquared, 0.64, 1e-12);
    EXPECT_NEAR(fit->slopeError, std::sqrt(0.9 / 5.0), 1e-12);
    // √(0.9 (1/4 + 2.25/5))
    EXPECT_NEAR(fit->interceptError, std::sqrt(0.9 * 0.7), 1e-12);
    EXPECT_NEAR(*fit->cvRmse(), std::sqrt(0.9) / 2.5, 1e-12);
    EXPECT_NEAR(fit->at(3.5), 4.1, 1e-12);
}

TEST(Regression, AWeightOfTwoCountsLikeTwoPoints)
{
    const std::vector<FitPoint> weighted{{0, 1, 2}, {1, 3, 1}, {2, 2, 1}, {3, 4, 4}};
    const std::vector<FitPoint> repeated{{0, 1, 1}, {0, 1, 1}, {1, 3, 1}, {2, 2, 1},
                                         {3, 4, 1}, {3, 4, 1}, {3, 4, 1}, {3, 4, 1}};
    const auto a = fitLine(weighted);
    const auto b = fitLine(repeated);
    EXPECT_NEAR(a->slope, b->slope, 1e-12);
    EXPECT_NEAR(a->intercept, b->intercept, 1e-12);
    EXPECT_NEAR(a->rSquared, b->rSquared, 1e-12);
}

TEST(Regression, OnlyRatiosOfWeightsMatter)
{
    const std::vector<FitPoint> hours{{0, 1, 12}, {1, 3, 11}, {2, 2, 13}, {3, 4, 12}};
    std::vector<FitPoint> days = hours;
    for (FitPoint& point : days)
        point.weight /= 24.0;
    EXPECT_NEAR(fitLine(hours)->slopeError, fitLine(days)->slopeError, 1e-12);
    EXPECT_NEAR(fitLine(hours)->at(2), fitLine(days)->at(2), 1e-12);
}

TEST(Regression, IsAbsentWhereThereIsNoLine)
{
    EXPECT_FALSE(fitLine(std::vector<FitPoint>{{0, 1, 1}, {1, 2, 1}}));
    EXPECT_FALSE(fitLine(std::vector<FitPoint>{{1, 1, 1}, {1, 2, 1}, {1, 3, 1}}));
    EXPECT_FALSE(fitLine(std::vector<FitPoint>{{0, 1, 1}, {1, 2, 0}, {2, 3, 1}}));
    EXPECT_EQ(fitLine(std::vector<FitPoint>{{0, 2, 1}, {1, 2, 1}, {2, 2, 1}})->rSquared, 0.0);
}

TEST(FitGrade, CoefficientOfVariationAndBias)
{
    // After CalTRACK §4.3.2 / ASHRAE Guideline 14-2014, n − 2: measured 10 12 14 16, predicted
    // 11 12 13 17: √(3/2)/13 = 9.4211 %; −1/(2 × 13) = −3.8462 %.
    const std::vector<double> measured{10, 12, 14, 16};
    const std::vector<double> predicted{11, 12, 13, 17};
    EXPECT_NEAR(*cvRmse(measured, predicted), 0.094211, 5e-7);
    EXPECT_NEAR(*nmbe(measured, predicted), -0.038462, 5e-7);
    EXPECT_FALSE(cvRmse(std::vector<double>{1, 2}, std::vector<double>{1, 2}));
    EXPECT_FALSE(nmbe(measured, std::vector<double>{1, 2, 3}));
    EXPECT_FALSE(cvRmse(std::vector<double>{-1, 0, 1}, std::vector<double>{1, 2, 3}));
}

TEST(FitSums, GiveTheLineOfThePointsThatAreLeft)
{
    // Far from the origin, so that sums of squares alone would lose digits.
    std::vector<FitPoint> points;
    for (int i = 0; i < 40; ++i)
        points.push_back({1000.0 + 0.37 * i, 5000.0 + 2.0 * i + (i % 7) - (i % 3), 1.0 + i % 5});
    FitSums sums(points.front().x, points.front().y);
    FitSums taken(points.front().x, points.front().y);
    for (int i = 0; i < 40; ++i) {
        sums.add(points[i]);
        if (i >= 25)
            taken.add(points[i]);
    }
    sums.remove(taken);
    sums.remove(points[24]);
    const auto wanted = fitLine({points.data(), 24});
    const auto fit = sums.fit();
    ASSERT_TRUE(wanted && fit);
    EXPECT_EQ(fit->count, 24u);
    EXPECT_NEAR(fit->slope, wanted->slope, 1e-10);
    EXPECT_NEAR(fit->at(1003.0), wanted->at(1003.0), 1e-8);
    EXPECT_NEAR(fit->residualSd, wanted->residualSd, 1e-9);
    EXPECT_NEAR(fit->meanX, wanted->meanX, 1e-9);
    EXPECT_NEAR(fit->spreadX, wanted->spreadX, 1e-8);
    EXPECT_NEAR(fit->slopeError, wanted->slopeError, 1e-9);
}

TEST(FitSums, HaveNoLineWhereThePointsHaveNone)
{
    FitSums sums(5.0, 1.0);
    for (const double y : {1.0, 2.0, 3.0, 4.0})
        sums.add({5.1, y, 1.0});
    EXPECT_FALSE(sums.fit()) << "all at one x";
    sums.add({9.0, 1.0, 1.0});
    EXPECT_TRUE(sums.fit());
    sums.remove({9.0, 1.0, 1.0});
    EXPECT_FALSE(sums.fit()) << "again";
}

} // namespace
} // namespace holdband::test
