// A thermometer's offset from readings in ice water, and its remaining uncertainty. Melting ice at
// atmospheric pressure is at 0.0 °C (ITS-90 puts the triple point of water, 0.01 °C above it, at
// 273.16 K); a well-made bath is within about 0.01 °C of it, a glass of crushed ice in a kitchen is
// assumed to be within ± 0.1 °C here (our assumption, on the safe side).
#pragma once

#include "core/problem.h"
#include "core/quantity/temperature.h"

#include <cstddef>
#include <span>
#include <string>
#include <vector>

namespace holdband::results {

/// All ± are half widths at about 95 %.
struct IcePoint {
    std::size_t count = 0;
    Temperature mean;              ///< of the readings
    TemperatureDifference offset;  ///< added to each reading: −mean
    TemperatureDifference scatter; ///< of the mean: Student t, n − 1
    /// Rounding to the last digit: rectangular over one step, u = step / √12, twice (k = 2).
    TemperatureDifference rounding;
    /// The bath: rectangular over ± 0.1 K, u = 0.1 / √3, twice (k = 2).
    TemperatureDifference bath;
    TemperatureDifference doubt; ///< the three combined, root of the sum of squares (JCGM 100)
};

/// `step`: the last digit that the thermometer shows, 0 or more. Problem (data): fewer than three
/// readings, a step below 0, or a mean further than 5 K from 0 °C, which can hardly be ice water.
Result<IcePoint> icePoint(std::span<const Temperature> readings, TemperatureDifference step);

/// A sentence for the offset and one for each term of the uncertainty, in the given unit.
std::vector<std::string> icePointText(const IcePoint& point, TemperatureUnit unit,
                                      char decimalSign = '.');

} // namespace holdband::results
