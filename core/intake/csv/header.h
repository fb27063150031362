// The header of a log: the names of its columns, and their units.
#pragma once

#include "core/intake/log/log.h"
#include "core/problem.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

/// A header split up: "Beer (°F)" is "Beer" and "°F".
struct HeaderParts {
    std::string bare;     ///< without the unit in brackets at its end, if it is a unit
    std::string unitText; ///< as in brackets, or a last word that is a unit; may be empty
    std::optional<ReadingUnit> unit;
    bool inBrackets = false;
};

HeaderParts headerParts(std::string_view header);

/// The unit that a text names: "°F", "F", "degF", "Fahrenheit", "kWh", "SG", "°P", …
std::optional<ReadingUnit> unitNamed(std::string_view text);

/// "°F", "kWh", "SG", …
std::string_view unitSymbol(ReadingUnit unit);

/// The column with this header: the same text, else equal apart from white space and case, else
/// equal without the units in brackets. Absent: none. Problem (data): two match, or none matches
/// though it is required, with suggestions.
Result<std::optional<std::size_t>> findColumn(const std::vector<std::string>& header,
                                              std::string_view name);
Result<std::size_t> needColumn(const std::vector<std::string>& header, std::string_view name);

/// The columns of the time: one, or a date and a time of day.
struct TimeColumns {
    std::size_t first = 0;
    std::optional<std::size_t> second;

    bool operator==(const TimeColumns&) const = default;
    bool has(std::size_t column) const { return column == first || column == second; }
};

/// "A", or "DATE+TIME" if no header is exactly that text.
Result<TimeColumns> namedTimeColumns(const std::vector<std::string>& header, std::string_view name);

} // namespace holdband
