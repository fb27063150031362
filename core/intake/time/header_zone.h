// The zone that the header of a time column gives: "Date Time, GMT-05:00", "Time (UTC)".
#pragma once

#include "core/text/zone.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

struct HeaderZone {
    std::optional<Zone> zone; ///< by an offset, UTC, or a name such as America/Denver
    /// A text that does not name exactly one zone, as written: an abbreviation (several zones share
    /// EST), an impossible offset, or two different zones.
    std::string unclear;
};

/// `headers`: of the one time column, or of date and time of day. An offset takes precedence over
/// an abbreviation.
HeaderZone headerZone(const std::vector<std::string_view>& headers);

/// "America/Denver", "UTC−05:00"
std::string zoneText(const Zone& zone);

} // namespace holdband
