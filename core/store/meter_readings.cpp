#include "core/store/meter_readings.h"

#include "core/logbook/names.h"
#include "core/store/corrections.h"
#include "core/store/rows.h"

namespace holdband::store {

namespace {

struct Correction {
    std::int64_t reading;
    double kwh;
    int decimals;
    Instant at;
    std::string why;
};

KeptReading keptFrom(const Statement& row)
{
    KeptReading kept;
    kept.id = {row.integer(0)};
    kept.inForce.at = instantFromMs(row.integer(1));
    kept.inForce.registerReading = Energy::kilowattHours(row.real(2));
    kept.inForce.decimals = static_cast<int>(row.integer(3));
    if (!row.isNull(4))
        kept.inForce.event = choiceNamed<MeterEvent>(row.text(4));
    kept.inForce.note = row.text(5);
    return kept;
}

void apply(KeptReading& kept, const Correction& correction)
{
    MeterReading& now = kept.inForce;
    kept.before.push_back(
        {now.registerReading.kilowattHours(), now.decimals, correction.at, correction.why});
    now.registerReading = Energy::kilowattHours(correction.kwh);
    now.decimals = correction.decimals;
}

} // namespace

Result<std::vector<KeptReading>> readMeterReadings(const LogbookFile& logbook,
                                                   const std::string& meter)
{
    const Database& database = logbook.database();
    auto id = idOf(database, "meters", "meter", meter);
    HOLDBAND_TRY(id);
    auto readings =
        query(database,
              "SELECT id, at, kwh, decimals, event, note FROM meter_readings WHERE meter = ? "
              "AND set_aside = 0 ORDER BY at",
              keptFrom, *id);
    HOLDBAND_TRY(readings);
    auto corrections = query(
        database,
        "SELECT c.reading, c.kwh, c.decimals, c.at, c.why FROM meter_corrections c "
        "JOIN meter_readings r ON r.id = c.reading WHERE r.meter = ? AND r.set_aside = 0 "
        "ORDER BY c.id",
        [](const Statement& row) {
            return Correction{row.integer(0), row.real(1), static_cast<int>(row.integer(2)),
                              instantFromMs(row.integer(3)), row.text(4)};
        },
        *id);
    HOLDBAND_TRY(corrections);
    applyCorrections(*readings, *corrections, apply);
    return readings;
}

Result<MeterReadingId> addMeterReading(const Change& change, const std::string& meter,
                                       const MeterReading& reading,
                                       const std::optional<ReadingSource>& source)
{
    const Database& database = change.database();
    auto id = idOf(database, "meters", "meter", meter);
    HOLDBAND_TRY(id);
    auto standing = query(
        database, "SELECT 1 FROM meter_readings WHERE meter = ? AND at = ? AND set_aside = 0",
        [](const Statement& row) { return row.integer(0); }, *id, toMs(reading.at));
    HOLDBAND_TRY(standing);
    if (!standing->empty())
        return dataProblem("the meter \"" + meter + "\" has a reading at that instant already");
    std::optional<std::int64_t> import;
    std::optional<std::int64_t> line;
    if (source) {
        import = source->import.value;
        line = source->line;
    }
    std::optional<std::string_view> event;
    if (reading.event)
        event = nameOf(*reading.event);
    HOLDBAND_TRY(execute(
        database,
        "INSERT INTO meter_readings (meter, at, kwh, decimals, event, note, import, line, act) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        *id, toMs(reading.at), reading.registerReading.kilowattHours(), reading.decimals, event,
        std::string_view(reading.note), import, line, change.act().value));
    return MeterReadingId{database.lastRowId()};
}

Done correctMeterReading(const Change& change, MeterReadingId reading, double kwh, int decimals,
                         Instant at, const std::string& why)
{
    return execute(change.database(),
                   "INSERT INTO meter_corrections (reading, kwh, decimals, at, why, act) "
                   "VALUES (?, ?, ?, ?, ?, ?)",
                   reading.value, kwh, decimals, toMs(at), std::string_view(why),
                   change.act().value);
}

Done setMeterReadingAside(const Change& change, MeterReadingId reading)
{
    return execute(change.database(), "UPDATE meter_readings SET set_aside = 1 WHERE id = ?",
                   reading.value);
}

Done setMeterReadingEvent(const Change& change, MeterReadingId reading,
                          const std::optional<MeterEvent>& event)
{
    std::optional<std::string_view> name;
    if (event)
        name = nameOf(*event);
    return execute(change.database(), "UPDATE meter_readings SET event = ? WHERE id = ?", name,
                   reading.value);
}

} // namespace holdband::store
