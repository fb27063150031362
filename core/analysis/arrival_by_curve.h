// When a crash arrives, from its own curve alone: no past crash took the same way. Section 8.3 of
// the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/falling_way.h"

namespace holdband::analysis {

/// For a way that has not arrived.
ArrivalForecast arrivalByCurve(const FallingWay& way, bool shared);

} // namespace holdband::analysis
