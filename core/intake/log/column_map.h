// What each column of a log means: everything that a person chose about one file, as a value that
// can be kept and used again for the next file of the same shape.
#pragma once

#include "core/intake/log/log.h"
#include "core/problem.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::intake {

enum class Meaning {
    ignored,
    time,    ///< date and time, or the date alone where another column has the time of day
    clock,   ///< the time of day that belongs to the date
    reading, ///< of one sensor or meter
    name,    ///< of a long log: whose value the row holds
    value,   ///< of a long log
    unit,    ///< of a long log: the unit that the row's value is in
};

struct ColumnChoice {
    Meaning meaning = Meaning::ignored;
    std::string of;                       ///< the sensor's or meter's name, of readings
    std::optional<ReadingUnit> unit = {}; ///< absent: as the header says

    bool operator==(const ColumnChoice&) const = default;
};

/// Of a long log: whose readings stand behind a name. An empty `of` leaves them out.
struct NameChoice {
    std::string name;
    std::string of;
    std::optional<ReadingUnit> unit = {};

    bool operator==(const NameChoice&) const = default;
};

struct ColumnMap {
    std::vector<ColumnChoice> columns; ///< as they stand in the file
    std::vector<NameChoice> names;
    std::optional<std::string> zone; ///< absent: the logbook's
    std::optional<DateOrder> dateOrder;
    std::optional<std::string> timePattern;
    std::optional<char> decimalSign = {};
    LayoutWish layout = {};
    /// That the rows of the last file of this kind showed: taken where a watched file's own rows
    /// leave the order open, and nobody is there to be asked.
    std::optional<DateOrder> dateOrderFound = {};

    bool operator==(const ColumnMap&) const = default;
    /// The first column of that meaning.
    std::optional<std::size_t> columnOf(Meaning meaning) const;
};

/// As text (JSON), and back. Problem (data): it is none.
std::string columnMapText(const ColumnMap& map);
Result<ColumnMap> columnMapFrom(const std::string& text);

/// What makes two files alike: delimiter, headers (case and spaces don't count) and their number.
std::string shapeOf(char delimiter, bool hasHeader, const std::vector<std::string>& header);

} // namespace holdband::intake
