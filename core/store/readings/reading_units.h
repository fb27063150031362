// From the unit a log is written in to the unit a series is judged in. Not for use outside
// core/store.
#pragma once

#include "core/model/readings.h"

namespace holdband::store {

/// The raw value in the base unit: °C, W, kWh, specific gravity.
double baseValue(double raw, ReadingUnit unit);
/// The inverse of baseValue.
double rawValue(double base, ReadingUnit unit);

} // namespace holdband::store
