// Finds the time columns of a log by the contents of their cells.
#pragma once

#include "core/intake/csv/header.h"
#include "core/intake/csv/sample.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace holdband {

/// The time columns by the contents of the rows below row `header`; absent if there are none.
/// `said`: the user chose that row as the header, and rows without times may follow it.
std::optional<TimeColumns> timeByContent(const SampleRows& rows, std::size_t header,
                                         bool said = false);

/// The same, but the rows need no number beside the times.
std::optional<TimeColumns> timeWithoutData(const SampleRows& rows, std::size_t header);

} // namespace holdband
