// From a person's choices about a file's columns to what the reader is asked for.
#pragma once

#include "core/intake/import.h"

namespace holdband::intake {

/// Fills in columns, layout, date order, pattern and decimal sign. Problem (data): no column has
/// the time, one sensor or meter has two columns, a name that the logbook doesn't know.
Done fillByMap(const store::LogbookFile& logbook, const ImportOptions& options,
               LogRequest& request);

} // namespace holdband::intake
