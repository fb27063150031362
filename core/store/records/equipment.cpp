#include "core/store/records/equipment.h"

#include "core/model/names.h"
#include "core/store/records/naming.h"
#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"
#include "core/text/places.h"

#include <algorithm>

namespace holdband::store {

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

/// The row's id by its old name, after checking that it may take the new one.
Result<std::int64_t> idToRename(const Database& database, std::string_view table,
                                std::string_view what, const std::string& old,
                                const std::string& fresh)
{
    auto id = idOf(database, table, what, old);
    HOLDBAND_TRY(id);
    HOLDBAND_TRY(checkNameIsFree(database, table, what, fresh, *id));
    return id;
}

/// Refuses if one of the queries, each with one parameter, finds a row.
Done checkUnused(const Database& database, std::int64_t id, const std::string& name,
                 std::initializer_list<std::pair<std::string_view, std::string>> users)
{
    for (const auto& [sql, what] : users) {
        auto rows = query(
            database, std::string(sql) + " LIMIT 1", [](const Statement&) { return true; }, id);
        HOLDBAND_TRY(rows);
        if (!rows->empty())
            return dataProblem(Phrase::tr("\"%1\" is in use: %2").with(name, what), {},
                               Phrase::tr("retire it instead"));
    }
    return {};
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

Done writePartsAndRatings(const Database& database, std::int64_t id, const Setup& setup)
{
    HOLDBAND_TRY(execute(database, "DELETE FROM parts WHERE setup = ?", id));
    HOLDBAND_TRY(execute(database, "DELETE FROM ratings WHERE setup = ?", id));
    for (std::size_t i = 0; i < setup.parts.size(); ++i) {
        const Part& part = setup.parts[i];
        HOLDBAND_TRY(execute(database, "INSERT INTO parts VALUES (?, ?, ?, ?, ?)", id,
                             static_cast<std::int64_t>(i), FreeText{part.item, longestName},
                             part.quantity, part.price));
    }
    for (const auto& [criterion, rating] : setup.ratings)
        HOLDBAND_TRY(execute(database, "INSERT INTO ratings VALUES (?, ?, ?)", id,
                             FreeText{criterion, longestName}, rating));
    return {};
}

Done checkSetup(const Setup& setup)
{
    const std::string place = setupPlace(setup.name);
    if (setup.vessels < 1)
        return dataProblem(Phrase::tr("a setup has at least one vessel"), place);
    for (const Part& part : setup.parts) {
        if (!(part.quantity >= 0.0) || !(part.price >= 0.0))
            return dataProblem(Phrase::tr("quantity and price must not be negative"),
                               place + ", " + part.item);
    }
    return {};
}

} // namespace

Result<std::vector<Setup>> readSetups(const LogbookFile& logbook)
{
    const Database& database = logbook.database();
    std::vector<std::int64_t> ids;
    auto setups =
        query(database,
              "SELECT id, name, kind, vessels, rated_power_w, retired_at FROM setups ORDER BY id",
              [&](const Statement& row) {
                  ids.push_back(row.integer(0));
                  Setup setup;
                  setup.name = row.text(1);
                  setup.kind = row.text(2);
                  setup.vessels = static_cast<int>(row.integer(3));
                  setup.ratedPower = quantityOf(row.optionalReal(4), asWatts);
                  setup.retired = row.optionalInstant(5);
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
    HOLDBAND_TRY(checkSetup(setup));
    HOLDBAND_TRY(execute(database,
                         "INSERT INTO setups (name, kind, vessels, rated_power_w, retired_at, act) "
                         "VALUES (?, ?, ?, ?, ?, ?)",
                         std::string_view(setup.name), FreeText{setup.kind, longestName},
                         setup.vessels, storedNumber(setup.ratedPower), msOf(setup.retired),
                         change.entry().value));
    return writePartsAndRatings(database, database.lastRowId(), setup);
}

Done updateSetup(const Change& change, const std::string& name, const Setup& setup)
{
    const Database& database = change.database();
    auto id = idToRename(database, "setups", "setup", name, setup.name);
    HOLDBAND_TRY(id);
    HOLDBAND_TRY(checkSetup(setup));
    HOLDBAND_TRY(execute(database,
                         "UPDATE setups SET name = ?, kind = ?, vessels = ?, rated_power_w = ?, "
                         "retired_at = ? WHERE id = ?",
                         std::string_view(setup.name), FreeText{setup.kind, longestName},
                         setup.vessels, storedNumber(setup.ratedPower), msOf(setup.retired), *id));
    return writePartsAndRatings(database, *id, setup);
}

Done removeSetup(const Change& change, const std::string& name)
{
    const Database& database = change.database();
    auto id = idOf(database, "setups", "setup", name);
    HOLDBAND_TRY(id);
    HOLDBAND_TRY(checkUnused(
        database, *id, name,
        {{"SELECT 1 FROM batches WHERE setup = ?", Phrase::tr("a batch ran on it")},
         {"SELECT 1 FROM meters WHERE setup = ?", Phrase::tr("a meter counts for it")},
         {"SELECT 1 FROM meter_moves WHERE setup = ?", Phrase::tr("a meter counted for it")},
         {"SELECT 1 FROM sensors WHERE setup = ?", Phrase::tr("a sensor belongs to it")}}));
    HOLDBAND_TRY(writePartsAndRatings(database, *id, Setup{}));
    return execute(database, "DELETE FROM setups WHERE id = ?", *id);
}

namespace {

Result<std::vector<Offset>> readOffsets(const Database& database, std::int64_t sensor)
{
    return query(
        database,
        "SELECT from_at, add_k, doubt_k, why FROM offsets WHERE sensor = ? ORDER BY from_at",
        [](const Statement& row) {
            return Offset{row.instant(0), TemperatureDifference::kelvins(row.real(1)),
                          quantityOf(row.optionalReal(2), asKelvins), row.text(3)};
        },
        sensor);
}

Done writeOffsets(const Database& database, std::int64_t id, const Sensor& sensor)
{
    HOLDBAND_TRY(execute(database, "DELETE FROM offsets WHERE sensor = ?", id));
    for (std::size_t i = 0; i < sensor.offsets.size(); ++i) {
        const Offset& offset = sensor.offsets[i];
        if (i > 0 && offset.from <= sensor.offsets[i - 1].from)
            return dataProblem(Phrase::tr("two offsets begin at the same time, or not in order"),
                               sensorPlace(sensor.name));
        HOLDBAND_TRY(execute(database, "INSERT INTO offsets VALUES (?, ?, ?, ?, ?)", id,
                             toMs(offset.from), offset.add.kelvins(), storedNumber(offset.doubt),
                             FreeText{offset.why}));
    }
    return {};
}

Sensor sensorFrom(const Statement& row)
{
    Sensor sensor;
    sensor.name = row.text(1);
    sensor.reads = choiceNamed<SensorKind>(row.text(2)).value_or(SensorKind::ambient);
    if (!row.isNull(3))
        sensor.setup = row.text(3);
    sensor.accuracy = quantityOf(row.optionalReal(4), asKelvins);
    sensor.placement = row.text(5);
    sensor.readByHand = row.integer(6) != 0;
    sensor.retired = row.optionalInstant(7);
    sensor.intervalTime = choiceNamed<IntervalTime>(row.text(8)).value_or(IntervalTime::start);
    return sensor;
}

} // namespace

Result<std::vector<Sensor>> readSensors(const LogbookFile& logbook)
{
    const Database& database = logbook.database();
    std::vector<std::int64_t> ids;
    auto sensors = query(database,
                         "SELECT s.id, s.name, s.reads, u.name, s.accuracy_k, s.placement, "
                         "s.by_hand, s.retired_at, s.interval_time "
                         "FROM sensors s LEFT JOIN setups u ON u.id = s.setup ORDER BY s.id",
                         [&](const Statement& row) {
                             ids.push_back(row.integer(0));
                             return sensorFrom(row);
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
    HOLDBAND_TRY(execute(
        database,
        "INSERT INTO sensors (name, reads, setup, accuracy_k, placement, by_hand, retired_at, "
        "interval_time, act) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        std::string_view(sensor.name), nameOf(sensor.reads), *setup, storedNumber(sensor.accuracy),
        FreeText{sensor.placement}, sensor.readByHand ? 1 : 0, msOf(sensor.retired),
        nameOf(sensor.intervalTime), change.entry().value));
    return writeOffsets(database, database.lastRowId(), sensor);
}

Done updateSensor(const Change& change, const std::string& name, const Sensor& sensor)
{
    const Database& database = change.database();
    auto id = idToRename(database, "sensors", "sensor", name, sensor.name);
    HOLDBAND_TRY(id);
    auto setup = optionalSetupId(database, sensor.setup);
    HOLDBAND_TRY(setup);
    HOLDBAND_TRY(execute(database,
                         "UPDATE sensors SET name = ?, reads = ?, setup = ?, accuracy_k = ?, "
                         "placement = ?, by_hand = ?, retired_at = ?, interval_time = ? "
                         "WHERE id = ?",
                         std::string_view(sensor.name), nameOf(sensor.reads), *setup,
                         storedNumber(sensor.accuracy), FreeText{sensor.placement},
                         sensor.readByHand ? 1 : 0, msOf(sensor.retired),
                         nameOf(sensor.intervalTime), *id));
    return writeOffsets(database, *id, sensor);
}

Done removeSensor(const Change& change, const std::string& name)
{
    const Database& database = change.database();
    auto id = idOf(database, "sensors", "sensor", name);
    HOLDBAND_TRY(id);
    HOLDBAND_TRY(checkUnused(
        database, *id, name,
        {{"SELECT 1 FROM batches WHERE ? IN (beer_sensor, ambient_sensor)",
          Phrase::tr("a batch is read by it")},
         {"SELECT 1 FROM beer_uses WHERE sensor = ?", Phrase::tr("a batch was read by it")},
         {"SELECT 1 FROM import_columns WHERE sensor = ?", Phrase::tr("it has imported readings")},
         {"SELECT 1 FROM hand_readings WHERE sensor = ?", Phrase::tr("it has readings")},
         {"SELECT 1 FROM value_corrections WHERE sensor = ?",
          Phrase::tr("it has corrected readings")},
         {"SELECT 1 FROM exclusions WHERE sensor = ?",
          Phrase::tr("parts of its readings are left out")}}));
    HOLDBAND_TRY(execute(database, "DELETE FROM offsets WHERE sensor = ?", *id));
    return execute(database, "DELETE FROM sensors WHERE id = ?", *id);
}

namespace {

Meter meterFrom(const Statement& row)
{
    Meter meter;
    meter.name = row.text(1);
    meter.setup = row.text(2);
    meter.resolution = quantityOf(row.optionalReal(3), asKilowattHours);
    meter.rollsOverAt = quantityOf(row.optionalReal(4), asKilowattHours);
    meter.accuracy = row.optionalReal(5);
    meter.from = row.optionalInstant(6);
    meter.to = row.optionalInstant(7);
    meter.retired = row.optionalInstant(8);
    return meter;
}

Result<std::vector<MeterMove>> readMoves(const Database& database, std::int64_t meter)
{
    return query(
        database,
        "SELECT v.from_at, u.name FROM meter_moves v LEFT JOIN setups u ON u.id = v.setup "
        "WHERE v.meter = ? ORDER BY v.from_at",
        [](const Statement& row) {
            return MeterMove{row.instant(0),
                             row.isNull(1) ? std::nullopt : std::optional(row.text(1))};
        },
        meter);
}

Done writeMoves(const Database& database, std::int64_t id, const Meter& meter)
{
    HOLDBAND_TRY(execute(database, "DELETE FROM meter_moves WHERE meter = ?", id));
    for (std::size_t i = 0; i < meter.moves.size(); ++i) {
        const MeterMove& move = meter.moves[i];
        if (i > 0 && move.from <= meter.moves[i - 1].from)
            return dataProblem(Phrase::tr("two moves are at the same time, or not in order"),
                               meterPlace(meter.name));
        auto setup = optionalSetupId(database, move.setup);
        HOLDBAND_TRY(setup);
        HOLDBAND_TRY(execute(database, "INSERT INTO meter_moves VALUES (?, ?, ?)", id,
                             toMs(move.from), *setup));
    }
    return {};
}

} // namespace

Result<std::vector<Meter>> readMeters(const LogbookFile& logbook)
{
    const Database& database = logbook.database();
    std::vector<std::int64_t> ids;
    auto meters = query(database,
                        "SELECT m.id, m.name, u.name, m.resolution_kwh, m.rolls_over_at_kwh, "
                        "m.accuracy, m.from_at, m.to_at, m.retired_at "
                        "FROM meters m JOIN setups u ON u.id = m.setup ORDER BY m.id",
                        [&](const Statement& row) {
                            ids.push_back(row.integer(0));
                            return meterFrom(row);
                        });
    HOLDBAND_TRY(meters);
    for (std::size_t i = 0; i < meters->size(); ++i) {
        auto moves = readMoves(database, ids[i]);
        HOLDBAND_TRY(moves);
        (*meters)[i].moves = std::move(*moves);
    }
    return meters;
}

Done addMeter(const Change& change, const Meter& meter)
{
    const Database& database = change.database();
    HOLDBAND_TRY(checkNameIsFree(database, "meters", "meter", meter.name));
    auto setup = idOf(database, "setups", "setup", meter.setup);
    HOLDBAND_TRY(setup);
    HOLDBAND_TRY(
        execute(database,
                "INSERT INTO meters (name, setup, resolution_kwh, rolls_over_at_kwh, accuracy, "
                "from_at, to_at, retired_at, act) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                std::string_view(meter.name), *setup, storedNumber(meter.resolution),
                storedNumber(meter.rollsOverAt), meter.accuracy, msOf(meter.from), msOf(meter.to),
                msOf(meter.retired), change.entry().value));
    return writeMoves(database, database.lastRowId(), meter);
}

Done updateMeter(const Change& change, const std::string& name, const Meter& meter)
{
    const Database& database = change.database();
    auto id = idToRename(database, "meters", "meter", name, meter.name);
    HOLDBAND_TRY(id);
    auto setup = idOf(database, "setups", "setup", meter.setup);
    HOLDBAND_TRY(setup);
    HOLDBAND_TRY(execute(database,
                         "UPDATE meters SET name = ?, setup = ?, resolution_kwh = ?, "
                         "rolls_over_at_kwh = ?, accuracy = ?, from_at = ?, to_at = ?, "
                         "retired_at = ? WHERE id = ?",
                         std::string_view(meter.name), *setup, storedNumber(meter.resolution),
                         storedNumber(meter.rollsOverAt), meter.accuracy, msOf(meter.from),
                         msOf(meter.to), msOf(meter.retired), *id));
    return writeMoves(database, *id, meter);
}

Done removeMeter(const Change& change, const std::string& name)
{
    const Database& database = change.database();
    auto id = idOf(database, "meters", "meter", name);
    HOLDBAND_TRY(id);
    HOLDBAND_TRY(
        checkUnused(database, *id, name,
                    {{"SELECT 1 FROM meter_readings WHERE meter = ?", Phrase::tr("it was read")}}));
    HOLDBAND_TRY(execute(database, "DELETE FROM meter_moves WHERE meter = ?", *id));
    return execute(database, "DELETE FROM meters WHERE id = ?", *id);
}

} // namespace holdband::store
