// From values in the file's order to one sensor's readings, strictly increasing in time.
#pragma once

#include "core/intake/log/log.h"

#include <cstdint>
#include <vector>

namespace holdband {

/// Everything of one column in the file's order. NaN: no value in that row.
struct ColumnInFileOrder {
    std::vector<double> value;          ///< in the column's unit
    std::vector<std::uint8_t> decimals; ///< of meters; else empty
};

/// Fills the column's readings: sorts by time, takes out repeats (counted) and second values for
/// an instant (reported by line; the first in the file is kept). `at` holds milliseconds since
/// 1970 and `line` the lines of all rows; both as long as the values.
void deduplicateInto(LogColumn& column, const ColumnInFileOrder& values,
                     const std::vector<std::int64_t>& at, const std::vector<std::uint32_t>& line);

/// Takes out temperatures of exactly 85 °C / 185 °F (what a DS18B20 gives after power-on) that jump
/// from their neighbours by more than 10 K: returns them as rejected rows. A beer or wort that
/// really comes near 85 °C keeps its readings.
std::vector<RejectedRow> takeOutPowerOnValues(LogColumn& column);

} // namespace holdband
