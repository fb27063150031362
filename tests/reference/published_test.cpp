// Statistics and least squares checked against certified values of the NIST Statistical Reference
// Datasets (StRD).
#include "core/analysis/regression.h"
#include "core/analysis/statistics.h"
#include "tests/reference/strd_data.h"

#include <cmath>
#include <gtest/gtest.h>
#include <string>

namespace holdband::test {
namespace {

using namespace analysis;

void expectSummary(const std::vector<double>& values, double mean, double deviation, double share)
{
    const SampleSummary summary = summarise(values);
    EXPECT_NEAR(summary.mean, mean, std::abs(mean) * 1e-13);
    EXPECT_NEAR(summary.standardDeviation, deviation, deviation * share);
}

/// A first value, then 500 pairs.
std::vector<double> accuracySet(double first, double low, double high)
{
    std::vector<double> values{first};
    for (int i = 0; i < 500; ++i) {
        values.push_back(low);
        values.push_back(high);
    }
    return values;
}

TEST(Strd, NumericalAccuracySets)
{
    // StRD univariate: NumAcc1 … NumAcc4. The tolerances are those of the rounded inputs.
    expectSummary({10000001, 10000003, 10000002}, 10000002, 1, 1e-11);
    expectSummary(accuracySet(1.2, 1.1, 1.3), 1.2, 0.1, 1e-11);
    expectSummary(accuracySet(1000000.2, 1000000.1, 1000000.3), 1000000.2, 0.1, 1e-9);
    expectSummary(accuracySet(10000000.2, 10000000.1, 10000000.3), 10000000.2, 0.1, 1e-8);
}

TEST(Strd, TheTimeWeightedMomentsAreAsExact)
{
    // NumAcc4 as pieces of equal time; the formula Σx² − (Σx)²/n would lose all digits of 0.01.
    TimeMoments moments;
    for (const double value : accuracySet(10000000.2, 10000000.1, 10000000.3))
        moments.addPiece(1.0, value, value);
    // Population divisor: 0.1 √(1000/1001).
    EXPECT_NEAR(moments.standardDeviation(), 0.1 * std::sqrt(1000.0 / 1001.0), 1e-9);
    EXPECT_NEAR(moments.mean(), 10000000.2, 1e-6);
}

TEST(Strd, MichelsonsSpeedOfLight)
{
    // StRD Michelso: n 100, mean 299.8524, s 0.0790105478190518 (thousands of km/s).
    std::vector<double> values;
    for (const int speed : michelsonSpeeds)
        values.push_back((speed + 299000.0) / 1000.0);
    ASSERT_EQ(values.size(), 100u);
    expectSummary(values, 299.8524, 0.0790105478190518, 1e-11);
}

TEST(Strd, NorrisStraightLine)
{
    std::vector<FitPoint> points;
    for (const auto& [y, x] : norrisPoints)
        points.push_back({x, y, 1.0});
    ASSERT_EQ(points.size(), 36u);
    const auto fit = fitLine(points);
    ASSERT_TRUE(fit);
    // StRD linear regression, Norris: certified values.
    const auto expectSame = [](double actual, double certified) {
        EXPECT_NEAR(actual, certified, std::abs(certified) * 1e-10);
    };
    expectSame(fit->intercept, -0.262323073774029);
    expectSame(fit->interceptError, 0.232818234301152);
    expectSame(fit->slope, 1.00211681802045);
    expectSame(fit->slopeError, 4.29796848199937e-4);
    expectSame(fit->residualSd, 0.884796396144373);
    EXPECT_NEAR(fit->rSquared, 0.999993745883712, 1e-14);
}

TEST(StudentT, IntervalOfAMean)
{
    // t(0.975, 2) = 4.302652729911275, Student's distribution (as tabled, e.g. NIST/SEMATECH
    // e-Handbook 1.3.6.7.2: 4.303). 1, 2, 3: s = 1, half width 4.3027/√3.
    const std::vector<double> values{1, 2, 3};
    EXPECT_NEAR(*meanHalfWidth95(summarise(values)), 4.302652729911275 / std::sqrt(3.0), 1e-9);
    EXPECT_FALSE(meanHalfWidth95(summarise(std::vector<double>{1, 2})));
}

} // namespace
} // namespace holdband::test
