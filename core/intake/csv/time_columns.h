// Which columns of a log hold its times, by what stands in their cells.
#pragma once

#include "core/intake/csv/header.h"
#include "core/intake/csv/sample.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace holdband {

/// The time columns by what the rows below row `header` hold; absent: none. `said`: a person says
/// that it is the header, and rows that hold no times may follow it.
std::optional<TimeColumns> timeByContent(const SampleRows& rows, std::size_t header,
                                         bool said = false);

/// The same, also where nothing beside the times can be read as a number.
std::optional<TimeColumns> timeWithoutData(const SampleRows& rows, std::size_t header);

} // namespace holdband
