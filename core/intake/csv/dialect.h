// What a log's first rows show: the delimiter, where the header is, which columns hold the time.
#pragma once

#include "core/intake/csv/header.h"
#include "core/intake/log/log.h"
#include "core/problem.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

struct Dialect {
    char delimiter = ',';
    std::int64_t headerLine = 1;
    std::vector<std::string> header; ///< white space at the ends and empty ones at the end removed
    TimeColumns time;
    std::string timeReason;
};

/// The dialect of a log that begins with this text: by the request's layout where it has one. The
/// header is the first row that has the columns asked for by header, or below which a column of
/// times and data follow; rows before it may be anything. Of several delimiters that give a header,
/// the one with most columns. A wish for a delimiter or for the header's line is kept to.
/// Problem (data): empty, no header, no rows, no time column, an unknown
/// column.
Result<Dialect> findDialect(std::string_view text, bool isWhole, const LogRequest& request);

/// Those to try: the one that is wished for, else comma, semicolon, tab and bar.
std::vector<char> delimitersFor(const LayoutWish& wish);

} // namespace holdband
