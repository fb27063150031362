#include "core/store/records/log_maps.h"

#include "core/store/sqlite/rows.h"

namespace holdband::store {

Result<std::optional<std::string>> readLogMap(const LogbookFile& logbook, const std::string& shape)
{
    auto rows = query(
        logbook.database(), "SELECT spec FROM log_maps WHERE shape = ?",
        [](const Statement& row) { return row.text(0); }, std::string_view(shape));
    HOLDBAND_TRY(rows);
    return rows->empty() ? std::nullopt : std::optional(rows->front());
}

Done writeLogMap(const Change& change, const std::string& shape, const std::string& spec)
{
    return execute(change.database(),
                   "INSERT INTO log_maps (shape, spec, used_at) VALUES (?, ?, ?) "
                   "ON CONFLICT (shape) DO UPDATE SET spec = excluded.spec, "
                   "used_at = excluded.used_at",
                   std::string_view(shape), std::string_view(spec), toMs(change.at()));
}

Result<std::vector<LogMap>> readLogMaps(const LogbookFile& logbook)
{
    return query(logbook.database(), "SELECT shape, spec, used_at FROM log_maps ORDER BY shape",
                 [](const Statement& row) {
                     return LogMap{row.text(0), row.text(1), row.instant(2)};
                 });
}

Done addLogMap(const Change& change, const LogMap& map)
{
    return execute(change.database(),
                   "INSERT INTO log_maps (shape, spec, used_at) VALUES (?, ?, ?) "
                   "ON CONFLICT (shape) DO NOTHING",
                   std::string_view(map.shape), std::string_view(map.spec), toMs(map.used));
}

} // namespace holdband::store
