#include "core/store/readings/hand_readings.h"

#include "core/model/names.h"
#include "core/store/readings/corrections.h"
#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"

namespace holdband::store {

namespace {

constexpr CorrectedReadings handTables{"hand_readings", "hand_corrections", "value"};

std::string columnOf(HandOwner::Kind kind)
{
    return kind == HandOwner::Kind::sensor ? "sensor" : "batch";
}

Result<std::int64_t> ownerId(const Database& database, const HandOwner& owner)
{
    return owner.kind == HandOwner::Kind::sensor ? idOf(database, "sensors", "sensor", owner.name)
                                                 : idOf(database, "batches", "batch", owner.name);
}

StoredHandReading handReadingFrom(const BulkStatement& row)
{
    StoredHandReading stored;
    stored.id = {row.integer(0)};
    HandReading& reading = stored.inForce;
    reading.at = row.instant(1);
    reading.value = row.real(2);
    reading.unit = choiceNamed<ReadingUnit>(row.text(3)).value_or(ReadingUnit::celsius);
    reading.decimals = static_cast<int>(row.integer(4));
    reading.sample = quantityOf(row.optionalReal(5), asCelsius);
    reading.note = row.text(6);
    stored.leftOut = row.integer(7) != 0;
    return stored;
}

void correctInForce(StoredHandReading& stored, const Correction& correction)
{
    HandReading& now = stored.inForce;
    stored.before.push_back({now.value, now.decimals, correction.at, correction.why});
    now.value = correction.value;
    now.decimals = correction.decimals;
}

/// `which`: SQL, a condition in addition to the owner's.
Result<std::vector<StoredHandReading>> readStored(const Database& database, HandOwner::Kind kind,
                                                  std::int64_t owner, const std::string& which)
{
    const std::string mine = columnOf(kind) + " = ?" + which;
    auto readings = query<BulkStatement>(
        database,
        "SELECT id, at, value, unit, decimals, sample_c, note, set_aside FROM hand_readings "
        "WHERE " +
            mine + " ORDER BY at, set_aside = 0, id",
        handReadingFrom, owner);
    HOLDBAND_TRY(readings);
    auto corrections = readCorrections(database, handTables, "r." + mine, owner);
    HOLDBAND_TRY(corrections);
    applyCorrections(*readings, *corrections, correctInForce);
    return readings;
}

Result<std::vector<StoredHandReading>> readOf(const LogbookFile& logbook, const HandOwner& owner,
                                              const std::string& which)
{
    auto id = ownerId(logbook.database(), owner);
    HOLDBAND_TRY(id);
    return readStored(logbook.database(), owner.kind, *id, which);
}

constexpr const char* thoseThatCount = " AND set_aside = 0";

} // namespace

Result<std::vector<StoredHandReading>> readHandReadings(const LogbookFile& logbook,
                                                        const HandOwner& owner)
{
    return readOf(logbook, owner, thoseThatCount);
}

Result<std::vector<StoredHandReading>> readHandReadings(const LogbookFile& logbook, SensorId sensor)
{
    return readStored(logbook.database(), HandOwner::Kind::sensor, sensor.value, thoseThatCount);
}

Result<std::vector<StoredHandReading>> readHandRecord(const LogbookFile& logbook,
                                                      const HandOwner& owner)
{
    return readOf(logbook, owner, "");
}

Result<HandReadingId> addHandReading(const Change& change, const HandOwner& owner,
                                     const HandReading& reading)
{
    const Database& database = change.database();
    auto id = ownerId(database, owner);
    HOLDBAND_TRY(id);
    auto existing = query(
        database,
        "SELECT 1 FROM hand_readings WHERE " + columnOf(owner.kind) +
            " = ? AND at = ? AND set_aside = 0",
        [](const Statement&) { return true; }, *id, toMs(reading.at));
    HOLDBAND_TRY(existing);
    if (!existing->empty())
        return dataProblem(
            Phrase::tr("\"%1\" has a reading at that instant already").with(owner.name));
    HOLDBAND_TRY(execute(
        database,
        "INSERT INTO hand_readings (" + columnOf(owner.kind) +
            ", at, value, unit, decimals, sample_c, note, act) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
        *id, toMs(reading.at), reading.value, nameOf(reading.unit), reading.decimals,
        reading.sample ? std::optional(reading.sample->celsius()) : std::nullopt,
        FreeText{reading.note}, change.entry().value));
    return HandReadingId{database.lastRowId()};
}

Done setHandReadingNote(const Change& change, HandReadingId reading, const std::string& note)
{
    return setReadingNote(change, handTables, reading.value, note);
}

Done correctHandReading(const Change& change, HandReadingId reading, double value, int decimals,
                        Instant at, const std::string& why)
{
    return addCorrection(change, handTables, {reading.value, value, decimals, at, why});
}

Done deleteHandReading(const Change& change, HandReadingId reading)
{
    return execute(change.database(), "UPDATE hand_readings SET set_aside = 1 WHERE id = ?",
                   reading.value);
}

} // namespace holdband::store
