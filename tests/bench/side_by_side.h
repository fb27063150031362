// Measures how long it takes to compare two setups with fifty batches each, and to only read their
// rows.
#pragma once

#include <filesystem>

namespace holdband::bench {

struct SideBySideTimes {
    double plainRead = 0.0; ///< seconds: each batch's rows by plain sqlite3_step
    double first = 0.0;     ///< seconds: every batch is summarised
    double again = 0.0;     ///< seconds: from the cache, after a weight was changed
    double afterRows = 0.0; ///< seconds: from the cache, after more rows for the last batch
};

/// Medians of `runs`. The logbook is created in `folder`, with about that many rows of beer and
/// room for the batches; two batches share the room's rows.
SideBySideTimes sideBySideTimes(const std::filesystem::path& folder, int readings, int runs);

} // namespace holdband::bench
