#include "core/store/records/exclusions.h"

#include "core/store/sqlite/rows.h"

namespace holdband::store {

Result<std::vector<Exclusion>> readExclusions(const LogbookFile& logbook)
{
    return query(logbook.database(),
                 "SELECT s.name, e.from_at, e.to_at, e.why, e.id FROM exclusions e "
                 "JOIN sensors s ON s.id = e.sensor ORDER BY e.from_at, e.id",
                 [](const Statement& row) {
                     return Exclusion{row.text(0),
                                      {row.instant(1), row.instant(2)},
                                      row.text(3),
                                      {row.integer(4)}};
                 });
}

Done addExclusion(const Change& change, const Exclusion& exclusion)
{
    const Database& database = change.database();
    auto sensor = idOf(database, "sensors", "sensor", exclusion.sensor);
    HOLDBAND_TRY(sensor);
    return execute(database,
                   "INSERT INTO exclusions (sensor, from_at, to_at, why, act) "
                   "VALUES (?, ?, ?, ?, ?)",
                   *sensor, toMs(exclusion.span.start), toMs(exclusion.span.end),
                   FreeText{exclusion.why}, change.entry().value);
}

Done removeExclusion(const Change& change, ExclusionId exclusion)
{
    return execute(change.database(), "DELETE FROM exclusions WHERE id = ?", exclusion.value);
}

} // namespace holdband::store
