// Turns the options of an import into a request to the reader.
#pragma once

#include "core/intake/log/import.h"

namespace holdband::intake {

/// Zone, columns, layout, date order, pattern and decimal sign. Problem (data): no column has the
/// time, one sensor or meter has two columns, a name that the logbook doesn't know, an unknown
/// zone.
Result<LogRequest> requestFor(const store::LogbookFile& logbook, const ImportOptions& options);

} // namespace holdband::intake
