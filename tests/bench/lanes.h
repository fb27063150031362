// Measures the lanes of a long history: 300 batches with five million readings.
#pragma once

#include <filesystem>

namespace holdband::bench {

struct LanesTimes {
    double first = 0.0;     ///< seconds: every batch is judged
    double afterNote = 0.0; ///< seconds: after a note was changed
    double afterRows = 0.0; ///< seconds: after a log added rows for the last batch
};

/// Medians of `runs`. The logbook is created in `folder`.
LanesTimes lanesTimes(const std::filesystem::path& folder, int runs);

} // namespace holdband::bench
