// Measures how long the Rounds page waits for its sheet: eight meters read twice a day for ten
// years.
#pragma once

#include <filesystem>

namespace holdband::bench {

/// The median of `runs`, in milliseconds. `logbook`: has the readings of a long log; the meters and
/// their rounds are added to it.
double roundSheetMs(const std::filesystem::path& logbook, int runs);

} // namespace holdband::bench
