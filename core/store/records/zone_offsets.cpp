#include "core/store/records/zone_offsets.h"

#include "core/store/sqlite/rows.h"
#include "core/text/zone.h"

namespace holdband::store {

namespace {

/// A logbook is hardly read after that.
constexpr Instant lastOffset{std::chrono::sys_days{std::chrono::year{2100} / 1 / 1}};

/// The zone without offsets; absent where there are some.
Result<std::optional<std::string>> zoneWithoutOffsets(const Database& database)
{
    auto zones = query(database,
                       "SELECT value FROM settings WHERE key = 'zone' AND NOT EXISTS "
                       "(SELECT 1 FROM zone_offsets WHERE zone = value)",
                       [](const Statement& row) { return row.text(0); });
    HOLDBAND_TRY(zones);
    return zones->empty() ? std::nullopt : std::optional(zones->front());
}

} // namespace

Done storeZoneOffsets(const Database& database)
{
    auto name = zoneWithoutOffsets(database);
    HOLDBAND_TRY(name);
    if (!*name)
        return {};
    const auto zone = Zone::named(**name);
    if (!zone)
        return {};
    for (const auto& [from, offset] : zone->offsets({earliestInstant, lastOffset}))
        HOLDBAND_TRY(execute(database, "INSERT INTO zone_offsets VALUES (?, ?, ?)",
                             std::string_view(**name), toMs(from), offset.count()));
    return {};
}

} // namespace holdband::store
