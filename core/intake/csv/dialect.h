// What a log's first rows show: the delimiter, the header's line, the time columns.
#pragma once

#include "core/intake/csv/header.h"
#include "core/intake/csv/time_numbers.h"
#include "core/intake/log/log.h"
#include "core/problem.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

/// A date without a time of day.
struct DateAlone {
    std::int64_t line = 0;
    std::string text;
};

struct Dialect {
    char delimiter = ',';
    std::int64_t headerLine = 1;
    std::vector<std::string> header; ///< white space at the ends and empty ones at the end removed
    TimeColumns time;
    std::string timeReason;
    std::optional<TimeNumbers> timeNumbers = {}; ///< if the times are numbers, but no Unix times
    std::int64_t unitsLine = 0; ///< below the header; its units are in the header; 0: none
    /// The first of the times, if they are dates alone: only the energy of a day can do with them.
    std::optional<DateAlone> dateAlone = {};
};

/// Finds the dialect of a log that begins with this text; uses the request's layout if there is
/// one. The header is the first row that has the requested columns, or that has a column of times
/// and data below it; the rows before it may be anything. If several delimiters give a header, the
/// one with most columns is taken; blanks only if no other gives one, and if the rows have as many
/// fields as the header, because names can hold blanks. A requested delimiter or header line is
/// always used. Problem (data): empty, no header, no rows, no time column, an unknown column.
Result<Dialect> findDialect(std::string_view text, bool isWhole, const LogRequest& request);

/// The delimiters to try: the requested one, else comma, semicolon, tab and bar.
std::vector<char> delimitersFor(const LayoutRequest& layoutRequest);

} // namespace holdband
