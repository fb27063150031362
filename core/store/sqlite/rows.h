// Small helpers to read rows and look names up. Not for use outside core/store.
#pragma once

#include "core/quantity/gravity.h"
#include "core/quantity/volume.h"
#include "core/store/logbook_file.h"

#include <map>
#include <string>
#include <vector>

namespace holdband::store {

/// Runs the statement to its end and makes a value from each row.
template <typename AnyStatement, typename Make>
auto collect(AnyStatement& statement, Make make) -> Result<std::vector<decltype(make(statement))>>
{
    std::vector<decltype(make(statement))> rows;
    for (;;) {
        auto row = statement.step();
        HOLDBAND_TRY(row);
        if (!*row)
            return rows;
        rows.push_back(make(statement));
    }
}

/// prepare, bindAll and collect in one: of records, or with query<BulkStatement> of rows in bulk.
template <typename AnyStatement = Statement, typename Make, typename... Values>
auto query(const Database& database, std::string_view sql, Make make, const Values&... values)
    -> Result<std::vector<decltype(make(std::declval<AnyStatement&>()))>>
{
    auto statement = database.prepare<AnyStatement>(sql);
    HOLDBAND_TRY(statement);
    statement->bindAll(values...);
    return collect(*statement, make);
}

/// Values by the id of what they belong to.
template <typename Value>
using ByOwner = std::map<std::int64_t, std::vector<Value>>;

/// Reads the values of all owners at once, where a query for each would take longer. The first
/// column is the owner's id.
template <typename Make>
auto queryByOwner(const Database& database, std::string_view sql, Make make)
    -> Result<ByOwner<decltype(make(std::declval<Statement&>()))>>
{
    ByOwner<decltype(make(std::declval<Statement&>()))> all;
    auto rows = query(database, sql, [&](const Statement& row) {
        all[row.integer(0)].push_back(make(row));
        return true;
    });
    HOLDBAND_TRY(rows);
    return all;
}

/// prepare, bindAll and run in one.
template <typename... Values>
Done execute(const Database& database, std::string_view sql, const Values&... values)
{
    auto statement = database.prepare(sql);
    HOLDBAND_TRY(statement);
    statement->bindAll(values...);
    return statement->run();
}

/// The id of a row by its name. `what` for the message: "setup".
Result<std::int64_t> idOf(const Database& database, std::string_view table, std::string_view what,
                          const std::string& name);

inline std::optional<std::int64_t> msOf(const std::optional<Instant>& at)
{
    return at ? std::optional(toMs(*at)) : std::nullopt;
}

/// An optional number as a quantity.
template <typename Make>
auto quantityOf(const std::optional<double>& number, Make make)
    -> std::optional<decltype(make(0.0))>
{
    return number ? std::optional(make(*number)) : std::nullopt;
}

// The quantities that are stored as plain numbers, for quantityOf.
inline constexpr auto asKelvins = [](double k) { return TemperatureDifference::kelvins(k); };
inline constexpr auto asCelsius = [](double celsius) { return Temperature::celsius(celsius); };
inline constexpr auto asLitres = [](double litres) { return Volume::litres(litres); };
inline constexpr auto asWatts = [](double watts) { return Power::watts(watts); };
inline constexpr auto asKilowattHours = [](double kwh) { return Energy::kilowattHours(kwh); };
inline constexpr auto asGravity = [](double sg) { return Gravity::specific(sg); };

// The inverse: the stored number of a quantity.
inline std::optional<double> storedNumber(const std::optional<TemperatureDifference>& difference)
{
    return difference ? std::optional(difference->kelvins()) : std::nullopt;
}

inline std::optional<double> storedNumber(const std::optional<Energy>& energy)
{
    return energy ? std::optional(energy->kilowattHours()) : std::nullopt;
}

inline std::optional<double> storedNumber(const std::optional<Power>& power)
{
    return power ? std::optional(power->watts()) : std::nullopt;
}

inline std::optional<double> storedNumber(const std::optional<Gravity>& gravity)
{
    return gravity ? std::optional(gravity->specific()) : std::nullopt;
}

inline std::optional<double> storedNumber(const std::optional<Hours>& hours)
{
    return hours ? std::optional(hours->count()) : std::nullopt;
}

} // namespace holdband::store
