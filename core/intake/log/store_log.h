// Puts a log that was read into the logbook, inside a change that the caller commits.
#pragma once

#include "core/intake/log/import.h"
#include "core/store/logbook_file.h"

namespace holdband::intake {

/// What the logbook's sensors and meters want of a file. Columns named in `mapped` must exist by
/// name; all others are taken where a header is their name.
/// Problem (data): an unknown sensor or meter, near ones listed; one named twice.
Result<std::vector<WantedColumn>>
wantedColumns(const store::LogbookFile& logbook,
              const std::vector<std::pair<std::string, std::string>>& mapped);

struct KeepOptions {
    std::optional<MeterEvent> registerDrop; ///< see ImportOptions
    std::optional<store::ImportId> extend; ///< the import that the readings join; absent: a new one
    Progress progress;
};

/// Why nothing was stored when a Progress said stop.
Problem importCancelled();

/// What keepLog would say of the file's columns; writes nothing, so that any connection serves.
Result<ImportReport> compareLog(const store::LogbookFile& logbook, LogFile file,
                                const KeepOptions& options = {});

/// Keeps the file's columns. `logbook` is the one that the change belongs to.
/// Problem (data): a register reading that can't be taken, with its line; the progress said stop.
Result<ImportReport> keepLog(const store::LogbookFile& logbook, const store::Change& change,
                             LogFile file, const KeepOptions& options = {});

} // namespace holdband::intake
