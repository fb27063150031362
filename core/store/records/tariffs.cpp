#include "core/store/records/tariffs.h"

#include "core/store/sqlite/rows.h"

namespace holdband::store {

namespace {

int dayBits(const std::array<bool, 7>& days)
{
    int bits = 0;
    for (std::size_t day = 0; day < days.size(); ++day)
        bits |= (days[day] ? 1 : 0) << day;
    return bits;
}

std::array<bool, 7> daysOf(std::int64_t bits)
{
    std::array<bool, 7> days{};
    for (std::size_t day = 0; day < days.size(); ++day)
        days[day] = ((bits >> day) & 1) != 0;
    return days;
}

TariffWindow windowFrom(const Statement& row)
{
    return {daysOf(row.integer(0)), static_cast<int>(row.integer(1)),
            static_cast<int>(row.integer(2)), row.real(3)};
}

Done writeChange(const Database& database, const TariffChange& change)
{
    const std::int64_t from = toMs(change.from);
    HOLDBAND_TRY(execute(database,
                         "INSERT INTO tariff_changes (from_at, price_per_kwh) "
                         "VALUES (?, ?)",
                         from, change.tariff.pricePerKwh));
    for (std::size_t i = 0; i < change.tariff.windows.size(); ++i) {
        const TariffWindow& window = change.tariff.windows[i];
        HOLDBAND_TRY(execute(database,
                             "INSERT INTO tariff_change_windows VALUES (?, ?, ?, ?, ?, ?)", from,
                             static_cast<std::int64_t>(i), dayBits(window.days), window.fromMinute,
                             window.toMinute, window.pricePerKwh));
    }
    return {};
}

} // namespace

Result<std::vector<TariffWindow>> readFirstWindows(const Database& database)
{
    return query(
        database,
        "SELECT days, from_minute, to_minute, price_per_kwh FROM tariff_windows ORDER BY position",
        windowFrom);
}

Done writeFirstWindows(const Database& database, const std::vector<TariffWindow>& windows)
{
    HOLDBAND_TRY(database.execute("DELETE FROM tariff_windows"));
    for (std::size_t i = 0; i < windows.size(); ++i) {
        const TariffWindow& window = windows[i];
        HOLDBAND_TRY(execute(database, "INSERT INTO tariff_windows VALUES (?, ?, ?, ?, ?)",
                             static_cast<std::int64_t>(i), dayBits(window.days), window.fromMinute,
                             window.toMinute, window.pricePerKwh));
    }
    return {};
}

Result<std::vector<TariffChange>> readTariffChanges(const Database& database)
{
    auto changes =
        query(database, "SELECT from_at, price_per_kwh FROM tariff_changes ORDER BY from_at",
              [](const Statement& row) {
                  return TariffChange{row.instant(0), {row.optionalReal(1), {}}};
              });
    HOLDBAND_TRY(changes);
    for (TariffChange& change : *changes) {
        auto windows = query(database,
                             "SELECT days, from_minute, to_minute, price_per_kwh "
                             "FROM tariff_change_windows WHERE from_at = ? ORDER BY position",
                             windowFrom, toMs(change.from));
        HOLDBAND_TRY(windows);
        change.tariff.windows = std::move(*windows);
    }
    return changes;
}

Done writeTariffChanges(const Database& database, const std::vector<TariffChange>& changes)
{
    HOLDBAND_TRY(database.execute("DELETE FROM tariff_change_windows; DELETE FROM tariff_changes"));
    for (const TariffChange& change : changes)
        HOLDBAND_TRY(writeChange(database, change));
    return {};
}

} // namespace holdband::store
