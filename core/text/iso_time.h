// The grammar of RFC 3339 times, seconds and offset optional: "2026-03-07T06:30:00.5-07:00",
// "2026-03-07 06:30". Checks only the limits of the calendar; callers check others.
#pragma once

#include "core/text/zone.h"

#include <optional>
#include <string_view>

namespace holdband {

struct IsoTime {
    LocalTime local;                    ///< as written, before the offset
    std::optional<Milliseconds> offset; ///< local minus UTC
    bool hasSeconds = false;
    bool leapSecond = false; ///< was written with :60

    int year() const;
    /// Needs the offset.
    Instant instant() const { return Instant{local.time_since_epoch() - *offset}; }
};

/// Scans the full text; absent if it does not match. Fractions of a second are rounded to the
/// nearest millisecond.
std::optional<IsoTime> scanIsoTime(std::string_view text);

} // namespace holdband
