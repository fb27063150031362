// Which rounds were due: a fixed number each day while a batch runs. Not for use outside
// core/results.
#pragma once

#include "core/results/rounds/rounds_sheet.h"
#include "core/results/snapshot.h"

#include <vector>

namespace holdband::results {

using Windows = std::vector<RoundWindow>;

/// When a round is due: in the middle of its window.
Instant dueAt(const RoundColumn& round, const Zone& zone, const Windows& windows);
/// When its window opens.
Instant opensAt(const RoundColumn& round, const Zone& zone, const Windows& windows);
/// When its window ends; from then on an unread round is missed.
Instant missedFrom(const RoundColumn& round, const Zone& zone, const Windows& windows);

RoundColumn roundBefore(const RoundColumn& round, const Windows& windows);
RoundColumn roundAfter(const RoundColumn& round, const Windows& windows);

bool inService(const Meter& meter, Instant at);

/// True where the meter was in service and a batch of its setup running when the round was due.
bool isExpected(const Snapshot& snapshot, const Meter& meter, Instant due, Instant now);

/// Sorts and compares by day and slot.
bool earlier(const RoundColumn& a, const RoundColumn& b);

} // namespace holdband::results
