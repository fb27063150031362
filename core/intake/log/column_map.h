// What each column of a log means: everything that the user chose for one file, as a value that can
// be stored and used for the next file of the same shape.
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
    clock,   ///< the time of day, which belongs to the date
    reading, ///< the values of one sensor or meter
    name,    ///< of a long log: the sensor or meter of the row's value
    value,   ///< of a long log
    unit,    ///< of a long log: the unit of the row's value
};

struct ColumnChoice {
    Meaning meaning = Meaning::ignored;
    std::string of;                       ///< the sensor's or meter's name; of readings only
    std::optional<ReadingUnit> unit = {}; ///< absent: the header's unit

    bool operator==(const ColumnChoice&) const = default;
};

/// Of a long log: the sensor or meter that a name in the file means. An empty `of` leaves its
/// values out.
struct NameChoice {
    std::string name;
    std::string of;
    std::optional<ReadingUnit> unit = {};

    bool operator==(const NameChoice&) const = default;
};

struct ColumnMap {
    std::vector<ColumnChoice> columns; ///< in the file's order
    std::vector<NameChoice> names;
    std::optional<std::string> zone; ///< absent: the logbook's
    std::optional<DateOrder> dateOrder;
    std::optional<std::string> timePattern;
    std::optional<char> decimalSign = {};
    std::optional<TimeUnit> timeUnit = {}; ///< see LogRequest
    std::optional<std::string> start = {}; ///< of this file: it is not stored for the next one
    LayoutRequest layout = {};
    /// The date order found in the last file of this kind: used where a watched file's own rows
    /// leave the order open, because no user is there to choose.
    std::optional<DateOrder> dateOrderFound = {};

    bool operator==(const ColumnMap&) const = default;
    /// The first column with that meaning.
    std::optional<std::size_t> columnOf(Meaning meaning) const;
};

/// As text (JSON), and back. Problem (data): not a map.
std::string columnMapText(const ColumnMap& map);
Result<ColumnMap> columnMapFrom(const std::string& text);

/// What makes two files the same shape: delimiter, headers (case and spaces don't count) and the
/// number of columns.
std::string shapeOf(char delimiter, bool hasHeader, const std::vector<std::string>& header);

} // namespace holdband::intake
