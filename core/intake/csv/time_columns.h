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

/// The same, but the rows need no number beside the times. A number alone is not certain to be a
/// time: Unix times are not looked for.
std::optional<TimeColumns> timeWithoutData(const SampleRows& rows, std::size_t header);

/// The first column of dates without a time of day, for a log in which each row is a day.
std::optional<TimeColumns> datesByContent(const SampleRows& rows, std::size_t header);

/// The first column of Unix times below a header of times; the rows need no number beside them.
std::optional<TimeColumns> unixTimeWithoutData(const SampleRows& rows, std::size_t header);

/// Whether it is a usual header of times, in English or German; and of times since a start.
bool soundsLikeTime(std::string_view header);
bool soundsLikeElapsed(std::string_view header);

} // namespace holdband
