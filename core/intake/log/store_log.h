// Stores a log that was read in the logbook, inside a change that the caller commits.
#pragma once

#include "core/intake/log/import.h"
#include "core/store/logbook_file.h"

namespace holdband::intake {

/// The columns of a file that the logbook's sensors and meters may use. Those in `mapped` must
/// exist by name; all others match a header that equals their name. Problem (data): an unknown
/// sensor or meter, with suggestions; one named twice.
Result<std::vector<WantedColumn>>
wantedColumns(const store::LogbookFile& logbook,
              const std::vector<std::pair<std::string, std::string>>& mapped);

struct StoreOptions {
    std::optional<MeterEvent> registerDrop; ///< see ImportOptions
    /// The import to which the readings are added; absent: a new one.
    std::optional<store::ImportId> extend;
    Progress progress;
};

/// The Problem when a Progress cancelled the import.
Problem importCancelled();

/// The report that storeLog would give; writes nothing, so that any connection will do.
Result<ImportReport> compareLog(const store::LogbookFile& logbook, LogFile file,
                                const StoreOptions& options = {});

/// Stores the file's columns. `logbook` is the one of the change. Problem (data): a register
/// reading that is refused, with its line; `progress` cancelled.
Result<ImportReport> storeLog(const store::LogbookFile& logbook, const store::Change& change,
                              LogFile file, const StoreOptions& options = {});

} // namespace holdband::intake
