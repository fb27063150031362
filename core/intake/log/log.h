// The request to read a CSV log, and the result: plain values, one LogColumn for each sensor or
// meter. Nothing here uses the logbook's file.
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

/// What numbers count that are times: since a start, or (days) since 1900 in a spreadsheet.
enum class TimeUnit { seconds, minutes, hours, days };

/// The kind of a column's numbers. Decides which units it may have and which values are impossible.
enum class SeriesKind { temperature, power, gravity, meter, intervalEnergy };

struct WantedColumn {
    std::string name; ///< the sensor's or meter's
    SeriesKind kind = SeriesKind::temperature;
    /// The column's header. Absent: the column whose header is the name (white space at the ends,
    /// case and a unit after it are ignored); where there is none, the column is skipped.
    std::optional<std::string> header;
    std::optional<ReadingUnit> unit;       ///< overrides everything, including the header
    std::optional<std::size_t> index = {}; ///< its column index; overrides `header`
};

/// A column by its index, or else by its header.
struct ColumnRef {
    std::string header;
    std::optional<std::size_t> index = {};
};

/// A log with one value per row: one column names the sensor, another has the value, a third may
/// have its unit. In such a log a wanted column's `header` is the name in the rows.
struct LongForm {
    ColumnRef name;
    ColumnRef value;
    std::optional<ColumnRef> unit = {};
};

/// The user's settings for a log's layout; the rest is detected.
struct LayoutRequest {
    std::optional<char> delimiter = {};
    std::optional<std::int64_t> headerLine = {}; ///< 0: there is no header

    bool operator==(const LayoutRequest&) const = default;
};

/// The layout of a log that was examined before. Columns count from 0.
struct LogLayout {
    char delimiter = ',';
    std::int64_t headerLine = 1; ///< 0: there is no header, and the columns are numbered
    std::size_t timeColumn = 0;
    std::optional<std::size_t> clockColumn = {}; ///< if the time of day has its own column
    std::int64_t unitsLine = 0; ///< a second header line, with the columns' units; 0: none

    /// Of the line after which rows begin.
    std::int64_t lastHeaderLine() const { return unitsLine > headerLine ? unitsLine : headerLine; }
    bool operator==(const LogLayout&) const = default;
};

struct LogRequest {
    std::string path; ///< UTF-8
    /// The bytes themselves (pasted, or the new rows of a growing file); then `path` is only a
    /// name.
    std::shared_ptr<const std::string> text = {};
    std::optional<std::int64_t> readUpTo = {}; ///< bytes of the file; absent: all of it
    std::optional<std::string> sheet = {};     ///< of a workbook; absent: the first one
    bool beginningOnly = false;                ///< the first piece (1 MiB); its last row may be cut
    /// Lines skipped between the header and the first row.
    std::int64_t linesBefore = 0;
    std::vector<WantedColumn> wanted;
    std::optional<LogLayout> layout = {}; ///< overrides timeColumn
    LayoutRequest layoutRequest = {};     ///< used where there is no layout
    std::optional<LongForm> longForm = {};
    /// A header, or two joined by '+' (date and time of day). Absent: detected by content.
    std::optional<std::string> timeColumn;
    Zone zone; ///< for local times
    /// The zone was set for this import and overrides the zone in the times' header.
    bool zoneSet = false;
    std::string zoneReason = {}; ///< "the logbook's zone"; shown if the header gives no zone
    std::optional<DateOrder> dateOrder;
    std::optional<std::string> timePattern = {}; ///< see time_pattern.h; overrides dateOrder
    std::optional<TimeUnit> timeUnit = {}; ///< where the times are numbers; overrides the header
    std::optional<std::string> start = {}; ///< of times that count from a start; see parseTime
    std::optional<char> decimalSign = {};  ///< '.' makes the comma a separator of thousands
    /// Set for this import (--unit): overrides the headers of temperature columns.
    std::optional<ReadingUnit> temperatureUnit;
    std::optional<ReadingUnit> energyUnit = {}; ///< the same of registers and interval energies
    /// Used where neither of the above nor the header gives one.
    TemperatureUnit fallbackUnit = TemperatureUnit::celsius;
    bool fallbackSaid = false; ///< set for this import, not just the logbook's units
    /// An exported copy of a logbook's stored readings: its values are not checked again.
    bool isExportedCopy = false;
};

/// A row, or one value of a row, that was left out.
struct RejectedRow {
    std::int64_t line = 0; ///< where the row begins; the file's first line is 1
    std::string column;    ///< header; empty where the entire row is meant
    std::string text;      ///< as in the file, shortened
    std::string reason;

    bool operator==(const RejectedRow&) const = default;
};

/// A second value for an instant that already has one. The first in the file is stored.
struct ConflictingRow {
    std::int64_t line = 0;
    Instant at;
    double stored = 0.0;  ///< in the column's unit
    double refused = 0.0; ///< in the column's unit

    bool operator==(const ConflictingRow&) const = default;
};

/// The readings of one sensor or meter, strictly increasing in time. `at`, `raw`, `line` and, for a
/// meter, `decimals` have the same length.
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
    std::int64_t duplicates = 0;         ///< same instant and value again: removed
    std::vector<std::uint32_t> repeated; ///< lines of the first duplicates, at most maxRowsListed
    std::vector<ConflictingRow> conflicts;
};

/// The lines of a file that is plain text, each with an end and of bytes that stand for themselves.
struct LogLines {
    static constexpr std::size_t headBytes = 4096;

    std::int64_t count = 0;
    std::int64_t bytes = 0;
    std::string head; ///< digest of the first headBytes
};

struct LogFile {
    std::string fileName;               ///< without its folder
    std::string sha256;                 ///< of the file's bytes, lower-case hexadecimal
    std::optional<LogLines> lines = {}; ///< absent: packed, UTF-16, or the last line has no end
    std::string encoding;
    char delimiter = ',';
    char decimalSign = '.';
    std::int64_t headerLine = 1;
    std::string timeHeader;     ///< two joined by '+'
    std::string timeReason;     ///< "day first: 25.03.2026 occurs in line 7"
    std::string zoneName;       ///< empty where every row has its own offset
    std::string zoneReason;     ///< "the logbook's zone"
    bool someOwnOffset = false; ///< some rows have their own offset, or are Unix time
    std::optional<DateOrder> dateOrder;
    std::int64_t rowsRead = 0; ///< below the header, blank lines not counted
    std::vector<LogColumn> columns;
    std::vector<RejectedRow> rejected; ///< by line; at most maxRejectedStored of them
    std::int64_t rejectedTotal = 0;
    std::vector<std::string> ignoredColumns; ///< headers
    std::vector<std::string> ignoredNames;   ///< of a long log: names whose values were skipped
    std::vector<std::string> warnings;       ///< sentences without their full stop
};

inline constexpr std::size_t maxRejectedStored = 100'000;
inline constexpr std::size_t maxRowsListed = 1'000;

/// Called with the bytes read and the file's size after each piece; false stops the reading.
using ReadHook = std::function<bool(std::int64_t bytesRead, std::int64_t bytesTotal)>;

} // namespace holdband
