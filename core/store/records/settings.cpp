#include "core/store/records/equipment.h"

#include "core/assign_result.h"
#include "core/model/names.h"
#include "core/store/records/tariffs.h"
#include "core/store/sqlite/rows.h"
#include "core/text/numbers.h"

#include <algorithm>
#include <cmath>

namespace holdband::store {

namespace {

Done writeSetting(const Database& database, std::string_view key, const std::string& value)
{
    return execute(database, "INSERT OR REPLACE INTO settings (key, value) VALUES (?, ?)", key,
                   FreeText{value, longestName});
}

constexpr std::string_view timeDoubtKey = "time_doubt_min";

/// From a number of minutes, within what is possible.
Milliseconds timeDoubtOf(double minutes)
{
    const double ms = std::round(minutes * 60'000.0);
    return wholeMs(std::clamp(ms, 0.0, static_cast<double>(mostTimeDoubt.count())));
}

/// None is not written.
Done writeTimeDoubt(const Database& database, Milliseconds doubt)
{
    HOLDBAND_TRY(execute(database, "DELETE FROM settings WHERE key = ?", timeDoubtKey));
    if (doubt == Milliseconds{0})
        return {};
    return writeSetting(database, timeDoubtKey,
                        shortestText(static_cast<double>(doubt.count()) / 60000.0));
}

Result<std::vector<RoundWindow>> readRoundWindows(const Database& database)
{
    return query(database,
                 "SELECT label, from_minute, to_minute FROM round_windows ORDER BY position",
                 [](const Statement& row) {
                     return RoundWindow{row.text(0), static_cast<int>(row.integer(1)),
                                        static_cast<int>(row.integer(2))};
                 });
}

/// The default windows are not written, so that a logbook follows a later default.
Done writeRoundWindows(const Database& database, const std::vector<RoundWindow>& rounds)
{
    HOLDBAND_TRY(database.execute("DELETE FROM round_windows"));
    if (rounds == usualRounds())
        return {};
    for (std::size_t i = 0; i < rounds.size(); ++i)
        HOLDBAND_TRY(execute(database, "INSERT INTO round_windows VALUES (?, ?, ?, ?)",
                             static_cast<std::int64_t>(i), FreeText{rounds[i].label, longestName},
                             rounds[i].fromMinute, rounds[i].toMinute));
    return {};
}

} // namespace

Result<LogbookSettings> readSettings(const LogbookFile& logbook)
{
    const Database& database = logbook.database();
    auto rows = query(database, "SELECT key, value FROM settings",
                      [](const Statement& row) { return std::pair(row.text(0), row.text(1)); });
    HOLDBAND_TRY(rows);
    LogbookSettings settings;
    for (const auto& [key, value] : *rows) {
        if (key == "zone")
            settings.zone = value;
        else if (key == "units")
            settings.units = choiceNamed<UnitSystem>(value).value_or(settings.units);
        else if (key == "currency")
            settings.currency = value;
        else if (const auto number = scanDecimal(value); number && key == "price_per_kwh")
            settings.tariff.pricePerKwh = number->value;
        else if (number && key == timeDoubtKey)
            settings.timeDoubt = timeDoubtOf(number->value);
    }
    HOLDBAND_TRY(assignResult(readFirstWindows(database), settings.tariff.windows));
    HOLDBAND_TRY(assignResult(readTariffChanges(database), settings.tariffChanges));
    auto rounds = readRoundWindows(database);
    HOLDBAND_TRY(rounds);
    if (!rounds->empty())
        settings.rounds = std::move(*rounds);
    return settings;
}

Done writeSettings(const Change& change, const LogbookSettings& settings)
{
    const Database& database = change.database();
    HOLDBAND_TRY(writeSetting(database, "zone", settings.zone));
    HOLDBAND_TRY(writeSetting(database, "units", std::string(nameOf(settings.units))));
    HOLDBAND_TRY(writeSetting(database, "currency", settings.currency));
    HOLDBAND_TRY(database.execute("DELETE FROM settings WHERE key = 'price_per_kwh'"));
    if (settings.tariff.pricePerKwh)
        HOLDBAND_TRY(
            writeSetting(database, "price_per_kwh", shortestText(*settings.tariff.pricePerKwh)));
    HOLDBAND_TRY(writeTimeDoubt(database, settings.timeDoubt));
    HOLDBAND_TRY(writeFirstWindows(database, settings.tariff.windows));
    HOLDBAND_TRY(writeTariffChanges(database, settings.tariffChanges));
    return writeRoundWindows(database, settings.rounds);
}

} // namespace holdband::store
