// Who changed what, when and why, without the who: every act of the logbook, and what it changed.
#pragma once

#include "core/store/history/changeset.h"
#include "core/store/logbook_file.h"

#include <string>
#include <string_view>
#include <vector>

namespace holdband::store {

/// The written names of the kinds of acts, as the store and descriptions keep them.
std::string_view nameOf(HistoryKind kind);
HistoryKind historyKindNamed(std::string_view name);

struct StoredHistoryEntry {
    HistoryEntryId id;
    Instant at;
    std::string what; ///< in the language of the reader
    std::string why;  ///< mostly empty
    HistoryKind kind = HistoryKind::edit;
    bool undone = false; ///< and not redone
};

/// The newest first, `most` at most, those before `before` where it is given.
Result<std::vector<StoredHistoryEntry>> readHistory(const LogbookFile& logbook, int most,
                                                    std::optional<HistoryEntryId> before = {});

/// Row by row, before and after. Empty for acts older than the record of changes.
Result<std::vector<ChangedRow>> readChangedRows(const LogbookFile& logbook, HistoryEntryId act);

/// An act as a description carries it to another logbook, in the words that are kept.
struct PastHistoryEntry {
    Instant at;
    std::string what;
    std::string why;
    HistoryKind kind = HistoryKind::edit;
    std::optional<std::size_t> of; ///< index of the act that is undone or redone, an earlier one

    bool operator==(const PastHistoryEntry&) const = default;
};

/// All acts, oldest first. Where past acts were added, without the making of this file and the load
/// that brought them: they carry no record of their own.
Result<std::vector<PastHistoryEntry>> readHistoryEntries(const LogbookFile& logbook);
/// The ids of the same acts, in the same order.
Result<std::vector<HistoryEntryId>> readHistoryEntryIds(const LogbookFile& logbook);
/// Another text once the logbook was changed, or columns of logs were remembered.
Result<std::string> revisionOf(const LogbookFile& logbook);
/// Puts them before all acts of a logbook that is being made. They are there to be read: what they
/// changed has no record here, so undo passes over them. Their ids, in their order: below 0.
Result<std::vector<HistoryEntryId>> addPastEntries(const Change& change,
                                                   const std::vector<PastHistoryEntry>& acts);

} // namespace holdband::store
