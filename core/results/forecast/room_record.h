// The room that a plan will stand in: a stretch of the logbook's own record of it. Section 8.1 of
// the method in DEVELOPERS.md.
#pragma once

#include "core/analysis/planned_lift.h"
#include "core/results/snapshot.h"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

struct RoomRecord {
    std::string sensor;
    Span span;
    analysis::Track track;        ///< °C, over the span
    double coverage = 0.0;        ///< the covered share of the span, 0 … 1
    double meanCelsius = 0.0;     ///< °C
    std::optional<double> dayLow; ///< °C, the mean of the days' lowest; absent without a whole day
    std::optional<double> dayHigh; ///< °C, the mean of the days' highest

    double swingK() const { return dayLow ? *dayHigh - *dayLow : 0.0; }
};

/// The record of `sensor`, or, where that is empty, of the room's sensor that covers most of the
/// span. Problem (data): no such sensor, or less
/// than a day, or with readings of less than a day.
Result<RoomRecord> roomRecord(const store::LogbookFile& logbook, const Snapshot& snapshot,
                              const std::string& sensor, Span span);

/// A calendar month of the logbook's zone that the room's sensors may have readings of.
struct RoomMonth {
    std::chrono::year_month month;
    Span span;
    bool whole = true; ///< the readings go on to its end
};

/// In order of time, from the first reading of any sensor of the room to the last.
Result<std::vector<RoomMonth>> roomMonths(const store::LogbookFile& logbook,
                                          const Snapshot& snapshot);

/// The record moved so that a plan that begins at its span's start finds a room for `length`: where
/// the span is shorter, its whole days are repeated.
analysis::Track roomForPlan(const RoomRecord& record, Milliseconds length);

/// When a plan of that length can begin inside the span: at its start and at each later day for
/// which the rest is long enough, at most about thirty of them.
std::vector<Instant> possibleStarts(const RoomRecord& record, Milliseconds length);

} // namespace holdband::results
