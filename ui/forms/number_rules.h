// What a typed number must be beyond being a number: each rule gives the sentence that refuses it,
// or an empty one.
#pragma once

#include <QString>

namespace holdband::ui {

/// Specific gravity: 0.980 to 1.200 (common practice, no source).
QString gravityRule(double gravity);
/// In the logbook's currency.
QString priceRule(double price);

} // namespace holdband::ui
