// Times as people and descriptions write and read them. A local time is resolved by Zone; one that
// is missing or doubled because of a clock change is refused, and the message shows both ways to
// write it with its offset.
#pragma once

#include "core/problem.h"
#include "core/quantity/instant.h"
#include "core/text/zone.h"

#include <string>
#include <string_view>

namespace holdband {

/// The years in which a log or a batch can be; a time outside them is probably a typing error.
inline constexpr int firstPlausibleYear = 1990;
inline constexpr int lastPlausibleYear = 2100;

/// RFC 3339 with its offset, to the nearest millisecond; a space may replace the T. A leap second
/// (23:59:60 UTC) is the instant after it. Any year 0000 … 9999.
Result<Instant> parseRfc3339(std::string_view text);

/// One time typed by a person or written in a description: RFC 3339 with an offset, or a local
/// time "2026-03-07 06:30[:15[.250]]" in the given zone; seconds may be absent in both. The year
/// must be plausible.
Result<Instant> parseTime(std::string_view text, const Zone& zone);

/// A time as a person types it: what parseTime accepts, the hour with one digit ("2026-03-07
/// 6:30"), or the time of day alone for today ("6:30", "06:30"). Errors as for parseTime.
Result<Instant> parseTypedTime(std::string_view text, const Zone& zone, Instant now);

/// A local time as an instant; the Problem for a missing or doubled one shows the possible offsets.
Result<Instant> resolveLocal(LocalTime local, const Zone& zone);

/// "2026-03-07T13:30:00.000Z"
std::string rfc3339Utc(Instant at);
/// "2026-03-07T06:30:00-07:00", with milliseconds where there are any
std::string localIso(Instant at, const Zone& zone);
/// "7 Mar 2026 06:30"
std::string localText(Instant at, const Zone& zone);
/// "7 Mar 06:30"
std::string localShortText(Instant at, const Zone& zone);
/// "06:30"
std::string localClockText(Instant at, const Zone& zone);
/// "2026-03-07"
std::string isoDate(Date date);
/// "7 Mar 2026"
std::string dateText(Date date);
/// "7 Mar"
std::string shortDateText(Date date);
/// "06:30", "06:30:15", "06:30:15.250": seconds only where there are any
std::string clockText(LocalTime local);

} // namespace holdband
