// What a log's first rows show: the delimiter, where the header is, which columns hold the time.
#pragma once

#include "core/intake/csv/header.h"
#include "core/intake/log/log.h"
#include "core/problem.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

struct SampleRow {
    std::int64_t line = 1;
    std::vector<std::string> fields;

    /// Without the white space at its ends; empty where the row is shorter.
    std::string_view cell(std::size_t column) const;
};

/// The first rows of a text, split at one delimiter. Blank rows are left out.
struct Sample {
    char delimiter = ',';
    std::vector<SampleRow> rows;
    std::optional<Problem> problem; ///< why there are no more rows
    bool cut = false;               ///< the text goes on
};

/// At most 200 rows of at most 64 KiB. `isWhole`: the text ends where the file ends.
Sample sampleRows(std::string_view text, bool isWhole, char delimiter);

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

/// "column 1", "column 2" …: the names of columns that have none.
std::vector<std::string> numberedColumns(std::size_t count);

/// The time columns by what the rows below row `header` hold; absent: none. `said`: a person says
/// that it is the header, and rows that hold no times may follow it.
std::optional<TimeColumns> timeByContent(const std::vector<SampleRow>& rows, std::size_t header,
                                         bool said = false);

/// The same, also where nothing beside the times can be read as a number.
std::optional<TimeColumns> timeWithoutData(const std::vector<SampleRow>& rows, std::size_t header);

} // namespace holdband
