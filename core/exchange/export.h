// Exports the logbook as a folder: a description and CSV files that `load` reads back.
#pragma once

#include "core/store/logbook_file.h"

#include <string>

namespace holdband::exchange {

/// Writes logbook.json and a folder of readings. The same logbook always gives the same bytes, and
/// loading them gives a logbook that exports the same again.
/// Problem (file): the folder exists and is not empty, or can't be written.
Done exportLogbook(const store::LogbookFile& logbook, const std::string& folder);

} // namespace holdband::exchange
