// The first rows of a log, split at one delimiter.
#pragma once

#include "core/problem.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

inline constexpr std::size_t maxSampleRows = 200;
inline constexpr std::size_t rowsExamined = 8; ///< below a header

struct SampleRow {
    std::int64_t line = 1;
    std::vector<std::string> fields;

    /// Without the white space at its ends; empty where the row is shorter.
    std::string_view cell(std::size_t column) const;
};

using SampleRows = std::vector<SampleRow>;

/// The first rows of a text, split at one delimiter. Blank rows are left out.
struct Sample {
    char delimiter = ',';
    SampleRows rows;
    std::optional<Problem> problem; ///< why there are no more rows
    bool cut = false;               ///< the text continues
    std::int64_t unitsLine = 0;     ///< see units_row.h; 0: it was not looked for, or there is none
};

/// At most 200 rows of at most 64 KiB. `isWhole`: the text ends where the file ends.
Sample sampleRows(std::string_view text, bool isWhole, char delimiter);

/// Those of the next rows that are looked at to judge that row as a header.
std::span<const SampleRow> rowsBelow(const SampleRows& rows, std::size_t header);

/// The row's fields without white space at their ends; empty ones at the end are left out.
std::vector<std::string> headerNames(const SampleRow& row);

/// "column 1", "column 2" …: the names of columns that have none.
std::vector<std::string> numberedColumns(std::size_t count);

} // namespace holdband
