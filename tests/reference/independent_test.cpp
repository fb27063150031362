// Time-weighted figures compared with GSL: adaptive integration of an interpolated series, weighted
// statistics of a dense sampling, and its least squares. Random series, fixed generator.
#include "core/analysis/regression.h"
#include "tests/analysis/builders.h"

#include <algorithm>
#include <cmath>
#include <gsl/gsl_cdf.h>
#include <gsl/gsl_fit.h>
#include <gsl/gsl_interp.h>
#include <gsl/gsl_statistics_double.h>
#include <gtest/gtest.h>
#include <memory>
#include <random>

namespace holdband::test {
namespace {

using namespace analysis;

struct Trial {
    Series beer;
    Batch batch;
};

/// Readings every 5 … 20 min over two days with gaps of up to 3 h; a hold, a ramp, a hold.
Trial trialOf(unsigned number)
{
    std::mt19937 random(number);
    std::uniform_int_distribution<int> step(5, 20);
    std::uniform_int_distribution<int> chance(0, 29);
    std::uniform_real_distribution<double> change(-0.4, 0.4);
    std::uniform_int_distribution<int> quarter(1, 8);
    Trial trial;
    double value = 20.0;
    for (int minute = -60; minute < 2940;) {
        trial.beer.at.push_back(zero + std::chrono::minutes{minute});
        trial.beer.value.push_back(value);
        minute += chance(random) == 0 ? 9 * step(random) : step(random);
        value += change(random);
    }
    trial.batch = batchOf({hold("Hold", 20, 16), ramp("Rise", 22, 12), hold("Rest", 22)}, 48);
    trial.batch.tolerance = TemperatureDifference::kelvins(quarter(random) / 4.0);
    trial.batch.schedule[0].settleAllowed = Hours{0};
    return trial;
}

/// Deviations and weights (ms) on a fine grid over the covered time of one stage, by GSL's linear
/// interpolation of the readings and a target written here a second time.
struct Sampling {
    std::vector<double> deviation;
    std::vector<double> weight;
};

double targetAt(double hours)
{
    return hours < 16 ? 20.0 : hours < 28 ? 20.0 + (hours - 16) / 12 * 2.0 : 22.0;
}

constexpr double gapHours = 0.75;

Sampling sampled(const Series& beer, double fromHour, double toHour)
{
    std::vector<double> hours;
    for (const Instant at : beer.at)
        hours.push_back(hoursBetween(zero, at));
    const std::unique_ptr<gsl_interp, decltype(&gsl_interp_free)> line(
        gsl_interp_alloc(gsl_interp_linear, hours.size()), &gsl_interp_free);
    gsl_interp_init(line.get(), hours.data(), beer.value.data(), hours.size());
    Sampling samples;
    constexpr int cells = 200; // midpoints of each piece's equal cells
    for (std::size_t i = 1; i < hours.size(); ++i) {
        const double from = std::max(hours[i - 1], fromHour);
        const double to = std::min(hours[i], toHour);
        if (to <= from || hours[i] - hours[i - 1] > gapHours + 1e-12)
            continue;
        for (int k = 0; k < cells; ++k) {
            const double at = from + (to - from) * (k + 0.5) / cells;
            const double value =
                gsl_interp_eval(line.get(), hours.data(), beer.value.data(), at, nullptr);
            samples.deviation.push_back(value - targetAt(at));
            samples.weight.push_back((to - from) / cells);
        }
    }
    return samples;
}

template <typename Function>
double integral(const Sampling& samples, Function f)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < samples.weight.size(); ++i)
        sum += samples.weight[i] * f(samples.deviation[i]);
    return sum;
}

class AgainstGsl : public ::testing::TestWithParam<unsigned> {};

TEST_P(AgainstGsl, TimeInsideAndOutside)
{
    const Trial trial = trialOf(GetParam());
    const JudgedBatch batch = judged(trial.batch, trial.beer, gapHours * 60);
    const double tolerance = trial.batch.tolerance->kelvins();
    ASSERT_EQ(batch.stages.size(), 3u);
    for (std::size_t i = 0; i < 3; ++i) {
        if (batch.asPlanned.stages[i].settles)
            continue;
        const Span span = batch.stages[i].span;
        const Sampling samples =
            sampled(trial.beer, hoursBetween(zero, span.start), hoursBetween(zero, span.end));
        const BandJudgement& stage = batch.asPlanned.stages[i];
        EXPECT_NEAR(stage.coveredMs / hourMs, integral(samples, [](double) { return 1.0; }), 1e-9);
        // A crossing misplaces at most one cell, 20 min/200.
        const auto past = [&](double d) { return d > tolerance ? 1.0 : 0.0; };
        EXPECT_NEAR(stage.aboveMs / hourMs, integral(samples, past), 0.02);
        const auto under = [&](double d) { return d < -tolerance ? 1.0 : 0.0; };
        EXPECT_NEAR(stage.belowMs / hourMs, integral(samples, under), 0.02);
        double area = 0.0;
        for (const Excursion& excursion : stage.excursions)
            area += excursion.areaMs / hourMs;
        const auto excess = [&](double d) { return std::max(0.0, std::abs(d) - tolerance); };
        EXPECT_NEAR(area, integral(samples, excess), 1e-3);
    }
}

TEST_P(AgainstGsl, MomentsOfTheDeviation)
{
    const Trial trial = trialOf(GetParam());
    const JudgedBatch batch = judged(trial.batch, trial.beer, gapHours * 60);
    for (std::size_t i = 0; i < batch.stages.size(); ++i) {
        if (batch.asPlanned.stages[i].settles)
            continue;
        const Span span = batch.stages[i].span;
        const Sampling samples =
            sampled(trial.beer, hoursBetween(zero, span.start), hoursBetween(zero, span.end));
        const TimeMoments& moments = batch.statistics[i].deviation;
        const double* d = samples.deviation.data();
        const double* w = samples.weight.data();
        const std::size_t n = samples.weight.size();
        const double mean = gsl_stats_wmean(w, 1, d, 1, n);
        EXPECT_NEAR(moments.mean(), mean, 1e-9);
        // GSL's variance with a fixed mean divides by the total weight, as ours does.
        const double deviation = gsl_stats_wsd_with_fixed_mean(w, 1, d, 1, n, mean);
        EXPECT_NEAR(moments.standardDeviation(), deviation, 1e-5);
        const double total = integral(samples, [](double) { return 1.0; });
        EXPECT_NEAR(moments.meanAbsolute(),
                    integral(samples, [](double x) { return std::abs(x); }) / total, 1e-4);
        EXPECT_NEAR(moments.rootMeanSquare(),
                    std::sqrt(integral(samples, [](double x) { return x * x; }) / total), 1e-5);
    }
}

/// The sampled value at which the running weight reaches the share.
double sampledQuantile(const Sampling& samples, double share)
{
    std::vector<std::pair<double, double>> sorted;
    for (std::size_t i = 0; i < samples.weight.size(); ++i)
        sorted.emplace_back(samples.deviation[i], samples.weight[i]);
    std::sort(sorted.begin(), sorted.end());
    const double wanted = share * integral(samples, [](double) { return 1.0; });
    double reached = 0.0;
    for (const auto& [value, weight] : sorted) {
        reached += weight;
        if (reached >= wanted)
            return value;
    }
    return sorted.back().first;
}

TEST_P(AgainstGsl, QuantilesOfTheDeviation)
{
    const Trial trial = trialOf(GetParam());
    const JudgedBatch batch = judged(trial.batch, trial.beer, gapHours * 60);
    for (std::size_t i = 0; i < batch.stages.size(); ++i) {
        if (batch.asPlanned.stages[i].settles)
            continue;
        const Span span = batch.stages[i].span;
        const Sampling samples =
            sampled(trial.beer, hoursBetween(zero, span.start), hoursBetween(zero, span.end));
        ASSERT_TRUE(batch.statistics[i].quantiles);
        const auto& quantiles = *batch.statistics[i].quantiles;
        EXPECT_NEAR(quantiles[0], sampledQuantile(samples, 0.05), 0.01);
        EXPECT_NEAR(quantiles[1], sampledQuantile(samples, 0.50), 0.01);
        EXPECT_NEAR(quantiles[2], sampledQuantile(samples, 0.95), 0.01);
    }
}

TEST_P(AgainstGsl, DegreeHours)
{
    // The ambient temperature is the beer of another trial; the difference is known where both are
    // covered.
    const Series beer = trialOf(GetParam()).beer;
    const Series ambient = trialOf(GetParam() + 1000).beer;
    const Milliseconds gap = toMilliseconds(Hours{gapHours});
    const Lift lift = liftOver(ambient, gap, beer, gap, {{hour(0), hour(16)}});
    // The target is 20 throughout this stage, so deviations differ as temperatures do.
    const Track both = liftTrack(ambient, gap, beer, gap, {hour(0), hour(16)});
    double covered = 0.0;
    double cooling = 0.0;
    for (const analysis::Run& run : both.runs) {
        const std::size_t n = run.last - run.first + 1;
        const double* t = both.ms.data() + run.first;
        const double* v = both.value.data() + run.first;
        const std::unique_ptr<gsl_interp, decltype(&gsl_interp_free)> line(
            gsl_interp_alloc(gsl_interp_linear, n), &gsl_interp_free);
        gsl_interp_init(line.get(), t, v, n);
        covered += (t[n - 1] - t[0]) / hourMs;
        cooling += gsl_interp_eval_integ(line.get(), t, v, t[0], t[n - 1], nullptr) / hourMs;
    }
    EXPECT_NEAR(lift.knownHours, covered, 1e-9);
    EXPECT_NEAR(lift.coolingKh - lift.heatingKh, cooling, 1e-6);
}

INSTANTIATE_TEST_SUITE_P(Trials, AgainstGsl, ::testing::Range(1u, 13u));

TEST(AgainstGslFit, WeightedLeastSquares)
{
    std::mt19937 random(7);
    std::uniform_real_distribution<double> lift(2.0, 20.0);
    std::normal_distribution<double> noise(0.0, 4.0);
    std::vector<FitPoint> points;
    std::vector<double> x;
    std::vector<double> y;
    std::vector<double> w;
    for (int i = 0; i < 40; ++i) {
        const double at = lift(random);
        points.push_back({at, 15.0 + 3.5 * at + noise(random), 8.0 + i % 9});
        x.push_back(at);
        y.push_back(points.back().y);
        w.push_back(points.back().weight);
    }
    double intercept = 0.0;
    double slope = 0.0;
    double cov00 = 0.0;
    double cov01 = 0.0;
    double cov11 = 0.0;
    double squares = 0.0;
    gsl_fit_wlinear(x.data(), 1, w.data(), 1, y.data(), 1, x.size(), &intercept, &slope, &cov00,
                    &cov01, &cov11, &squares);
    const auto fit = fitLine(points);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->slope, slope, 1e-10);
    EXPECT_NEAR(fit->intercept, intercept, 1e-9);
    // GSL takes weights as known inverse variances; ours scales by the residuals, χ²/(n − 2).
    const double scale = std::sqrt(squares / (static_cast<double>(x.size()) - 2.0));
    EXPECT_NEAR(fit->slopeError, std::sqrt(cov11) * scale, 1e-10);
    EXPECT_NEAR(fit->interceptError, std::sqrt(cov00) * scale, 1e-9);
    for (const double at : {0.0, 9.0, 25.0}) {
        double value = 0.0;
        double error = 0.0;
        gsl_fit_linear_est(at, intercept, slope, cov00, cov01, cov11, &value, &error);
        EXPECT_NEAR(fit->at(at), value, 1e-9);
    }
}

} // namespace
} // namespace holdband::test
