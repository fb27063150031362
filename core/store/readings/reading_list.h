// A sensor's readings one by one, as they were logged, with their source: for viewing and
// correcting them. Series for the analysis come from readings.h.
#pragma once

#include "core/model/readings.h"
#include "core/store/logbook_file.h"

#include <string>
#include <vector>

namespace holdband::store {

struct ListedReading {
    Instant at;
    double value = 0.0; ///< as logged or typed first, in `unit`
    ReadingUnit unit = ReadingUnit::celsius;
    std::string from;              ///< "loop.csv", or "by hand"
    std::optional<double> instead; ///< the correction in force, in `unit`
    std::string why;               ///< of the correction
    std::optional<HandReadingId> hand;

    bool operator==(const ListedReading&) const = default;
};

struct ReadingList {
    std::vector<ListedReading> readings; ///< in order of time
    bool more = false;                   ///< the span contains further ones after these
};

/// The readings inside the span, at most `most`. Problem (data): unknown sensor.
Result<ReadingList> listReadings(const LogbookFile& logbook, const std::string& sensor, Span span,
                                 std::size_t most);

} // namespace holdband::store
