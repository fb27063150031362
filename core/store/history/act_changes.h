// The changesets of acts, kept for undo and for the history. Not for use outside core/store.
#pragma once

#include "core/store/history/changeset.h"
#include "core/store/logbook_file.h"
#include "core/store/records/ids.h"

namespace holdband::store {

Done keepChanges(const Database& database, HistoryEntryId act, const Changeset& changes);

/// What the act changed; empty where it changed nothing that is recorded.
/// Problem (file): the record is damaged.
Result<Changeset> changesOf(const Database& database, HistoryEntryId act);

/// Acts whose record no longer fits its digest.
Result<std::vector<HistoryEntryId>> damagedChanges(const Database& database);

} // namespace holdband::store
