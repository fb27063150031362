// How well the forecasts would have known the past. The worked example is method.md 8.4's.
#include "core/analysis/backtest.h"

#include "tests/analysis/forecast_batches.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

TEST(Backtest, IsTheWorkedExample)
{
    const Backtest test = backtest(workedBasis());
    ASSERT_EQ(test.batches.size(), 2u);
    const BacktestedBatch& a = test.batches[0];
    EXPECT_EQ(a.batch, "a");
    EXPECT_NEAR(a.cameKwh, 9.2, 1e-12);
    EXPECT_NEAR(a.forecast.total->kwh, 9.64929, 5e-6);
    EXPECT_NEAR(a.forecast.total->low(), 8.29893, 5e-6);
    EXPECT_NEAR(a.forecast.total->high(), 11.2194, 5e-5);
    EXPECT_TRUE(a.inside());
    const BacktestedBatch& b = test.batches[1];
    EXPECT_NEAR(b.cameKwh, 10.3, 1e-12);
    // The page has 9.80790 and 11.4055, rounded twice: 9.807895 and 11.40555.
    EXPECT_NEAR(b.forecast.total->kwh, 9.807895, 5e-7);
    EXPECT_NEAR(b.forecast.total->low(), 8.43403, 5e-6);
    EXPECT_NEAR(b.forecast.total->high(), 11.40555, 5e-6);
    EXPECT_TRUE(b.inside());
    EXPECT_EQ(test.hits, 2u);
    EXPECT_EQ(test.judged, 2u);
    // The median of 1 − 9.2/9.64929 and 10.3/9.80790 − 1.
    EXPECT_NEAR(test.typicalError.value(), (0.0465620 + 0.0501743) / 2.0, 1e-6);
    EXPECT_FALSE(test.tooNarrow);
}

TEST(Backtest, OfOneBatchHasNothingToForecastItFrom)
{
    ForecastBasis basis = workedBasis();
    basis.batches.pop_back();
    const Backtest test = backtest(basis);
    ASSERT_EQ(test.batches.size(), 1u);
    EXPECT_FALSE(test.batches[0].judged());
    EXPECT_EQ(test.judged, 0u);
    EXPECT_FALSE(test.typicalError);
    EXPECT_FALSE(test.tooNarrow);
    EXPECT_TRUE(backtest({}).batches.empty());
}

TEST(Backtest, DoesNotCountRefusedIntervals)
{
    ForecastBasis basis = workedBasis();
    basis.resolutionKwh = 20.0;
    const Backtest test = backtest(basis);
    EXPECT_EQ(test.batches.size(), 2u);
    EXPECT_EQ(test.judged, 0u);
}

TEST(Backtest, LeavesOutABatchOfWhichNoPartCounts)
{
    ForecastBasis basis = workedBasis();
    basis.batches.push_back(pastBatch("c", {}, {}));
    EXPECT_EQ(backtest(basis).batches.size(), 2u);
}

// By hand, with intervals of 90 %: P(0 of 1) = 0.1; P(0 of 2) = 0.01, P(≤1 of 2) = 0.19; of 3,
// P(≤1) = 0.028, P(≤2) = 0.271; of 4, P(≤2) = 0.0523; of 5, P(≤3) = 0.0815, P(≤2) = 0.00856.
TEST(Backtest, SaysWhereHitsAreFewerThanChanceGives)
{
    EXPECT_FALSE(tooFewHits(0, 0));
    EXPECT_FALSE(tooFewHits(0, 1));
    EXPECT_TRUE(tooFewHits(0, 2));
    EXPECT_FALSE(tooFewHits(1, 2));
    EXPECT_TRUE(tooFewHits(1, 3));
    EXPECT_FALSE(tooFewHits(2, 3));
    EXPECT_FALSE(tooFewHits(2, 4));
    EXPECT_TRUE(tooFewHits(2, 5));
    EXPECT_FALSE(tooFewHits(3, 5));
    EXPECT_FALSE(tooFewHits(5, 5));
}

TEST(Backtest, ForecastsEachBatchFromTheOthers)
{
    ForecastBasis basis;
    for (const char* name : {"a", "b", "c", "d"}) {
        const double kwh = 4.0 * (name[0] % 2 == 0 ? 1.25 : 0.8);
        basis.batches.push_back(pastBatch(name, past(kwh, 100, 5, 0.5), {}));
        for (const BatchPoint& point : batch(name, {{4, 18}, {5, 20}, {7, 24}, {8, 26}}))
            basis.pairs.push_back(point);
    }
    // a and c used 3.2 kWh, b and d 5: each at the mean of the other three.
    const Backtest test = backtest(basis);
    EXPECT_EQ(test.judged, 4u);
    EXPECT_NEAR(test.batches[0].forecast.total->kwh, (2 * 5.0 + 3.2) / 3.0, 1e-9);
    EXPECT_NEAR(test.batches[1].forecast.total->kwh, (2 * 3.2 + 5.0) / 3.0, 1e-9);
}

} // namespace
} // namespace holdband::test
