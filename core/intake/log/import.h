// A CSV log from file to logbook: read, matched with sensors and meters by name, checked against
// what is there, and kept whole or not at all.
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

/// Of a long log, by headers.
struct LongColumns {
    std::string name;
    std::string value;
    std::optional<std::string> unit = {};
};

struct ImportOptions {
    std::string path;
    std::shared_ptr<const std::string> text = {}; ///< the bytes, where they are no file
    /// What each column means, by its place; with the layout that it was chosen in. In place of
    /// `columns`, `timeColumn`, `zone`, `dateOrder`, `longColumns`, `timePattern`, `decimalSign`,
    /// `layoutWish`.
    std::optional<ColumnMap> map = {};
    std::optional<LogLayout> layout = {};
    std::vector<std::pair<std::string, std::string>> columns; ///< sensor or meter name, header
    std::optional<std::string> timeColumn;                    ///< "A", or "DATE+TIME"
    std::optional<std::string> zone; ///< absent: the header's or the logbook's
    std::optional<DateOrder> dateOrder;
    std::optional<TemperatureUnit> unit;
    LayoutWish layoutWish = {};
    std::optional<LongColumns> longColumns = {};
    std::optional<std::string> timePattern = {};
    std::optional<char> decimalSign = {};
    /// What happened wherever a register reads less than before; absent: that is refused.
    std::optional<MeterEvent> registerDrop = {};
    /// Of a file that was looked at before: the digest of its bytes then. Others are not stored.
    std::optional<std::string> lookedAt = {};
    bool dryRun = false; ///< counts only: writes nothing, a logbook opened for reading serves
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

/// One reading of a file, and what became of it.
struct ReportedRow {
    std::int64_t line = 0;
    std::size_t column = 0; ///< in ImportReport::columns
    Instant at;
    double value = 0.0;                ///< in the column's unit
    std::optional<double> stands = {}; ///< of a conflict: the value that is kept
};

/// The first readings of each fate, at most maxRowsListed of each column.
struct ReportedRows {
    std::vector<ReportedRow> added;
    std::vector<ReportedRow> alreadyThere;
    std::vector<ReportedRow> conflicting;
    std::vector<std::pair<std::int64_t, std::size_t>> repeated; ///< line, column: twice in the file
};

/// What one of the file's first rows becomes.
struct ResultRow {
    std::int64_t line = 0;
    Instant at;
    std::vector<std::optional<double>> values; ///< as ImportReport::columns, in their units
};

struct ImportReport {
    LogFile file; ///< its columns emptied of readings; rejects, warnings, reasons kept
    std::vector<ImportedColumn> columns;
    std::vector<std::string> conflicts; ///< a sentence each, at most the first 20
    ReportedRows rows;
    std::vector<ResultRow> firstRows;      ///< by line, at most mostResultRows
    std::optional<store::ImportId> import; ///< absent where nothing was new
    /// The file is not the one that was looked at: nothing was stored, and all else here is empty.
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

/// Called now and then with the share done (0 … 1), and once more before the readings are stored
/// for good; false cancels, and nothing is kept.
using Progress = std::function<bool(double)>;

/// Problem (data) as readLog gives it, an unknown sensor or meter in `columns` (near ones listed),
/// or a register reading that can't be taken. Nothing is kept then, nor on a dry run.
Result<ImportReport> importLog(const store::LogbookFile& logbook, const ImportOptions& options,
                               const Progress& progress = {});

} // namespace holdband::intake
