// The journal: remarks with their time, of a batch or of the logbook as such.
#pragma once

#include "core/model/readings.h"
#include "core/store/logbook_file.h"

#include <vector>

namespace holdband::store {

struct StoredNote {
    NoteId id;
    JournalNote note;
};

/// All notes in order of time.
Result<std::vector<JournalNote>> readJournal(const LogbookFile& logbook);
Result<std::vector<StoredNote>> readNotes(const LogbookFile& logbook);

/// Problem (data): an unknown batch, or no text.
Done addNote(const Change& change, const JournalNote& note);
Done updateNote(const Change& change, NoteId id, const JournalNote& note);
Done removeNote(const Change& change, NoteId id);

} // namespace holdband::store
