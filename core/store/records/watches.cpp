#include "core/store/records/watches.h"

#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"

namespace holdband::store {

Result<std::vector<Watch>> readWatches(const LogbookFile& logbook)
{
    return query(logbook.database(), "SELECT id, path, spec, state FROM watches ORDER BY id",
                 [](const Statement& row) {
                     return Watch{row.integer(0), row.text(1), row.text(2), row.text(3)};
                 });
}

Done addWatch(const Change& change, const std::string& path, const std::string& spec)
{
    auto there = query(
        change.database(), "SELECT 1 FROM watches WHERE path = ?",
        [](const Statement& row) { return row.integer(0); }, std::string_view(path));
    HOLDBAND_TRY(there);
    if (!there->empty())
        return dataProblem(Phrase::tr("this is watched already"), path);
    return execute(change.database(), "INSERT INTO watches (path, spec, state) VALUES (?, ?, '')",
                   std::string_view(path), std::string_view(spec));
}

Done setWatchState(const Change& change, std::int64_t id, const std::string& state)
{
    HOLDBAND_TRY(change.pauseRecording());
    HOLDBAND_TRY(execute(change.database(), "UPDATE watches SET state = ? WHERE id = ?",
                         std::string_view(state), id));
    return change.resumeRecording();
}

Done removeWatch(const Change& change, std::int64_t id)
{
    return execute(change.database(), "DELETE FROM watches WHERE id = ?", id);
}

} // namespace holdband::store
