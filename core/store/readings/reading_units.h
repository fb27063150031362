// Converts between the unit of a log and the unit in which a series is judged. Not for use outside
// core/store.
#pragma once

#include "core/model/readings.h"

namespace holdband::store {

/// The raw value in the base unit: °C, W, kWh, specific gravity.
double baseValue(double raw, ReadingUnit unit);
/// The inverse of baseValue.
double rawValue(double base, ReadingUnit unit);

} // namespace holdband::store
