// Which rounds there should have been: two a day while a batch runs. Not for use outside
// core/review.
#pragma once

#include "core/review/rounds_sheet.h"
#include "core/review/snapshot.h"

#include <vector>

namespace holdband::review {

/// When a round is due: 07:00 and 18:00 local time.
Instant dueAt(const RoundColumn& round, const Zone& zone);

RoundColumn roundBefore(const RoundColumn& round);
RoundColumn roundAfter(const RoundColumn& round);

bool inService(const Meter& meter, Instant at);

/// True where the meter was in service and a batch of its setup running when the round was due.
bool isExpected(const Snapshot& snapshot, const Meter& meter, Instant due, Instant now);

/// Sorts and compares by day and slot.
bool earlier(const RoundColumn& a, const RoundColumn& b);

} // namespace holdband::review
