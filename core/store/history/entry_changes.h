// The changesets of history entries, stored for undo and for the history. Not for use outside
// core/store.
#pragma once

#include "core/store/history/changeset.h"
#include "core/store/logbook_file.h"
#include "core/store/records/ids.h"

namespace holdband::store {

Done storeChanges(const Database& database, HistoryEntryId entry, const Changeset& changes);

/// The rows that the entry changed; empty if it changed nothing that is recorded. Problem (file):
/// the stored changeset is damaged.
Result<Changeset> changesOf(const Database& database, HistoryEntryId entry);

/// Entries whose stored changeset no longer matches its digest.
Result<std::vector<HistoryEntryId>> damagedChanges(const Database& database);

} // namespace holdband::store
