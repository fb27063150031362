#include "core/store/equipment.h"

#include "core/logbook/names.h"
#include "core/store/naming.h"
#include "core/store/rows.h"
#include "core/text/numbers.h"

#include <algorithm>

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

Done writeSetting(const Database& database, std::string_view key, const std::string& value)
{
    return execute(database, "INSERT OR REPLACE INTO settings (key, value) VALUES (?, ?)", key,
                   std::string_view(value));
}

Result<std::vector<Offset>> readOffsets(const Database& database, std::int64_t sensor)
{
    return query(
        database, "SELECT from_at, add_k, doubt_k FROM offsets WHERE sensor = ? ORDER BY from_at",
        [](const Statement& row) {
            return Offset{instantFromMs(row.integer(0)),
                          TemperatureDifference::kelvins(row.real(1)),
                          quantityOf(row.optionalReal(2), [](double kelvins) {
                              return TemperatureDifference::kelvins(kelvins);
                          })};
        },
        sensor);
}

Result<std::vector<Part>> readParts(const Database& database, std::int64_t setup)
{
    return query(
        database, "SELECT item, quantity, price FROM parts WHERE setup = ? ORDER BY position",
        [](const Statement& row) {
            return Part{row.text(0), row.real(1), row.real(2)};
        },
        setup);
}

Done readRatings(const Database& database, std::int64_t setup, Setup& into)
{
    auto rows = query(
        database, "SELECT criterion, rating FROM ratings WHERE setup = ?",
        [](const Statement& row) { return std::pair(row.text(0), row.real(1)); }, setup);
    HOLDBAND_TRY(rows);
    into.ratings.insert(rows->begin(), rows->end());
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
        else if (const auto price = scanDecimal(value); key == "price_per_kwh" && price)
            settings.tariff.pricePerKwh = price->value;
    }
    auto windows = query(
        database,
        "SELECT days, from_minute, to_minute, price_per_kwh FROM tariff_windows ORDER BY position",
        [](const Statement& row) {
            return TariffWindow{daysOf(row.integer(0)), static_cast<int>(row.integer(1)),
                                static_cast<int>(row.integer(2)), row.real(3)};
        });
    HOLDBAND_TRY(windows);
    settings.tariff.windows = std::move(*windows);
    return settings;
}

Done writeSettings(const Change& change, const LogbookSettings& settings)
{
    const Database& database = change.database();
    HOLDBAND_TRY(writeSetting(database, "zone", settings.zone));
    HOLDBAND_TRY(writeSetting(database, "units", std::string(nameOf(settings.units))));
    HOLDBAND_TRY(writeSetting(database, "currency", settings.currency));
    HOLDBAND_TRY(database.execute("DELETE FROM tariff_windows; "
                                  "DELETE FROM settings WHERE key = 'price_per_kwh'"));
    const Tariff& tariff = settings.tariff;
    if (tariff.pricePerKwh)
        HOLDBAND_TRY(writeSetting(database, "price_per_kwh", shortestText(*tariff.pricePerKwh)));
    for (std::size_t i = 0; i < tariff.windows.size(); ++i) {
        const TariffWindow& window = tariff.windows[i];
        HOLDBAND_TRY(execute(database, "INSERT INTO tariff_windows VALUES (?, ?, ?, ?, ?)",
                             static_cast<std::int64_t>(i), dayBits(window.days), window.fromMinute,
                             window.toMinute, window.pricePerKwh));
    }
    return {};
}

Result<std::vector<Setup>> readSetups(const LogbookFile& logbook)
{
    const Database& database = logbook.database();
    std::vector<std::int64_t> ids;
    auto setups =
        query(database, "SELECT id, name, kind, vessels, rated_power_w FROM setups ORDER BY id",
              [&](const Statement& row) {
                  ids.push_back(row.integer(0));
                  Setup setup;
                  setup.name = row.text(1);
                  setup.kind = row.text(2);
                  setup.vessels = static_cast<int>(row.integer(3));
                  setup.ratedPower = quantityOf(row.optionalReal(4),
                                                [](double watts) { return Power::watts(watts); });
                  return setup;
              });
    HOLDBAND_TRY(setups);
    for (std::size_t i = 0; i < setups->size(); ++i) {
        auto parts = readParts(database, ids[i]);
        HOLDBAND_TRY(parts);
        (*setups)[i].parts = std::move(*parts);
        HOLDBAND_TRY(readRatings(database, ids[i], (*setups)[i]));
    }
    return setups;
}

Done addSetup(const Change& change, const Setup& setup)
{
    const Database& database = change.database();
    HOLDBAND_TRY(checkNameIsFree(database, "setups", "setup", setup.name));
    HOLDBAND_TRY(execute(database,
                         "INSERT INTO setups (name, kind, vessels, rated_power_w, act) "
                         "VALUES (?, ?, ?, ?, ?)",
                         std::string_view(setup.name), std::string_view(setup.kind), setup.vessels,
                         setup.ratedPower ? std::optional(setup.ratedPower->watts()) : std::nullopt,
                         change.act().value));
    const std::int64_t id = database.lastRowId();
    for (std::size_t i = 0; i < setup.parts.size(); ++i) {
        const Part& part = setup.parts[i];
        HOLDBAND_TRY(execute(database, "INSERT INTO parts VALUES (?, ?, ?, ?, ?)", id,
                             static_cast<std::int64_t>(i), std::string_view(part.item),
                             part.quantity, part.price));
    }
    for (const auto& [criterion, rating] : setup.ratings)
        HOLDBAND_TRY(execute(database, "INSERT INTO ratings VALUES (?, ?, ?)", id,
                             std::string_view(criterion), rating));
    return {};
}

namespace {

Result<std::optional<std::int64_t>> optionalSetupId(const Database& database,
                                                    const std::optional<std::string>& setup)
{
    if (!setup)
        return std::optional<std::int64_t>();
    auto id = idOf(database, "setups", "setup", *setup);
    HOLDBAND_TRY(id);
    return std::optional(*id);
}

} // namespace

Result<std::vector<Sensor>> readSensors(const LogbookFile& logbook)
{
    const Database& database = logbook.database();
    std::vector<std::int64_t> ids;
    auto sensors = query(database,
                         "SELECT s.id, s.name, s.reads, u.name, s.accuracy_k, s.placement "
                         "FROM sensors s LEFT JOIN setups u ON u.id = s.setup ORDER BY s.id",
                         [&](const Statement& row) {
                             ids.push_back(row.integer(0));
                             Sensor sensor;
                             sensor.name = row.text(1);
                             sensor.reads =
                                 choiceNamed<Reads>(row.text(2)).value_or(Reads::ambient);
                             if (!row.isNull(3))
                                 sensor.setup = row.text(3);
                             sensor.accuracy = quantityOf(row.optionalReal(4), [](double kelvins) {
                                 return TemperatureDifference::kelvins(kelvins);
                             });
                             sensor.placement = row.text(5);
                             return sensor;
                         });
    HOLDBAND_TRY(sensors);
    for (std::size_t i = 0; i < sensors->size(); ++i) {
        auto offsets = readOffsets(database, ids[i]);
        HOLDBAND_TRY(offsets);
        (*sensors)[i].offsets = std::move(*offsets);
    }
    return sensors;
}

Done addSensor(const Change& change, const Sensor& sensor)
{
    const Database& database = change.database();
    HOLDBAND_TRY(checkNameIsFree(database, "sensors", "sensor", sensor.name));
    auto setup = optionalSetupId(database, sensor.setup);
    HOLDBAND_TRY(setup);
    HOLDBAND_TRY(execute(database,
                         "INSERT INTO sensors (name, reads, setup, accuracy_k, placement, act) "
                         "VALUES (?, ?, ?, ?, ?, ?)",
                         std::string_view(sensor.name), nameOf(sensor.reads), *setup,
                         sensor.accuracy ? std::optional(sensor.accuracy->kelvins()) : std::nullopt,
                         std::string_view(sensor.placement), change.act().value));
    const std::int64_t id = database.lastRowId();
    for (const Offset& offset : sensor.offsets)
        HOLDBAND_TRY(execute(database, "INSERT INTO offsets VALUES (?, ?, ?, ?)", id,
                             toMs(offset.from), offset.add.kelvins(),
                             offset.doubt ? std::optional(offset.doubt->kelvins()) : std::nullopt));
    return {};
}

Result<std::vector<Meter>> readMeters(const LogbookFile& logbook)
{
    return query(logbook.database(),
                 "SELECT m.name, u.name, m.resolution_kwh, m.rolls_over_at_kwh, m.accuracy, "
                 "m.from_at, m.to_at FROM meters m JOIN setups u ON u.id = m.setup ORDER BY m.id",
                 [](const Statement& row) {
                     const auto energy = [](double kwh) { return Energy::kilowattHours(kwh); };
                     Meter meter;
                     meter.name = row.text(0);
                     meter.setup = row.text(1);
                     meter.resolution = quantityOf(row.optionalReal(2), energy);
                     meter.rollsOverAt = quantityOf(row.optionalReal(3), energy);
                     meter.accuracy = row.optionalReal(4);
                     meter.from = instantOf(row.optionalInteger(5));
                     meter.to = instantOf(row.optionalInteger(6));
                     return meter;
                 });
}

Done addMeter(const Change& change, const Meter& meter)
{
    const Database& database = change.database();
    HOLDBAND_TRY(checkNameIsFree(database, "meters", "meter", meter.name));
    auto setup = idOf(database, "setups", "setup", meter.setup);
    HOLDBAND_TRY(setup);
    const auto kwh = [](const std::optional<Energy>& energy) {
        return energy ? std::optional(energy->kilowattHours()) : std::nullopt;
    };
    return execute(database,
                   "INSERT INTO meters (name, setup, resolution_kwh, rolls_over_at_kwh, accuracy, "
                   "from_at, to_at, act) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                   std::string_view(meter.name), *setup, kwh(meter.resolution),
                   kwh(meter.rollsOverAt), meter.accuracy, msOf(meter.from), msOf(meter.to),
                   change.act().value);
}

} // namespace holdband::store
