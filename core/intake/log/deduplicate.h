// Turns values in the file's order into one sensor's readings, strictly increasing in time.
#pragma once

#include "core/intake/log/log.h"

#include <cstdint>
#include <vector>

namespace holdband {

/// One column's values in the file's order. NaN: no value in that row.
struct ColumnInFileOrder {
    std::vector<double> value;          ///< in the column's unit
    std::vector<std::uint8_t> decimals; ///< of meters; else empty
};

/// Fills the column's readings: sorts by time, removes repeats (counted) and second values for an
/// instant (reported by line; the first in the file is stored). `at` contains milliseconds since
/// 1970 and `line` the lines of all rows; both as long as the values.
void deduplicateInto(LogColumn& column, const ColumnInFileOrder& values,
                     const std::vector<std::int64_t>& at, const std::vector<std::uint32_t>& line);

/// Removes temperatures of exactly 85 °C / 185 °F (the value of a DS18B20 after power-on) that jump
/// from their neighbours by more than 10 K, and returns them as rejected rows. Readings of a beer
/// or wort whose temperature really is about 85 °C remain.
std::vector<RejectedRow> takeOutPowerOnValues(LogColumn& column);

} // namespace holdband
