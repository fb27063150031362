// Who changed what, when and why, without the who: every act of the logbook, and what it changed.
#pragma once

#include "core/store/changeset.h"
#include "core/store/logbook_file.h"

#include <string>
#include <vector>

namespace holdband::store {

struct HistoryEntry {
    ActId id;
    Instant at;
    std::string what;
    std::string why; ///< mostly empty
    ActKind kind = ActKind::edit;
    bool takenBack = false; ///< undone, and not done again
};

/// The newest first, `most` at most, those before `before` where it is given.
Result<std::vector<HistoryEntry>> readHistory(const LogbookFile& logbook, int most,
                                              std::optional<ActId> before = {});

/// Row by row, before and after. Empty for acts older than the record of changes.
Result<std::vector<ChangedRow>> readChangedRows(const LogbookFile& logbook, ActId act);

} // namespace holdband::store
