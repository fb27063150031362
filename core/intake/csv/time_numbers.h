// Columns whose times are numbers: seconds, minutes or hours since a start, or the days of a
// spreadsheet's calendar. Unix times are no matter of this file: they tell by their size.
#pragma once

#include "core/intake/csv/sample.h"
#include "core/intake/log/log.h"
#include "core/problem.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

struct TimeNumbers {
    std::optional<TimeUnit> unit = {}; ///< absent: the user must say
    bool canBeDays = false; ///< the first rows are days of 1990 … 2100, some with a time
    std::string first;      ///< the first number, as in the file
};

/// "seconds", "minutes", "hours", "days": the values of --time-unit.
std::string_view optionText(TimeUnit unit);

std::optional<TimeUnit> timeUnitOption(std::string_view text);
/// The same for people.
std::string timeUnitText(TimeUnit unit);

/// The unit of time that a header names: "Elapsed (s)", "t/min", "Hours", "Zeit [h]".
std::optional<TimeUnit> timeUnitNamed(std::string_view header);

/// For a column that holds the times: what its numbers below row `header` count. Absent: they are
/// no numbers, or Unix times.
std::optional<TimeNumbers> timeNumbers(const SampleRows& rows, std::size_t header,
                                       std::size_t column);

/// Whether the numbers of a column below row `header` can be the log's times: its header has a unit
/// of time; or they are days of the calendar or rise from 0 on, and the header sounds like a time
/// or is the first one and no other does. Never beside a column of times that are texts.
bool countsTime(const SampleRows& rows, std::size_t header, std::size_t column);

/// The Problem if the user must say what the numbers count. `column`: its header.
Done needTimeUnit(const TimeNumbers& numbers, const std::string& column);

/// A day of the calendar of spreadsheets (1 is 1900-01-01) as milliseconds of the wall clock since
/// 1970; absent outside 1990 … 2100. `decimals`: of the number; fewer than 8 can't show
/// milliseconds, and it is rounded to the second.
std::optional<std::int64_t> wallOfDays(double days, int decimals);

/// Milliseconds in one of the unit.
std::int64_t msIn(TimeUnit unit);

} // namespace holdband
