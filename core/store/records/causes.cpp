#include "core/store/records/causes.h"

#include "core/model/names.h"
#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"

namespace holdband::store {

namespace {

StoredCause causeFrom(const Statement& row)
{
    StoredCause stored;
    stored.id = {row.integer(0)};
    stored.cause.span = {row.instant(1), row.instant(2)};
    stored.cause.side = choiceNamed<Side>(row.text(3)).value_or(Side::above);
    if (!row.isNull(4))
        stored.cause.cause = choiceNamed<Cause>(row.text(4)).value_or(Cause::other);
    stored.cause.note = row.text(5);
    return stored;
}

Done checkCause(const ExcursionCause& cause)
{
    if (cause.span.end < cause.span.start)
        return dataProblem(Phrase::tr("the excursion ends before it begins"));
    if (!cause.cause && cause.note.find_first_not_of(" \t\r\n") == std::string::npos)
        return dataProblem(Phrase::tr("there is neither a cause nor a note"));
    return {};
}

} // namespace

Result<std::vector<StoredCause>> readCauses(const LogbookFile& logbook, const std::string& batch)
{
    const Database& database = logbook.database();
    auto id = idOf(database, "batches", "batch", batch);
    HOLDBAND_TRY(id);
    return query(database,
                 "SELECT id, from_at, to_at, side, cause, note FROM causes WHERE batch = ? "
                 "ORDER BY from_at, id",
                 causeFrom, *id);
}

Done addCause(const Change& change, const std::string& batch, const ExcursionCause& cause)
{
    HOLDBAND_TRY(checkCause(cause));
    const Database& database = change.database();
    auto id = idOf(database, "batches", "batch", batch);
    HOLDBAND_TRY(id);
    const auto name = cause.cause ? std::optional(nameOf(*cause.cause)) : std::nullopt;
    return execute(database,
                   "INSERT INTO causes (batch, from_at, to_at, side, cause, note, act) "
                   "VALUES (?, ?, ?, ?, ?, ?, ?)",
                   *id, toMs(cause.span.start), toMs(cause.span.end), nameOf(cause.side), name,
                   FreeText{cause.note}, change.entry().value);
}

Done removeCause(const Change& change, CauseId cause)
{
    return execute(change.database(), "DELETE FROM causes WHERE id = ?", cause.value);
}

} // namespace holdband::store
