#include "core/analysis/money.h"

#include <algorithm>

namespace holdband::analysis {

std::optional<Cost> costOver(const SetupEnergy& setup, const std::vector<WeightedSpan>& shares,
                             const std::vector<PricedSpan>& prices, Span span,
                             const Widening& widening)
{
    Cost cost;
    bool metered = false;
    std::vector<Span> priced;
    for (const PricedSpan& price : prices) {
        const Span part = intersection(price.span, span);
        if (part.empty())
            continue;
        priced.push_back(part);
        const EnergyFigure energy = shareOver(setup, shares, part, widening);
        if (!energy.any())
            continue;
        metered = true;
        cost.amount += energy.kwh * price.pricePerKwh;
        const auto [low, high] =
            std::minmax({energy.low * price.pricePerKwh, energy.high * price.pricePerKwh});
        cost.low += price.pricePerKwh == 0.0 ? 0.0 : low;
        cost.high += price.pricePerKwh == 0.0 ? 0.0 : high;
    }
    const std::vector<Span> whole = shareOver(setup, shares, span).metered;
    const bool allPriced = totalMs(intersect(unite(std::move(priced)), whole)) == totalMs(whole);
    return metered && allPriced ? std::optional(cost) : std::nullopt;
}

} // namespace holdband::analysis
