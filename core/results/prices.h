// The price of energy laid out on the time line.
#pragma once

#include "core/analysis/money.h"
#include "core/model/equipment.h"
#include "core/text/zone.h"

#include <vector>

namespace holdband::results {

/// Spans of one price each, in order. Time without a known price is left out. A window's edge that
/// a clock change skips lies at the change; one that it doubles, at the first of the two.
std::vector<analysis::PricedSpan> pricesOver(const Tariff& tariff, const Zone& zone, Span span);

/// The same with each tariff from its date on.
std::vector<analysis::PricedSpan> pricesOver(const LogbookSettings& settings, const Zone& zone,
                                             Span span);

} // namespace holdband::results
