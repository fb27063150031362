#include "core/store/safety/daily_backup.h"

#include "core/store/logbook_file.h"
#include "core/store/records/equipment.h"

#include <algorithm>
#include <optional>

namespace holdband::store {

namespace {

/// Whether there is more than the entry for its creation.
Result<bool> holdsAnything(const Database& database)
{
    auto entries = database.integer("SELECT count(*) FROM (SELECT 1 FROM acts LIMIT 2)");
    HOLDBAND_TRY(entries);
    return *entries > 1;
}

Result<Zone> zoneOf(const LogbookFile& file)
{
    auto settings = readSettings(file);
    HOLDBAND_TRY(settings);
    return Zone::named(settings->zone);
}

/// Not only of the newest: a clock that was ahead may have left copies of later days.
bool hasCopyOf(Date day, const std::vector<BackupCopy>& copies)
{
    return std::any_of(copies.begin(), copies.end(), [day](const BackupCopy& copy) {
        return std::chrono::floor<std::chrono::days>(copy.taken) == std::chrono::local_days(day);
    });
}

} // namespace

void DailyBackup::beforeChange(const LogbookFile& file)
{
    const Instant now = file.now();
    if (m_done.start <= now && now < m_done.end)
        return;
    const auto worth = holdsAnything(file.database());
    if (worth && !*worth)
        return;
    const auto zone = zoneOf(file);
    if (!worth || !zone) { // tried again at the next change
        tell(failure(worth ? zone.error() : worth.error()));
        return;
    }
    const Date today = zone->localDate(now);
    m_done = {zone->startOfDay(today),
              zone->startOfDay(Date(std::chrono::local_days(today) + std::chrono::days{1}))};
    const std::string place = m_options.place ? m_options.place() : std::string();
    if (hasCopyOf(today, listBackups(file.path(), place)))
        return;
    tell(makeBackup(file.database(), place, zone->toLocal(now)));
}

void DailyBackup::tell(const Result<BackupCopy>& made) const
{
    if (m_options.onResult)
        m_options.onResult(made);
}

} // namespace holdband::store
