// What energy costs: a flat price, or prices that change over time. No Qt, no SQL.
#pragma once

#include "core/analysis/setup_energy.h"

#include <optional>
#include <vector>

namespace holdband::analysis {

/// A stretch of time with one price for a kilowatt-hour. Zones and clock changes are already
/// resolved.
struct PricedSpan {
    Span span;
    double pricePerKwh; ///< in the logbook's currency for a kWh
};

/// In the logbook's currency. Bounds are infinite where the energy's are.
struct Cost {
    double amount = 0.0; ///< currency
    double low = 0.0;    ///< currency, at least
    double high = 0.0;   ///< currency, at most
};

/// The cost of a batch's metered energy inside `span`; absent where nothing is metered, or the
/// price is unknown for some of it. Each priced part has its own bounds, and they add up; they are
/// no wider than the bounds of the total energy at the lowest and at the highest price of the span.
std::optional<Cost> costOver(const SetupEnergy& setup, const std::vector<WeightedSpan>& shares,
                             const std::vector<PricedSpan>& prices, Span span,
                             const Widening& widening = {});

} // namespace holdband::analysis
