// What a person chose for the columns of a log, kept for the next file of the same shape.
#pragma once

#include "core/store/logbook_file.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::store {

/// The text that was kept for that shape.
Result<std::optional<std::string>> readLogMap(const LogbookFile& logbook, const std::string& shape);
Done writeLogMap(const Change& change, const std::string& shape, const std::string& spec);

struct LogMap {
    std::string shape;
    std::string spec;
    Instant used; ///< last

    bool operator==(const LogMap&) const = default;
};

/// All that are kept, by their shape.
Result<std::vector<LogMap>> readLogMaps(const LogbookFile& logbook);
/// One that is kept already stays.
Done addLogMap(const Change& change, const LogMap& map);

} // namespace holdband::store
