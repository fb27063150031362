// What both sides cost over the batches: parts, energy, and where the lines cross.
#include "core/analysis/bounded.h"
#include "core/results/comparison/side_models.h"
#include "core/results/comparison/side_sentences.h"

#include <algorithm>
#include <cmath>

namespace holdband::results {

using analysis::Measure;
using analysis::MeasureId;

namespace {

constexpr int usualLastBatch = 20;
constexpr int furthestBatch = 1000;
constexpr double yearsShown = 5.0;
constexpr int tableSteps = 6;

void addScenario(Money& money, CostBasis basis, std::optional<double> pricePerKwh,
                 const analysis::Bounded& a, const analysis::Bounded& b)
{
    CostScenario scenario{basis, pricePerKwh, {*money.partsA, a}, {*money.partsB, b}, {}};
    scenario.crossing = analysis::crossingOf(scenario.a, scenario.b);
    money.scenarios.push_back(std::move(scenario));
}

std::optional<double> onePrice(const LogbookSettings& settings, bool windows)
{
    return windows || !settings.tariffChanges.empty() ? std::nullopt : settings.tariff.pricePerKwh;
}

/// The same hold in the same weather, if the models decide, at the mean price that both paid: the
/// batches themselves are seldom alike.
void addSameWeatherScenario(SideBySide& review)
{
    const std::optional<double> price = meanPriceOfBoth(review);
    if (!review.weather.ahead || !price)
        return;
    addScenario(review.money, CostBasis::sameWeather, price,
                analysis::scaled(notNegative(review.weather.a.atReference->kwh), *price),
                analysis::scaled(notNegative(review.weather.b.atReference->kwh), *price));
}

void addScenarios(SideBySide& review, bool windows)
{
    const Measure& cost = measureOf(review, MeasureId::cost);
    const Measure& energy = measureOf(review, MeasureId::energy);
    Money& money = review.money;
    if (cost.a && cost.b)
        addScenario(money, CostBasis::logbookPrices, onePrice(review.settings, windows), *cost.a,
                    *cost.b);
    if (const auto other = review.weighing.otherPricePerKwh; other && energy.a && energy.b)
        addScenario(money, CostBasis::otherPrice, other, analysis::scaled(*energy.a, *other),
                    analysis::scaled(*energy.b, *other));
    addSameWeatherScenario(review);
}

void addMeanPrices(SideBySide& review)
{
    const Measure& cost = measureOf(review, MeasureId::cost);
    const Measure& energy = measureOf(review, MeasureId::energy);
    const bool known =
        cost.a && cost.b && energy.a && energy.b && energy.a->value > 0.0 && energy.b->value > 0.0;
    if (!known)
        return;
    review.money.meanPriceA = cost.a->value / energy.a->value;
    review.money.meanPriceB = cost.b->value / energy.b->value;
}

/// The last batch in the chart: past the crossings, and some years of brewing.
int lastBatchOf(const SideBySide& review)
{
    double last = usualLastBatch;
    if (review.weighing.batchesPerYear)
        last = std::max(last, yearsShown * *review.weighing.batchesPerYear);
    for (const CostScenario& scenario : review.money.scenarios)
        last = std::max(
            last, std::min(1.3 * scenario.crossing.batches, static_cast<double>(furthestBatch)));
    return static_cast<int>(std::ceil(std::min(last, static_cast<double>(furthestBatch))));
}

} // namespace

std::optional<double> meanPriceOfBoth(const SideBySide& review)
{
    const Measure& cost = measureOf(review, MeasureId::cost);
    const Measure& energy = measureOf(review, MeasureId::energy);
    if (!cost.a || !cost.b || !energy.a || !energy.b)
        return std::nullopt;
    const double kwh = energy.a->value + energy.b->value;
    return kwh > 0.0 ? std::optional((cost.a->value + cost.b->value) / kwh) : std::nullopt;
}

void addMoney(SideBySide& review, const Setup& setupA, const Setup& setupB, bool windows)
{
    Money& money = review.money;
    money.partsA = partsTotal(setupA);
    money.partsB = partsTotal(setupB);
    money.batchesPerYear = review.weighing.batchesPerYear;
    if (windows)
        addMeanPrices(review);
    if (money.partsA && money.partsB)
        addScenarios(review, windows);
    money.lastBatch = lastBatchOf(review);
    for (int step = 0; step <= tableSteps; ++step)
        money.batchesInTable.push_back(money.lastBatch * step / tableSteps);
}

} // namespace holdband::results
