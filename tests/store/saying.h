// History entries for tests that need any change, and the text that undo would show.
#pragma once

#include "core/store/history/history_text.h"
#include "core/store/history/undo.h"

namespace holdband {

inline store::HistoryEntry saying(std::string sentence,
                                  store::HistoryKind kind = store::HistoryKind::edit)
{
    return {store::HistoryVerb::other, {std::move(sentence)}, {}, kind};
}

/// Empty if there is nothing, or the logbook can't be read.
inline std::string undoText(const store::LogbookFile& logbook)
{
    const auto state = store::readUndoState(logbook);
    return state && state->undo ? store::historyText(state->undo->entry) : std::string();
}

inline std::string redoText(const store::LogbookFile& logbook)
{
    const auto state = store::readUndoState(logbook);
    return state && state->redo ? store::historyText(state->redo->entry) : std::string();
}

} // namespace holdband
