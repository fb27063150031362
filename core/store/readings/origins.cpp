#include "core/store/readings/origins.h"

#include "core/store/sqlite/rows.h"

namespace holdband::store {

namespace {

Done setHeader(const Database& database, std::int64_t import, const std::string& sensor,
               const std::string& header)
{
    return execute(database,
                   "UPDATE import_columns SET header = ? WHERE import = ? "
                   "AND sensor = (SELECT id FROM sensors WHERE name = ?)",
                   std::string_view(header), import, std::string_view(sensor));
}

Done setLines(const Database& database, std::int64_t import, std::int64_t sensor,
              const std::vector<std::pair<Instant, std::int64_t>>& runs)
{
    HOLDBAND_TRY(execute(database, "DELETE FROM source_lines WHERE import = ? AND sensor = ?",
                         import, sensor));
    for (const auto& [at, line] : runs)
        HOLDBAND_TRY(execute(database,
                             "INSERT OR REPLACE INTO source_lines "
                             "(import, sensor, first_at, first_line) VALUES (?, ?, ?, ?)",
                             import, sensor, toMs(at), line));
    return {};
}

} // namespace

Done setOrigin(const Change& change, ImportId import, const Origin& origin)
{
    const Database& database = change.database();
    for (const auto& [sensor, header] : origin.headers)
        HOLDBAND_TRY(setHeader(database, import.value, sensor, header));
    for (const auto& [sensor, runs] : origin.lines) {
        auto id = idOf(database, "sensors", "sensor", sensor);
        HOLDBAND_TRY(id);
        HOLDBAND_TRY(setLines(database, import.value, *id, runs));
    }
    return {};
}

} // namespace holdband::store
