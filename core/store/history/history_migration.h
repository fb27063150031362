// Older versions stored an English sentence for each change. This turns those sentences into verbs
// with arguments; nothing else in the program parses texts back.
#pragma once

#include "core/store/history/history_entry.h"
#include "core/store/sqlite/database.h"

#include <string_view>

namespace holdband::store {

/// Formats before this one store sentences.
inline constexpr std::int64_t firstWithVerbs = 6;

/// The verb and arguments of a sentence, which descriptions of older versions have too. `kind`: of
/// the entry, because the sentences of an undo and a redo begin differently. A sentence that no
/// version wrote becomes `other`.
HistoryEntry entryFromSentence(std::string_view sentence, HistoryKind kind);

/// Converts all entries of a file whose schema was just migrated to format 6 and whose column
/// `verb` still has the sentences.
Done convertSentences(const Database& database);

} // namespace holdband::store
