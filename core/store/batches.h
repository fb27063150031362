// Batches, their schedules and the journal in the store.
#pragma once

#include "core/logbook/batch.h"
#include "core/logbook/readings.h"
#include "core/store/logbook_file.h"

#include <vector>

namespace holdband::store {

/// In order of pitching.
Result<std::vector<Batch>> readBatches(const LogbookFile& logbook);
/// Problem (data): unknown; near names are listed.
Result<Batch> readBatch(const LogbookFile& logbook, const std::string& name);
Done addBatch(const Change& change, const Batch& batch);

/// All notes in order of time.
Result<std::vector<JournalNote>> readJournal(const LogbookFile& logbook);
Done addNote(const Change& change, const JournalNote& note);

} // namespace holdband::store
