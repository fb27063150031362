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

/// True where a batch of the setup was running when the round was due.
bool isExpected(const Snapshot& snapshot, const std::string& setup, Instant due, Instant now);

/// Sorts and compares by day and slot.
bool earlier(const RoundColumn& a, const RoundColumn& b);

} // namespace holdband::review
