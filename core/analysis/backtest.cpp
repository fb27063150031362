#include "core/analysis/backtest.h"

#include <algorithm>
#include <boost/math/distributions/binomial.hpp>
#include <cmath>

namespace holdband::analysis {

namespace {

constexpr double forecastShare = 0.9; // of the intervals hold what comes
constexpr double rareChance = 0.05;

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    const std::size_t half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2.0;
}

/// The batch as a plan: its own hours, lift and heat.
ForecastPlan planLike(const PastBatch& batch)
{
    ForecastPlan plan;
    for (const BatchPart part : bothParts) {
        if (batch.parts[part])
            plan.parts[part] = batch.parts[part]->conditions;
    }
    return plan;
}

} // namespace

bool BacktestedBatch::judged() const
{
    return forecast.total && !forecast.total->refused();
}

bool BacktestedBatch::inside() const
{
    return judged() && forecast.total->low() <= cameKwh && cameKwh <= forecast.total->high();
}

bool tooFewHits(std::size_t hits, std::size_t judged)
{
    if (judged == 0)
        return false;
    const boost::math::binomial chance(static_cast<double>(judged), forecastShare);
    return boost::math::cdf(chance, static_cast<double>(hits)) < rareChance;
}

Backtest backtest(const ForecastBasis& basis)
{
    Backtest test;
    std::vector<double> errors;
    for (std::size_t i = 0; i < basis.batches.size(); ++i) {
        const PastBatch& batch = basis.batches[i];
        const ForecastPlan plan = planLike(batch);
        if (std::none_of(bothParts.begin(), bothParts.end(),
                         [&](BatchPart part) { return plan.parts[part].has_value(); }))
            continue;
        const BacktestedBatch& tested = test.batches.emplace_back(
            BacktestedBatch{batch.batch, batch.kwh(plan.parts), forecast(without(basis, i), plan)});
        if (!tested.judged())
            continue;
        ++test.judged;
        test.hits += tested.inside() ? 1U : 0U;
        errors.push_back(std::abs(tested.cameKwh / tested.forecast.total->kwh - 1.0));
    }
    if (!errors.empty())
        test.typicalError = median(std::move(errors));
    test.tooNarrow = tooFewHits(test.hits, test.judged);
    return test;
}

} // namespace holdband::analysis
