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

/// A unit as logs write it: one in which readings are stored, or Kelvin, which becomes °C.
struct LogUnit {
    ReadingUnit unit = ReadingUnit::celsius;
    bool kelvin = false; ///< 273.15 more than in `unit`

    bool operator==(const LogUnit&) const = default;
};

/// A header split up: "Beer (°F)" is "Beer" and "°F".
struct HeaderParts {
    std::string bare;     ///< without the unit in brackets at its end, if it is a unit
    std::string unitText; ///< as in brackets, or a last word that is a unit; may be empty
    std::optional<ReadingUnit> unit;
    bool inBrackets = false;
    bool kelvin = false; ///< see LogUnit

    std::optional<LogUnit> logUnit() const;
};

HeaderParts headerParts(std::string_view header);

/// The unit that a text names: "°F", "F", "degF", "Fahrenheit", "kWh", "SG", "°P", "K", …
std::optional<LogUnit> unitNamed(std::string_view text);

/// "°F", "kWh", "SG", …
std::string_view unitSymbol(ReadingUnit unit);
std::string_view unitSymbol(const LogUnit& unit);

/// Folded, without the unit in brackets or behind the name: "beer" for "Beer (°F)" and "Beer °C". A
/// last letter alone ("Vessel C") may count the vessels and stays.
std::string nameWithoutUnit(std::string_view header);

/// Index of the only name that begins with the header's words: "Vessel 1 probe" for "Vessel 1 (F)".
/// Absent: none or several do. A suggestion for people: nothing is read by it unasked.
std::optional<std::size_t> nameBegunBy(std::string_view header,
                                       const std::vector<std::string>& names);

/// The column with this header: the same text, else equal apart from white space and case, else
/// equal without the units in brackets, else without the units behind the names. Absent: none.
/// Problem (data): two match, or none matches though it is required, with suggestions.
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
