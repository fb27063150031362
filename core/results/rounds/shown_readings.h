// The readings of a row of rounds as the grid shows them. Not for use outside core/results.
#pragma once

#include "core/model/readings.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/meter_readings.h"
#include "core/text/zone.h"

#include <cstdint>
#include <string>
#include <vector>

namespace holdband::results {

/// A reading of any kind of row, as the grid shows it.
struct ShownReading {
    Instant at;
    double value;
    int decimals;
    std::int64_t id;
    std::string note;
    std::string history;
};

/// How earlier values and times are written.
struct HistoryFormat {
    const Zone& zone;
    char sign = '.';
};

/// Converts a hand reading to the row's unit.
double inUnit(double value, ReadingUnit from, ReadingUnit to);

std::vector<ShownReading> shownOf(const std::vector<store::StoredReading>& readings,
                                  const HistoryFormat& format);
std::vector<ShownReading> shownOf(const std::vector<store::StoredHandReading>& readings,
                                  ReadingUnit unit, const HistoryFormat& format);

} // namespace holdband::results
