// What the header of a column of times says of their zone: "Date Time, GMT-05:00", "Time (UTC)".
#pragma once

#include "core/text/zone.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

struct HeaderZone {
    std::optional<Zone> zone; ///< by an offset, UTC, or a name such as America/Denver
    /// What can't be taken for one zone, as written: an abbreviation (several zones share EST), an
    /// offset that can't be, or two different zones.
    std::string unclear;
};

/// `headers`: of the one column of the times, or of date and time of day. An offset outweighs an
/// abbreviation beside it.
HeaderZone headerZone(const std::vector<std::string_view>& headers);

/// "America/Denver", "UTC−05:00"
std::string zoneText(const Zone& zone);

} // namespace holdband
