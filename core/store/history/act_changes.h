// The changesets of acts, kept for undo and for the history. Not for use outside core/store.
#pragma once

#include "core/store/history/changeset.h"
#include "core/store/logbook_file.h"
#include "core/store/records/ids.h"

namespace holdband::store {

Done keepChanges(const Database& database, ActId act, const Changeset& changes);

/// What the act changed; empty where it changed nothing that is recorded.
/// Problem (file): the record is damaged.
Result<Changeset> changesOf(const Database& database, ActId act);

/// Acts whose record no longer fits its digest.
Result<std::vector<ActId>> damagedChanges(const Database& database);

} // namespace holdband::store
