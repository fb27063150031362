// What a person chose for the columns of a log, kept for the next file of the same shape.
#pragma once

#include "core/store/logbook_file.h"

#include <optional>
#include <string>

namespace holdband::store {

/// The text that was kept for that shape.
Result<std::optional<std::string>> readLogMap(const LogbookFile& logbook, const std::string& shape);
Done writeLogMap(const Change& change, const std::string& shape, const std::string& spec);

} // namespace holdband::store
