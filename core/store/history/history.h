// What was changed, when and why (but not by whom): every change of the logbook and its effect.
#pragma once

#include "core/store/history/changeset.h"
#include "core/store/logbook_file.h"

#include <string>
#include <vector>

namespace holdband::store {

/// For core/store only, with row values as in the database. `column`: the first of verb, arguments,
/// why, kind, of.
Result<HistoryEntryId> addHistoryEntry(const Database& database, const HistoryEntry& entry,
                                       Instant at);
HistoryEntry historyEntryFrom(const Statement& row, int column);

struct StoredHistoryEntry {
    HistoryEntryId id;
    Instant at;
    HistoryEntry entry;
    bool undone = false; ///< undone, and not redone
};

/// The newest first, at most `most`; only those before `before` if it is given.
Result<std::vector<StoredHistoryEntry>> readHistory(const LogbookFile& logbook, int most,
                                                    std::optional<HistoryEntryId> before = {});

/// Row by row, before and after. Empty for entries older than the recording of changes.
Result<std::vector<ChangedRow>> readChangedRows(const LogbookFile& logbook, HistoryEntryId entry);

/// An entry as it is written in a description for another logbook, where it gets another id.
struct PastHistoryEntry {
    Instant at;
    HistoryEntry entry;            ///< without its `of`
    std::optional<std::size_t> of; ///< index of the entry that is undone or redone, an earlier one

    bool operator==(const PastHistoryEntry&) const = default;
};

/// All entries, oldest first. If past ones were added: without the creation of this file and the
/// load that added them.
Result<std::vector<PastHistoryEntry>> readHistoryEntries(const LogbookFile& logbook);
/// The ids of the same entries, in the same order.
Result<std::vector<HistoryEntryId>> readHistoryEntryIds(const LogbookFile& logbook);
/// A text that changes whenever the logbook is changed, or columns of logs are remembered.
Result<std::string> revisionOf(const LogbookFile& logbook);
/// Adds them before all entries of a new logbook. They are only for reading: their changes have no
/// record here, so undo skips them. Returns their ids, in order: below 0.
Result<std::vector<HistoryEntryId>> addPastEntries(const Change& change,
                                                   const std::vector<PastHistoryEntry>& entries);

} // namespace holdband::store
