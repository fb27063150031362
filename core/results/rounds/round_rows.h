// A row of the round: the last reading, and the expected range of the next. Not for use outside
// core/results.
#pragma once

#include "core/results/rounds/rounds_sheet.h"
#include "core/results/snapshot.h"

#include <vector>

namespace holdband::results {

/// The row for a reading at `at`, which may be before stored readings.
/// `sign`: the decimal sign of the sentences.
RoundRow meterRow(const Meter& meter, const std::vector<store::StoredReading>& all, Instant at,
                  char sign);

/// The mean power between the readings of the week before `at`.
MeterWeek weekBefore(const Meter& meter, const std::vector<store::StoredReading>& all, Instant at);

/// For a gravity: not above the last one.
void expectFall(RoundRow& row);

/// For a thermometer: the band of the running batch whose beer it reads.
void expectBand(RoundRow& row, const Snapshot& snapshot, Instant now);

} // namespace holdband::results
