// A CSV log from file to logbook: read, matched with sensors and meters by name, checked against
// what is there, and kept whole or not at all.
#pragma once

#include "core/intake/log_reader.h"
#include "core/store/logbook_file.h"

#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace holdband::intake {

struct ImportOptions {
    std::string path;
    std::vector<std::pair<std::string, std::string>> columns; ///< sensor or meter name, header
    std::optional<std::string> timeColumn;                    ///< "A", or "DATE+TIME"
    std::optional<std::string> zone;                          ///< absent: the logbook's
    std::optional<DateOrder> dateOrder;
    std::optional<TemperatureUnit> unit;
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

struct ImportReport {
    LogFile file; ///< its columns emptied of readings; rejects, warnings, reasons kept
    std::vector<ImportedColumn> columns;
    std::vector<std::string> conflicts;    ///< a sentence each, at most the first 20
    std::optional<store::ImportId> import; ///< absent where nothing was new

    std::int64_t added() const;
    std::int64_t alreadyThere() const;
    std::int64_t conflicting() const;
};

/// Called now and then with the share done (0 … 1); false cancels, and nothing is kept.
using Progress = std::function<bool(double)>;

/// Problem (data) as readLog gives it, an unknown sensor or meter in `columns` (near ones listed),
/// or a register reading that can't be taken. Nothing is kept then, nor on a dry run.
Result<ImportReport> importLog(const store::LogbookFile& logbook, const ImportOptions& options,
                               const Progress& progress = {});

} // namespace holdband::intake
