// The price of energy as spans on the time line.
#pragma once

#include "core/analysis/money.h"
#include "core/model/equipment.h"
#include "core/text/zone.h"

#include <vector>

namespace holdband::results {

/// Spans of one price each, in order. Time without a known price is left out. If a clock change
/// skips a window's edge, the edge is at the change; if it doubles it, at the first of the two
/// instants.
std::vector<analysis::PricedSpan> pricesOver(const Tariff& tariff, const Zone& zone, Span span);

/// The same with each tariff from its date on.
std::vector<analysis::PricedSpan> pricesOver(const LogbookSettings& settings, const Zone& zone,
                                             Span span);

} // namespace holdband::results
