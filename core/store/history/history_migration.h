// Older versions stored an English sentence for each change. This turns those sentences into verbs
// with arguments; nothing else in the program reads words back.
#pragma once

#include "core/store/history/history_entry.h"
#include "core/store/sqlite/sqlite.h"

#include <string_view>

namespace holdband::store {

/// Formats before this one hold sentences.
inline constexpr std::int64_t firstWithVerbs = 6;

/// The verb and arguments of a sentence, as descriptions of older versions hold it too. `kind`: of
/// the entry, as an undo and a redo begin with words of their own. A sentence that no version wrote
/// becomes `other`.
HistoryEntry entryFromSentence(std::string_view sentence, HistoryKind kind);

/// Converts all entries of a file whose schema was just brought to format 6, where the column
/// `verb` holds the sentences still.
Done convertSentences(const Database& database);

} // namespace holdband::store
