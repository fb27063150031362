// A row of the round: what was read last, and where the next reading should fall. Not for use
// outside core/results.
#pragma once

#include "core/results/rounds/rounds_sheet.h"
#include "core/results/snapshot.h"

#include <vector>

namespace holdband::results {

/// The row for a reading at `at`, which may lie before readings that are there.
/// `sign`: the decimal sign of the sentences.
RoundRow meterRow(const Meter& meter, const std::vector<store::StoredReading>& all, Instant at,
                  char sign);

/// Of a gravity: not above the last one.
void expectFall(RoundRow& row);

/// The band of the running batch whose beer the thermometer reads.
void expectBand(RoundRow& row, const Snapshot& snapshot, Instant now);

} // namespace holdband::results
