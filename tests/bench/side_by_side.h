// How long two setups with fifty batches each take to be compared, beside reading their rows.
#pragma once

#include <filesystem>

namespace holdband::bench {

struct SideBySideTimes {
    double plainRead = 0.0; ///< seconds: each batch's rows by plain sqlite3_step
    double first = 0.0;     ///< seconds: every batch is summed up
    double again = 0.0;     ///< seconds: from the cache, after a weight was changed
    double afterRows = 0.0; ///< seconds: from the cache, after more rows for the last batch
};

/// Medians of `runs`. The logbook is made anew in `folder`, with about as many rows of beer and
/// room to read for the batches; the room's are those of two batches each.
SideBySideTimes sideBySideTimes(const std::filesystem::path& folder, int readings, int runs);

} // namespace holdband::bench
