// What reading a CSV log asks for and what it gives: plain values, one LogColumn for each sensor
// or meter. Nothing here knows of the logbook's file.
#pragma once

#include "core/model/readings.h"
#include "core/quantity/instant.h"
#include "core/quantity/temperature.h"
#include "core/text/zone.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace holdband {

enum class DateOrder { yearMonthDay, monthDayYear, dayMonthYear };

/// What a column's numbers are. Decides the units that it may have and the values that can't be.
enum class SeriesKind { temperature, power, gravity, meter };

struct WantedColumn {
    std::string name; ///< the sensor's or meter's
    SeriesKind kind = SeriesKind::temperature;
    /// The column's header. Absent: the column whose header is the name (white space at the ends,
    /// case and a unit behind it don't count); where there is none, the column is skipped.
    std::optional<std::string> header;
    std::optional<ReadingUnit> unit;       ///< overrides everything, also what the header says
    std::optional<std::size_t> index = {}; ///< its place among the columns: overrides `header`
};

/// A column by its place, or else by its header.
struct ColumnRef {
    std::string header;
    std::optional<std::size_t> index = {};
};

/// A log with one value a row: one column says whose it is, another holds it, a third may say its
/// unit. In such a log a wanted column's `header` is the name that stands in the rows.
struct LongForm {
    ColumnRef name;
    ColumnRef value;
    std::optional<ColumnRef> unit = {};
};

/// What somebody says of a log's layout; all else is found.
struct LayoutWish {
    std::optional<char> delimiter = {};
    std::optional<std::int64_t> headerLine = {}; ///< 0: there is no header

    bool operator==(const LayoutWish&) const = default;
};

/// How a log is laid out, where somebody has looked at it before. Columns count from 0.
struct LogLayout {
    char delimiter = ',';
    std::int64_t headerLine = 1; ///< 0: there is no header, and the columns are numbered
    std::size_t timeColumn = 0;
    std::optional<std::size_t> clockColumn = {}; ///< where the time of day stands by itself

    bool operator==(const LogLayout&) const = default;
};

struct LogRequest {
    std::string path; ///< UTF-8
    /// The bytes themselves (pasted, or the new rows of a growing file); `path` is only their name.
    std::shared_ptr<const std::string> text = {};
    std::optional<std::int64_t> readUpTo = {}; ///< bytes of the file; absent: all of it
    std::int64_t linesBefore = 0;              ///< left out between the header and the first row
    std::vector<WantedColumn> wanted;
    std::optional<LogLayout> layout = {}; ///< overrides timeColumn
    LayoutWish layoutWish = {};           ///< where there is no layout
    std::optional<LongForm> longForm = {};
    /// A header, or two joined by '+' (date and time of day). Absent: found by content.
    std::optional<std::string> timeColumn;
    Zone zone; ///< for local times
    /// It was set for this very log and outweighs what the header of the times says.
    bool zoneSet = false;
    std::string zoneReason = {}; ///< "the logbook's zone"; what is said where the header says none
    std::optional<DateOrder> dateOrder;
    std::optional<std::string> timePattern = {}; ///< see time_pattern.h; overrides dateOrder
    std::optional<char> decimalSign = {};        ///< '.' makes a comma part groups of thousands
    /// Said for this very import (--unit): overrides the headers of temperature columns.
    std::optional<ReadingUnit> temperatureUnit;
    /// Where neither of the above nor the header says one.
    TemperatureUnit fallbackUnit = TemperatureUnit::celsius;
    bool fallbackSaid = false; ///< for this very log, and not just by the logbook's units
    /// An exported copy of what a logbook kept: its values are not judged again.
    bool asKept = false;
};

/// A row, or one value of it, that was left out.
struct RejectedRow {
    std::int64_t line = 0; ///< where the row begins; the file's first line is 1
    std::string column;    ///< header; empty where the row as a whole is meant
    std::string text;      ///< as in the file, shortened
    std::string reason;

    bool operator==(const RejectedRow&) const = default;
};

/// A second value for an instant that has one already. The first in the file is kept.
struct ConflictingRow {
    std::int64_t line = 0;
    Instant at;
    double kept = 0.0;    ///< in the column's unit
    double refused = 0.0; ///< in the column's unit

    bool operator==(const ConflictingRow&) const = default;
};

/// The readings of one sensor or meter, strictly increasing in time. `at`, `raw`, `line` and, of
/// a meter, `decimals` have the same length.
struct LogColumn {
    std::string name;
    std::string header;
    SeriesKind kind = SeriesKind::temperature;
    ReadingUnit unit = ReadingUnit::celsius;
    std::string unitReason; ///< "the header says °F"
    std::vector<Instant> at;
    std::vector<double> raw; ///< in `unit`, as in the file
    std::vector<std::uint32_t> line;
    std::vector<std::uint8_t> decimals;  ///< digits after the decimal sign; of meters only
    std::int64_t duplicates = 0;         ///< same instant and value again: taken out
    std::vector<std::uint32_t> repeated; ///< lines of the first duplicates, at most maxRowsListed
    std::vector<ConflictingRow> conflicts;
};

struct LogFile {
    std::string fileName; ///< without its folder
    std::string sha256;   ///< of the file's bytes, lower-case hexadecimal
    std::string encoding;
    char delimiter = ',';
    char decimalSign = '.';
    std::int64_t headerLine = 1;
    std::string timeHeader;     ///< two joined by '+'
    std::string timeReason;     ///< "day first: 25.03.2026 occurs in line 7"
    std::string zoneName;       ///< empty where every row has its own offset
    std::string zoneReason;     ///< "the logbook's zone"
    bool someOwnOffset = false; ///< some rows say their own offset, or are Unix time
    std::optional<DateOrder> dateOrder;
    std::int64_t rowsRead = 0; ///< below the header, blank lines not counted
    std::vector<LogColumn> columns;
    std::vector<RejectedRow> rejected; ///< by line; at most maxRejectedKept of them
    std::int64_t rejectedTotal = 0;
    std::vector<std::string> ignoredColumns; ///< headers
    std::vector<std::string> ignoredNames;   ///< of a long log: whose values were passed over
    std::vector<std::string> warnings;       ///< sentences without their full stop
};

inline constexpr std::size_t maxRejectedKept = 100'000;
inline constexpr std::size_t maxRowsListed = 1'000;

/// Told the bytes read and the file's size after each piece; false stops the reading.
using ReadHook = std::function<bool(std::int64_t bytesRead, std::int64_t bytesTotal)>;

} // namespace holdband
