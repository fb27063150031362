// Taking back what was done last, and doing it again: back to the last local midnight, across
// restarts too, since it is worked out from the logbook's own history.
#pragma once

#include "core/store/logbook_file.h"

#include <optional>
#include <string>

namespace holdband::store {

/// What undo and redo would do now, in the words of the history; absent where there is nothing.
struct UndoState {
    std::optional<HistoryEntryId> undo;
    std::optional<HistoryEntryId> redo;
    std::string undoWhat;
    std::string redoWhat;
};

Result<UndoState> readUndoState(const LogbookFile& logbook);

/// Returns what was taken back, in words. Problem (data): there is nothing, or something later
/// stands on it.
Result<std::string> undoLast(const LogbookFile& logbook);
Result<std::string> redoLast(const LogbookFile& logbook);

} // namespace holdband::store
