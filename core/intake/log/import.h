// Imports a CSV log into the logbook: reads it, matches columns with sensors and meters by name,
// checks against the stored readings, and stores all of it or nothing.
#pragma once

#include "core/intake/log/column_map.h"
#include "core/intake/log/log_reader.h"
#include "core/store/logbook_file.h"

#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace holdband::intake {

/// The columns of a long log, by headers.
struct LongColumns {
    std::string name;
    std::string value;
    std::optional<std::string> unit = {};
};

struct ImportOptions {
    std::string path;
    std::shared_ptr<const std::string> text = {}; ///< the bytes, if there is no file
    std::optional<std::string> sheet = {};        ///< of a workbook; absent: the first one
    /// What each column means, by position, with the layout for which it was chosen. Replaces
    /// `columns`, `timeColumn`, `zone`, `dateOrder`, `longColumns`, `timePattern`, `decimalSign`,
    /// `timeUnit`, `start`, `layoutRequest`.
    std::optional<ColumnMap> map = {};
    std::optional<LogLayout> layout = {};
    std::vector<std::pair<std::string, std::string>> columns; ///< sensor or meter name, header
    std::optional<std::string> timeColumn;                    ///< "A", or "DATE+TIME"
    std::optional<std::string> zone; ///< absent: from the header, else the logbook's
    std::optional<DateOrder> dateOrder;
    std::optional<TemperatureUnit> unit;
    std::optional<ReadingUnit> energyUnit = {}; ///< of registers and interval energies: Wh or kWh
    LayoutRequest layoutRequest = {};
    std::optional<LongColumns> longColumns = {};
    std::optional<std::string> timePattern = {};
    std::optional<char> decimalSign = {};
    std::optional<TimeUnit> timeUnit = {}; ///< see LogRequest
    std::optional<std::string> start = {};
    /// What happened where a register reads less than before; absent: such a reading is refused.
    std::optional<MeterEvent> registerDrop = {};
    /// Of a file that was previewed before: the digest of its bytes at that time. A file with other
    /// bytes is not stored.
    std::optional<std::string> lookedAt = {};
    /// Counts only and writes nothing; the logbook may be open for reading only.
    bool dryRun = false;
};

struct ImportedColumn {
    std::string name;
    std::string header;
    ReadingUnit unit;
    std::string unitReason;
    std::int64_t added = 0;
    std::int64_t alreadyThere = 0;
    std::int64_t conflicting = 0;
};

/// One reading of a file, and what happened to it.
struct ReportedRow {
    std::int64_t line = 0;
    std::size_t column = 0; ///< in ImportReport::columns
    Instant at;
    double value = 0.0;                ///< in the column's unit
    std::optional<double> stored = {}; ///< of a conflict: the stored value
};

/// The first readings of each outcome, at most maxRowsListed of each column.
struct ReportedRows {
    std::vector<ReportedRow> added;
    std::vector<ReportedRow> alreadyThere;
    std::vector<ReportedRow> conflicting;
    std::vector<std::pair<std::int64_t, std::size_t>> repeated; ///< line, column: twice in the file
};

/// The values that one of the file's first rows gives.
struct ResultRow {
    std::int64_t line = 0;
    Instant at;
    std::vector<std::optional<double>> values; ///< as ImportReport::columns, in their units
};

struct ImportReport {
    LogFile file; ///< its columns without readings; with rejects, warnings, reasons
    std::vector<ImportedColumn> columns;
    std::vector<std::string> conflicts; ///< a sentence each, at most the first 20
    ReportedRows rows;
    std::vector<ResultRow> firstRows;      ///< by line, at most mostResultRows
    std::optional<store::ImportId> import; ///< absent where nothing was new
    /// The file has changed since it was previewed: nothing was stored, and all other members are
    /// empty.
    bool fileChanged = false;

    std::int64_t added() const;
    std::int64_t alreadyThere() const;
    std::int64_t conflicting() const;
};

inline constexpr std::size_t mostResultRows = 50;

/// "times read as America/Denver (the logbook's zone)"; empty where no row had a time.
std::string zoneSentence(const ImportReport& report);

/// The rejected rows as CSV: line, column, text, reason.
std::string rejectsCsv(const ImportReport& report);

/// Called from time to time with the share done (0 … 1), and once more before the readings are
/// committed; false cancels, and nothing is stored.
using Progress = std::function<bool(double)>;

/// Problem (data) as readLog gives it, an unknown sensor or meter in `columns` (with suggestions),
/// or a register reading that is refused. Then nothing is stored, nor on a dry run.
Result<ImportReport> importLog(const store::LogbookFile& logbook, const ImportOptions& options,
                               const Progress& progress = {});

/// The earliest reading of the log's first rows; of all rows if those alone leave something open.
/// Absent: every row is rejected. Problem as importLog.
Result<std::optional<Instant>> firstReading(const store::LogbookFile& logbook,
                                            const ImportOptions& options);

} // namespace holdband::intake
