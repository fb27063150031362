// Who changed what, when and why, without the who: every change of the logbook, and what it did.
#pragma once

#include "core/store/history/changeset.h"
#include "core/store/logbook_file.h"

#include <string>
#include <vector>

namespace holdband::store {

/// For core/store only, as the database says. `column`: the first of verb, arguments, why, kind,
/// of.
Result<HistoryEntryId> addHistoryEntry(const Database& database, const HistoryEntry& entry,
                                       Instant at);
HistoryEntry historyEntryFrom(const Statement& row, int column);

struct StoredHistoryEntry {
    HistoryEntryId id;
    Instant at;
    HistoryEntry entry;
    bool undone = false; ///< and not redone
};

/// The newest first, `most` at most, those before `before` where it is given.
Result<std::vector<StoredHistoryEntry>> readHistory(const LogbookFile& logbook, int most,
                                                    std::optional<HistoryEntryId> before = {});

/// Row by row, before and after. Empty for entries older than the record of changes.
Result<std::vector<ChangedRow>> readChangedRows(const LogbookFile& logbook, HistoryEntryId entry);

/// An entry as a description carries it to another logbook, where it has another id.
struct PastHistoryEntry {
    Instant at;
    HistoryEntry entry;            ///< without its `of`
    std::optional<std::size_t> of; ///< index of the entry that is undone or redone, an earlier one

    bool operator==(const PastHistoryEntry&) const = default;
};

/// All entries, oldest first. Where past ones were added, without the making of this file and the
/// load that brought them: they carry no record of their own.
Result<std::vector<PastHistoryEntry>> readHistoryEntries(const LogbookFile& logbook);
/// The ids of the same entries, in the same order.
Result<std::vector<HistoryEntryId>> readHistoryEntryIds(const LogbookFile& logbook);
/// Another text once the logbook was changed, or columns of logs were remembered.
Result<std::string> revisionOf(const LogbookFile& logbook);
/// Puts them before all entries of a logbook that is being made. They are there to be read: what
/// they changed has no record here, so undo passes over them. Their ids, in their order: below 0.
Result<std::vector<HistoryEntryId>> addPastEntries(const Change& change,
                                                   const std::vector<PastHistoryEntry>& entries);

} // namespace holdband::store
