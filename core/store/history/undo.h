// Undoes the last change, and redoes it: back to the last local midnight, also after a restart,
// because it is derived from the logbook's own history.
#pragma once

#include "core/store/logbook_file.h"

#include <optional>

namespace holdband::store {

struct UndoStep {
    HistoryEntryId id;
    HistoryEntry entry; ///< the one that would be undone or redone
};

/// What undo and redo would do now; absent if there is nothing to do.
struct UndoState {
    std::optional<UndoStep> undo;
    std::optional<UndoStep> redo;
};

Result<UndoState> readUndoState(const LogbookFile& logbook);

/// Returns the history's entry of the undo or redo. Problem (data): there is nothing to undo, or a
/// later change depends on it.
Result<HistoryEntry> undoLast(const LogbookFile& logbook);
Result<HistoryEntry> redoLast(const LogbookFile& logbook);

} // namespace holdband::store
