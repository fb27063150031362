// Rules for a typed number: each returns why the number is refused, or an empty text.
#pragma once

#include <QString>

namespace holdband::ui {

/// Specific gravity: 0.980 to 1.200 (common practice, no source).
QString gravityRule(double gravity);
/// In the logbook's currency.
QString priceRule(double price);

} // namespace holdband::ui
