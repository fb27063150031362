#include "core/store/records/journal.h"

#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"

namespace holdband::store {

namespace {

Result<std::optional<std::int64_t>> batchId(const Database& database, const JournalNote& note)
{
    if (!note.batch)
        return std::optional<std::int64_t>();
    auto id = idOf(database, "batches", "batch", *note.batch);
    HOLDBAND_TRY(id);
    return std::optional(*id);
}

Done checkText(const JournalNote& note)
{
    if (note.text.find_first_not_of(" \t\r\n") == std::string::npos)
        return dataProblem(Phrase::tr("the note has no words"));
    return {};
}

} // namespace

Result<std::vector<StoredNote>> readNotes(const LogbookFile& logbook)
{
    return query(logbook.database(),
                 "SELECT j.id, j.at, b.name, j.text FROM journal j "
                 "LEFT JOIN batches b ON b.id = j.batch ORDER BY j.at, j.id",
                 [](const Statement& row) {
                     StoredNote stored{{row.integer(0)}, {row.instant(1), {}, row.text(3)}};
                     if (!row.isNull(2))
                         stored.note.batch = row.text(2);
                     return stored;
                 });
}

Result<std::vector<JournalNote>> readJournal(const LogbookFile& logbook)
{
    auto stored = readNotes(logbook);
    HOLDBAND_TRY(stored);
    std::vector<JournalNote> notes;
    for (StoredNote& note : *stored)
        notes.push_back(std::move(note.note));
    return notes;
}

Done addNote(const Change& change, const JournalNote& note)
{
    HOLDBAND_TRY(checkText(note));
    auto batch = batchId(change.database(), note);
    HOLDBAND_TRY(batch);
    return execute(change.database(),
                   "INSERT INTO journal (at, batch, text, act) VALUES (?, ?, ?, ?)", toMs(note.at),
                   *batch, FreeText{note.text}, change.entry().value);
}

Done updateNote(const Change& change, NoteId id, const JournalNote& note)
{
    HOLDBAND_TRY(checkText(note));
    auto batch = batchId(change.database(), note);
    HOLDBAND_TRY(batch);
    return execute(change.database(), "UPDATE journal SET at = ?, batch = ?, text = ? WHERE id = ?",
                   toMs(note.at), *batch, FreeText{note.text}, id.value);
}

Done removeNote(const Change& change, NoteId id)
{
    return execute(change.database(), "DELETE FROM journal WHERE id = ?", id.value);
}

} // namespace holdband::store
