// Properties of forecasts.
#include "core/analysis/backtest.h"
#include "core/analysis/planned_lift.h"
#include "tests/analysis/forecast_batches.h"
#include "tests/random.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <string>

namespace holdband::test {
namespace {

using namespace analysis;

double someOf(int low, int high)
{
    return between(low * 100, high * 100) / 100.0;
}

/// A setup of about 11 W + 2.4 W/K with 2 to 5 past batches.
ForecastBasis someBasis()
{
    ForecastBasis basis;
    const int count = between(2, 5);
    for (int i = 0; i < count; ++i) {
        const std::string name = "b" + std::to_string(i);
        basis.batches.push_back(
            pastBatch(name, past(someOf(4, 7), someOf(180, 210), someOf(3, 8), someOf(1, 3) / 10.0),
                      past(someOf(3, 6), someOf(48, 80), someOf(16, 20), someOf(3, 4) / 10.0)));
        for (const double lift : {4.0, 6.0, 8.0, 19.0})
            for (const BatchPoint& point :
                 batch(name, {{lift + someOf(0, 1), 11.0 + 2.4 * lift + someOf(-3, 3)}}))
                basis.pairs.push_back(point);
    }
    basis.resolutionKwh = 0.01;
    return basis;
}

ForecastPlan somePlan()
{
    ForecastPlan plan;
    plan.parts[BatchPart::beforeCrash] = {someOf(150, 250), someOf(0, 12), someOf(1, 3) / 10.0};
    plan.parts[BatchPart::crash] = {someOf(24, 80), someOf(14, 24), someOf(3, 4) / 10.0};
    return plan;
}

bool near(double a, double b)
{
    return std::abs(a - b) <= 1e-9 * std::max(1.0, std::abs(b));
}

RC_GTEST_PROP(ForecastProperty, TheOrderOfBatchesAndPairsChangesNothing, ())
{
    ForecastBasis basis = someBasis();
    const ForecastPlan plan = somePlan();
    const Forecast before = forecast(basis, plan);
    const Backtest testedBefore = backtest(basis);
    std::reverse(basis.batches.begin(), basis.batches.end());
    std::reverse(basis.pairs.begin(), basis.pairs.end());
    const Forecast after = forecast(basis, plan);
    RC_ASSERT(before.total && after.total);
    RC_ASSERT(near(after.total->kwh, before.total->kwh));
    RC_ASSERT(near(after.total->halfWidth, before.total->halfWidth));
    RC_ASSERT(backtest(basis).hits == testedBefore.hits);
}

RC_GTEST_PROP(ForecastProperty, ALargerRoomDoubtNeverNarrows, ())
{
    const ForecastBasis basis = someBasis();
    ForecastPlan plan = somePlan();
    plan.roomDoubtK = someOf(0, 2);
    const Forecast less = forecast(basis, plan);
    plan.roomDoubtK += someOf(0, 2);
    const Forecast more = forecast(basis, plan);
    RC_ASSERT(more.total->kwh == less.total->kwh);
    RC_ASSERT(more.total->halfWidth >= less.total->halfWidth);
    for (const BatchPart part : bothParts)
        RC_ASSERT(more.parts[part]->energy.halfWidth >= less.parts[part]->energy.halfWidth);
}

RC_GTEST_PROP(ForecastProperty, TheTotalIsTheSumOfThePartsAndInsideItsInterval, ())
{
    const Forecast made = forecast(someBasis(), somePlan());
    double sum = 0.0;
    for (const BatchPart part : bothParts) {
        sum += made.parts[part]->energy.kwh;
        RC_ASSERT(made.parts[part]->extraPerHeat >= 0.0);
    }
    RC_ASSERT(near(made.total->kwh, sum));
    RC_ASSERT(made.total->low() < made.total->kwh && made.total->kwh < made.total->high());
    RC_ASSERT((made.lack == ForecastLack::tooLittle) == made.total->refused());
}

// Energy is a scale: twice the power and energy, and a register twice as coarse, double the
// forecast and leave the relative interval.
RC_GTEST_PROP(ForecastProperty, TwiceTheEnergyDoublesTheForecast, ())
{
    ForecastBasis basis = someBasis();
    const ForecastPlan plan = somePlan();
    const Forecast once = forecast(basis, plan);
    basis.resolutionKwh *= 2.0;
    for (BatchPoint& pair : basis.pairs)
        pair.point.y *= 2.0;
    for (PastBatch& each : basis.batches) {
        for (const BatchPart part : bothParts)
            each.parts[part]->kwh *= 2.0;
    }
    const Forecast twice = forecast(basis, plan);
    RC_ASSERT(near(twice.total->kwh, 2.0 * once.total->kwh));
    RC_ASSERT(near(twice.total->halfWidth, once.total->halfWidth));
}

// More errors of one size: the spread goes from the assumption to that size, and never past it.
RC_GTEST_PROP(ForecastProperty, MoreErrorsOfOneSizeBringTheSpreadNearerToIt, ())
{
    const double assumed = someOf(1, 20) / 100.0;
    const double error = someOf(1, 40) / 100.0;
    double distance = std::abs(assumed * assumed - error * error);
    for (std::size_t n = 2; n < 30; ++n) {
        // Q of n errors about their mean: (n − 1) · error².
        const ModeratedSpread spread =
            moderatedSpread(assumed * assumed, static_cast<double>(n - 1) * error * error, n);
        const double now = std::abs(spread.variance - error * error);
        RC_ASSERT(now <= distance + 1e-15);
        RC_ASSERT(spread.freedom == 3.0 + static_cast<double>(n));
        distance = now;
    }
}

RC_GTEST_PROP(ForecastProperty, ATypedRoomsLiftRisesWithItsMeanAndItsSwing, ())
{
    const double above = someOf(-10, 10);
    const double amplitude = someOf(0, 6);
    const double lift = meanLiftOfWave(above, amplitude);
    RC_ASSERT(lift >= std::max(0.0, above) - 1e-12);
    RC_ASSERT(meanLiftOfWave(above + someOf(0, 2), amplitude) >= lift - 1e-12);
    RC_ASSERT(meanLiftOfWave(above, amplitude + someOf(0, 2)) >= lift - 1e-12);
    // Lift and its opposite differ by the mean itself.
    RC_ASSERT(near(lift - meanLiftOfWave(-above, amplitude), above));
}

} // namespace
} // namespace holdband::test
