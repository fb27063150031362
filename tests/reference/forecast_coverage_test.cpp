// How often the 90 % intervals of the next batch hold what came, on simulated setups. Method.md 8.1
// has, of 300 setups each: one vessel 95 % with 3 past batches and 95 % with 6, parts 96 to 100 %,
// 2 and 0 refused; 5 K warmer than the past with 2 past batches 96 %, parts 97 to 100 %, 13
// refused. The simulation is ours (simulated_cooler.h), so the counts are near those and not the
// same.
#include "core/analysis/backtest.h"
#include "core/analysis/forecast.h"
#include "tests/reference/simulated_cooler.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <gtest/gtest.h>
#include <string>
#include <vector>

namespace holdband::test {
namespace {

using namespace analysis;

constexpr int simulatedSetups = 300;

struct ForecastCondition {
    int batches;
    double warmerK;
};

struct ForecastCounts {
    int refused = 0;
    int judged = 0;
    int total = 0; ///< of `judged` that hold what came
    ByPart<int> parts{};
    double upperWidth = 0.0; ///< median of high / forecast − 1
    std::size_t tested = 0;  ///< past batches of the backtests
    std::size_t hits = 0;
};

bool holds(const EnergyForecast& range, double came)
{
    return range.low() <= came && came <= range.high();
}

ForecastBasis pastOf(const SimulatedSetup& setup, int batches, sample::Noise& noise)
{
    ForecastBasis basis;
    basis.resolutionKwh = BatchSimulation::resolution;
    for (int i = 0; i < batches; ++i) {
        SimulatedBatch made = BatchSimulation(setup, 0.0, noise).run("Batch " + std::to_string(i));
        basis.batches.push_back(made.past);
        basis.pairs.insert(basis.pairs.end(), made.quiet.begin(), made.quiet.end());
    }
    return basis;
}

void addBacktest(ForecastCounts& held, const ForecastBasis& basis)
{
    const Backtest test = backtest(basis);
    held.tested += test.judged;
    held.hits += test.hits;
}

ForecastCounts forecastCoverageOf(const ForecastCondition& condition, std::uint64_t seed)
{
    sample::Noise noise(seed);
    ForecastCounts held;
    std::vector<double> widths;
    for (int i = 0; i < simulatedSetups; ++i) {
        const SimulatedSetup setup = someSetup(noise);
        const ForecastBasis basis = pastOf(setup, condition.batches, noise);
        const SimulatedBatch next = BatchSimulation(setup, condition.warmerK, noise).run("Next");
        addBacktest(held, basis);
        const Forecast made = forecast(basis, {next.planned, 0.0});
        if (!made.total || made.total->refused()) {
            ++held.refused;
            continue;
        }
        ++held.judged;
        const double came =
            next.meteredKwh[BatchPart::beforeCrash] + next.meteredKwh[BatchPart::crash];
        held.total += holds(*made.total, came) ? 1 : 0;
        for (const BatchPart part : bothParts)
            held.parts[part] += holds(made.parts[part]->energy, next.meteredKwh[part]) ? 1 : 0;
        widths.push_back(std::exp(made.total->halfWidth) - 1.0);
    }
    std::sort(widths.begin(), widths.end());
    if (!widths.empty())
        held.upperWidth = widths[widths.size() / 2];
    return held;
}

void record(const ForecastCounts& held)
{
    const auto note = [](const char* name, auto value) {
        testing::Test::RecordProperty(name, std::to_string(value));
    };
    note("refused", held.refused);
    note("judged", held.judged);
    note("total", held.total);
    note("before", held.parts[BatchPart::beforeCrash]);
    note("crash", held.parts[BatchPart::crash]);
    note("upperWidth", held.upperWidth);
    note("tested", held.tested);
    note("hits", held.hits);
}

// A forecast never promises less than its 90 % (270 of 300), and lies within 10 of the page's
// count: two standard deviations of the difference of two such counts. Seeds are fixed: a case
// fails always or never. Over eight other seeds (2,400 setups) the totals held 95.0, 92.6 and 97.0
// %.
void expectNear(const ForecastCounts& held, double pageShare, double pageWidth, int pageRefused)
{
    record(held);
    EXPECT_LE(held.refused, pageRefused);
    EXPECT_GE(held.total, 0.9 * held.judged);
    EXPECT_NEAR(held.total, pageShare * held.judged, 10.0);
    EXPECT_NEAR(held.upperWidth, pageWidth, 0.03);
    for (const BatchPart part : bothParts)
        EXPECT_GE(held.parts[part], 0.9 * held.judged);
    // The page's backtests have 96 to 99 % inside; those of six batches 94 % here.
    EXPECT_GE(static_cast<double>(held.hits), 0.9 * static_cast<double>(held.tested));
}

/// 282 of 300, parts 299 and 289, +11 %; backtest 868 of 900.
TEST(ForecastCoverage, OfOneVesselWithThreePastBatches)
{
    expectNear(forecastCoverageOf({3, 0.0}, 1), 0.95, 0.13, 2);
}

/// 278 of 300, parts 294 and 282, +10 %; backtest 1,689 of 1,800.
TEST(ForecastCoverage, OfOneVesselWithSixPastBatches)
{
    expectNear(forecastCoverageOf({6, 0.0}, 2), 0.95, 0.10, 0);
}

/// 281 of 300, parts 296 and 292, +18 %; backtest 585 of 600.
TEST(ForecastCoverage, OfA5KWarmerRoomWithTwoPastBatches)
{
    expectNear(forecastCoverageOf({2, 5.0}, 3), 0.96, 0.20, 13);
}

} // namespace
} // namespace holdband::test
