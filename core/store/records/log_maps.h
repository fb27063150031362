// The user's choices for the columns of a log, stored for the next file of the same shape.
#pragma once

#include "core/store/logbook_file.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::store {

/// The text stored for that shape.
Result<std::optional<std::string>> readLogMap(const LogbookFile& logbook, const std::string& shape);
Done writeLogMap(const Change& change, const std::string& shape, const std::string& spec);

struct LogMap {
    std::string shape;
    std::string spec;
    Instant used; ///< when it was last used

    bool operator==(const LogMap&) const = default;
};

/// All stored maps, by their shape.
Result<std::vector<LogMap>> readLogMaps(const LogbookFile& logbook);
/// If one is already stored for the shape, it is not replaced.
Done addLogMap(const Change& change, const LogMap& map);

} // namespace holdband::store
