// The energy of the next batch. The worked example is method.md 8.1's, to 6 digits; the other cases
// follow its rules by hand.
#include "core/analysis/forecast.h"

#include "tests/analysis/forecast_batches.h"

#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace holdband::test {
namespace {

using namespace analysis;

double quantile95(double freedom)
{
    return boost::math::quantile(boost::math::students_t(freedom), 0.95);
}

TEST(Forecast, IsTheWorkedExample)
{
    const Forecast made = forecast(workedBasis(), workedPlan());
    EXPECT_EQ(made.lack, ForecastLack::none);
    ASSERT_TRUE(made.line);
    EXPECT_NEAR(made.line->intercept, 10.8738, 5e-5);
    EXPECT_NEAR(made.line->slope, 2.38318, 5e-6);
    const auto& before = made.parts[BatchPart::beforeCrash];
    ASSERT_TRUE(before);
    EXPECT_NEAR(before->lineKwh, 4.40781, 5e-6);
    EXPECT_NEAR(before->extraPerHeat, 2.47880, 5e-6);
    EXPECT_NEAR(before->energy.kwh, 5.13410, 5e-6);
    const auto& crash = made.parts[BatchPart::crash];
    ASSERT_TRUE(crash);
    EXPECT_NEAR(crash->lineKwh, 2.80979, 5e-6);
    EXPECT_NEAR(crash->extraPerHeat, 1.51121, 5e-6);
    EXPECT_NEAR(crash->energy.kwh, 3.35249, 5e-6);
    ASSERT_TRUE(made.total);
    EXPECT_NEAR(made.total->kwh, 8.48659, 5e-6);
    EXPECT_NEAR(made.total->spread.variance, 0.00223369, 5e-9);
    EXPECT_NEAR(made.total->lineError2, 0.000201666, 5e-10);
    EXPECT_EQ(made.total->spread.freedom, 5.0);
    EXPECT_NEAR(made.total->halfWidth, 0.120098, 5e-7);
    EXPECT_NEAR(made.total->low(), 7.52619, 5e-6);
    EXPECT_NEAR(made.total->high(), 9.56953, 5e-6);
    EXPECT_EQ(made.total->batches, 2u);
    EXPECT_EQ(made.total->groups, 2u);
    EXPECT_FALSE(made.total->outside);
}

TEST(Forecast, OfATypedRoomIsTheWorkedExample)
{
    ForecastPlan plan = workedPlan();
    plan.roomDoubtK = 1.0;
    const Forecast made = forecast(workedBasis(), plan);
    ASSERT_TRUE(made.total);
    EXPECT_NEAR(made.total->low(), 7.00630, 5e-6);
    EXPECT_NEAR(made.total->high(), 10.2796, 5e-5);
}

TEST(Forecast, OfAPartAssumesMoreSpread)
{
    // By the rules: e² and Q from the part alone, c 0.08.
    const Forecast made = forecast(workedBasis(), workedPlan());
    const EnergyForecast& crash = made.parts[BatchPart::crash]->energy;
    const LinearFit& line = *made.line;
    const double slope = line.residualSd * (20.0 - line.meanX) * 0.048 / std::sqrt(line.spreadX);
    EXPECT_NEAR(crash.lineError2, std::pow(slope / crash.kwh, 2), 1e-12);
    EXPECT_GE(crash.spread.variance, 4.0 * 0.08 * 0.08 / 5.0);
    EXPECT_NEAR(crash.halfWidth,
                quantile95(5.0) * std::sqrt(crash.spread.variance * 1.5 + crash.lineError2), 1e-12);
}

TEST(Forecast, WithoutABatchKnowsNothing)
{
    ForecastBasis basis = workedBasis();
    basis.batches.clear();
    const Forecast made = forecast(basis, workedPlan());
    EXPECT_EQ(made.lack, ForecastLack::noBatch);
    EXPECT_FALSE(made.total);
    EXPECT_FALSE(made.line);
}

TEST(Forecast, WithoutALineKnowsNothing)
{
    ForecastBasis basis = workedBasis();
    basis.pairs = batch("a", {{4, 20}, {6, 25}});
    const Forecast made = forecast(basis, workedPlan());
    EXPECT_EQ(made.lack, ForecastLack::noLine);
    EXPECT_FALSE(made.total);
    EXPECT_FALSE(made.parts[BatchPart::crash]);
}

TEST(Forecast, IgnoresPairsOfOtherBatches)
{
    ForecastBasis basis = workedBasis();
    const Forecast before = forecast(basis, workedPlan());
    for (const BatchPoint& pair : batch("stranger", {{5, 200}, {8, 100}, {9, 50}}))
        basis.pairs.push_back(pair);
    EXPECT_EQ(forecast(basis, workedPlan()).total->halfWidth, before.total->halfWidth);
}

TEST(Forecast, OfOneBatchIsTheAssumptionAlone)
{
    // y = 10 + 2x exactly, so e² is 0. The batch itself used the line's energy and 1 kWh of extra.
    ForecastBasis basis;
    basis.batches = {pastBatch("a", past(0.020 * 100 + 1.0, 100, 5, 0.5), {})};
    basis.pairs = batch("a", {{4, 18}, {5, 20}, {7, 24}, {8, 26}});
    ForecastPlan plan;
    plan.parts[BatchPart::beforeCrash] = {200, 6, 0.25};
    const Forecast made = forecast(basis, plan);
    ASSERT_TRUE(made.total);
    EXPECT_NEAR(made.total->kwh, 0.022 * 200 + 0.5, 1e-9);
    EXPECT_EQ(made.total->spread.errors, 0u);
    EXPECT_EQ(made.total->spread.freedom, 4.0);
    EXPECT_NEAR(made.total->halfWidth, quantile95(4.0) * 0.05 * std::numbers::sqrt2, 1e-7);
    EXPECT_NEAR(made.parts[BatchPart::beforeCrash]->energy.halfWidth,
                quantile95(4.0) * 0.08 * std::numbers::sqrt2, 1e-7);
    EXPECT_FALSE(made.parts[BatchPart::crash]);

    basis.shared = true;
    const Forecast shared = forecast(basis, plan);
    EXPECT_NEAR(shared.total->halfWidth, quantile95(4.0) * 0.12 * std::numbers::sqrt2, 1e-7);
    EXPECT_NEAR(shared.parts[BatchPart::beforeCrash]->energy.halfWidth,
                quantile95(4.0) * 0.15 * std::numbers::sqrt2, 1e-7);
}

TEST(Forecast, WithoutABatchForOnePartHasNoTotal)
{
    ForecastBasis basis = workedBasis();
    for (PastBatch& each : basis.batches)
        each.parts[BatchPart::crash].reset();
    const Forecast made = forecast(basis, workedPlan());
    EXPECT_EQ(made.lack, ForecastLack::noBatch);
    EXPECT_TRUE(made.parts[BatchPart::beforeCrash]);
    EXPECT_FALSE(made.parts[BatchPart::crash]);
    EXPECT_FALSE(made.total);
}

TEST(Forecast, CountsAnUnknownHeatAsOneForEachBatch)
{
    ForecastBasis basis = workedBasis();
    basis.batches[0].parts[BatchPart::beforeCrash]->conditions.heatKwh.reset();
    const Forecast made = forecast(basis, workedPlan());
    const PartForecast& before = *made.parts[BatchPart::beforeCrash];
    EXPECT_FALSE(before.heatKnown);
    // (4.9 + 5.6 − 192 h at the line's power at 5 and 6 K) / 2 batches
    const double extra = (10.5 - 0.192 * (made.line->at(5.0) + made.line->at(6.0))) / 2.0;
    EXPECT_NEAR(before.extraPerHeat, extra, 1e-12);
    EXPECT_NEAR(before.extraKwh, extra, 1e-12);
    EXPECT_TRUE(made.parts[BatchPart::crash]->heatKnown);

    ForecastPlan unknown = workedPlan();
    unknown.parts[BatchPart::crash]->heatKwh.reset();
    EXPECT_FALSE(forecast(workedBasis(), unknown).parts[BatchPart::crash]->heatKnown);
}

TEST(Forecast, HasNoExtraBelowTheLine)
{
    ForecastBasis basis = workedBasis();
    for (PastBatch& each : basis.batches)
        each.parts[BatchPart::beforeCrash]->kwh = 1.0;
    const Forecast made = forecast(basis, workedPlan());
    EXPECT_EQ(made.parts[BatchPart::beforeCrash]->extraKwh, 0.0);
}

TEST(Forecast, IsHalfWiderOver2KOutsideTheLiftsSeen)
{
    // The pairs' lifts are 4 to 20 K.
    const auto made = [](double before, double crash) {
        ForecastPlan plan = workedPlan();
        plan.parts[BatchPart::beforeCrash]->liftK = before;
        plan.parts[BatchPart::crash]->liftK = crash;
        return forecast(workedBasis(), plan);
    };
    const auto plain = [](const EnergyForecast& of) {
        return quantile95(of.spread.freedom) * std::sqrt(of.spread.variance * 1.5 + of.lineError2);
    };
    EXPECT_FALSE(made(2.0, 22.0).total->outside);
    for (const auto& [before, crash] : {std::pair{1.99, 20.0}, std::pair{4.0, 22.01}}) {
        const Forecast outside = made(before, crash);
        EXPECT_TRUE(outside.total->outside);
        EXPECT_NEAR(outside.total->halfWidth, 1.5 * plain(*outside.total), 1e-12);
        EXPECT_NE(outside.parts[BatchPart::beforeCrash]->energy.outside,
                  outside.parts[BatchPart::crash]->energy.outside);
    }
}

TEST(Forecast, IsRefusedWhereTheIntervalGoesBeyondTwice)
{
    // c² = 0.05² + r²/(6Ê²): with r of 20 kWh the half width is far over ln 2.
    ForecastBasis basis = workedBasis();
    basis.resolutionKwh = 20.0;
    const Forecast made = forecast(basis, workedPlan());
    EXPECT_EQ(made.lack, ForecastLack::tooLittle);
    ASSERT_TRUE(made.total);
    EXPECT_TRUE(made.total->refused());
    EXPECT_TRUE(made.parts[BatchPart::crash]->energy.refused());

    EnergyForecast edge;
    edge.halfWidth = std::numbers::ln2;
    EXPECT_FALSE(edge.refused());
    edge.halfWidth = std::nextafter(std::numbers::ln2, 1.0);
    EXPECT_TRUE(edge.refused());
}

TEST(Forecast, OfNoEnergyIsRefused)
{
    ForecastBasis basis;
    basis.batches = {pastBatch("a", past(0.0, 100, 0, 0.5), {})};
    basis.pairs = batch("a", {{4, 1}, {5, 2}, {6, 3}}); // 0 W and less below 3 K
    ForecastPlan plan;
    plan.parts[BatchPart::beforeCrash] = {100, 0, 0.5};
    const Forecast made = forecast(basis, plan);
    ASSERT_TRUE(made.total);
    EXPECT_EQ(made.total->kwh, 0.0);
    EXPECT_EQ(made.lack, ForecastLack::tooLittle);
}

TEST(Forecast, LeavesABatchThatUsedNothingOutOfTheSpread)
{
    ForecastBasis basis = workedBasis();
    basis.batches.push_back(
        pastBatch("c", past(0.0, 192, 5, extractHeatKwh(1.6)), past(0.0, 72, 18, crashHeatKwh())));
    const Forecast made = forecast(basis, workedPlan());
    EXPECT_EQ(made.total->batches, 3u);
    EXPECT_EQ(made.total->spread.errors, 2u);
}

TEST(Forecast, CountsBatchesThatShareAPairAsOneGroup)
{
    ForecastBasis basis = workedBasis();
    basis.pairs[0].of = {"a", "b"};
    EXPECT_EQ(forecast(basis, workedPlan()).total->groups, 1u);
}

TEST(Forecast, WithoutABatchLeavesItsPairsOutUnlessAnotherRanInThem)
{
    ForecastBasis basis = workedBasis();
    basis.pairs[0].of = {"a", "b"};
    const ForecastBasis others = without(basis, 0);
    ASSERT_EQ(others.batches.size(), 1u);
    EXPECT_EQ(others.batches[0].batch, "b");
    EXPECT_EQ(others.pairs.size(), 4u);
}

TEST(ModeratedSpread, WeighsTheAssumptionAsFourDegreesOfFreedom)
{
    EXPECT_EQ(moderatedSpread(0.01, 0.0, 0).variance, 0.01);
    EXPECT_EQ(moderatedSpread(0.01, 0.0, 0).freedom, 4.0);
    EXPECT_EQ(moderatedSpread(0.01, 0.0, 1).variance, 0.01);
    EXPECT_EQ(moderatedSpread(0.01, 0.06, 7).freedom, 10.0);
    EXPECT_NEAR(moderatedSpread(0.01, 0.06, 7).variance, 0.01, 1e-15);
    // Tables of Student's t: 2.132 at 4 degrees, 1.812 at 10.
    EXPECT_NEAR(forecastQuantile({0.0, 4.0, 0}), 2.132, 5e-4);
    EXPECT_NEAR(forecastQuantile({0.0, 10.0, 7}), 1.812, 5e-4);
}

} // namespace
} // namespace holdband::test
