#include "core/analysis/money.h"

#include <algorithm>
#include <limits>

namespace holdband::analysis {

namespace {

/// Infinity × a price of 0 is 0 here, not NaN.
double priced(double kwh, double price)
{
    return price == 0.0 ? 0.0 : kwh * price;
}

/// The bounds of the parts add up to more uncertainty than the total has. The total energy, all of
/// it at the lowest or at the highest price, is a bound too.
void tighten(Cost& cost, const EnergyFigure& whole, double leastPrice, double mostPrice)
{
    const double low = std::min(priced(whole.low, leastPrice), priced(whole.high, leastPrice));
    const double high = std::max(priced(whole.low, mostPrice), priced(whole.high, mostPrice));
    cost.low = std::min(std::max(cost.low, low), cost.amount);
    cost.high = std::max(std::min(cost.high, high), cost.amount);
}

} // namespace

std::optional<Cost> costOver(const SetupEnergy& setup, const std::vector<WeightedSpan>& shares,
                             const std::vector<PricedSpan>& prices, Span span,
                             const Widening& widening)
{
    Cost cost;
    bool metered = false;
    std::vector<Span> known;
    double leastPrice = std::numeric_limits<double>::infinity();
    double mostPrice = -leastPrice;
    for (const PricedSpan& price : prices) {
        const Span part = intersection(price.span, span);
        if (part.empty())
            continue;
        known.push_back(part);
        const EnergyFigure energy = shareOver(setup, shares, part, widening);
        if (!energy.any())
            continue;
        metered = true;
        cost.amount += energy.kwh * price.pricePerKwh;
        const auto [low, high] = std::minmax(
            {priced(energy.low, price.pricePerKwh), priced(energy.high, price.pricePerKwh)});
        cost.low += low;
        cost.high += high;
        leastPrice = std::min(leastPrice, price.pricePerKwh);
        mostPrice = std::max(mostPrice, price.pricePerKwh);
    }
    const EnergyFigure whole = shareOver(setup, shares, span, widening);
    const bool allPriced =
        totalMs(intersect(unite(std::move(known)), whole.metered)) == totalMs(whole.metered);
    if (!metered || !allPriced)
        return std::nullopt;
    tighten(cost, whole, leastPrice, mostPrice);
    return cost;
}

} // namespace holdband::analysis
