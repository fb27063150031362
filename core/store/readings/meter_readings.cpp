#include "core/store/readings/meter_readings.h"

#include "core/model/names.h"
#include "core/store/readings/corrections.h"
#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::store {

namespace {

constexpr CorrectedReadings registerTables{"meter_readings", "meter_corrections", "kwh"};

// meter_readings.set_aside: 0 while the reading counts, 1 while its import is withdrawn, else the
// id of the history entry that deleted it on its own. That is never entry 1, because the meter had
// to be added first; entries of another logbook are below 0.
constexpr std::string_view readingColumns =
    "r.id, r.at, r.kwh, r.decimals, r.event, r.note, "
    "coalesce(r.time_doubt_ms, iif(r.import IS NULL, NULL, 0))";
constexpr int firstFurther = 7; // the first column after these

template <typename Stored>
Stored meterReadingFrom(const BulkStatement& row)
{
    Stored stored;
    stored.id = {row.integer(0)};
    stored.inForce.at = row.instant(1);
    stored.inForce.registerReading = Energy::kilowattHours(row.real(2));
    stored.inForce.decimals = static_cast<int>(row.integer(3));
    if (!row.isNull(4))
        stored.inForce.event = choiceNamed<MeterEvent>(row.text(4));
    stored.inForce.note = row.text(5);
    if (!row.isNull(6))
        stored.inForce.timeDoubt = Milliseconds{row.integerBetween(6, 0, mostTimeDoubt.count())};
    return stored;
}

RecordedRegister recordedFrom(const BulkStatement& row)
{
    auto recorded = meterReadingFrom<RecordedRegister>(row);
    if (!row.isNull(firstFurther))
        recorded.source = ReadingSource{{row.integer(firstFurther)},
                                        row.optionalInteger(firstFurther + 1).value_or(0)};
    const std::int64_t setAside = row.integer(firstFurther + 2);
    recorded.withdrawn = setAside == 1;
    if (setAside != 0 && setAside != 1)
        recorded.leftOutBy = HistoryEntryId{setAside};
    return recorded;
}

ListedRegister listedFrom(const BulkStatement& row)
{
    auto listed = meterReadingFrom<ListedRegister>(row);
    listed.file = row.text(firstFurther);
    listed.line = row.optionalInteger(firstFurther + 1).value_or(0);
    listed.leftOut = row.integer(firstFurther + 2) != 0;
    listed.why = row.text(firstFurther + 3);
    return listed;
}

void correctRegisterInForce(StoredReading& stored, const Correction& correction)
{
    MeterReading& now = stored.inForce;
    stored.before.push_back(
        {now.registerReading.kilowattHours(), now.decimals, correction.at, correction.why});
    now.registerReading = Energy::kilowattHours(correction.value);
    now.decimals = correction.decimals;
}

constexpr const char* countsOnly = " AND r.set_aside = 0";

/// Readings of one meter with their corrections. `more`: SQL, further columns and the tables joined
/// for them. `which`: SQL, a condition in addition to the meter's, an order, a limit; its
/// placeholders are bound to `parts`.
template <typename Stored, typename... Part>
Result<std::vector<Stored>> readRegister(const LogbookFile& logbook, const std::string& meter,
                                         Stored (*from)(const BulkStatement&),
                                         const std::string& more, const std::string& which,
                                         const Part&... parts)
{
    const Database& database = logbook.database();
    auto id = idOf(database, "meters", "meter", meter);
    HOLDBAND_TRY(id);
    auto readings = query<BulkStatement>(
        database, "SELECT " + std::string(readingColumns) + more + " WHERE r.meter = ?" + which,
        from, *id, parts...);
    HOLDBAND_TRY(readings);
    auto corrections = readCorrections(
        database, registerTables,
        which.starts_with(countsOnly) ? std::string("r.meter = ?") + countsOnly : "r.meter = ?",
        *id);
    HOLDBAND_TRY(corrections);
    applyCorrections(*readings, *corrections, correctRegisterInForce);
    return readings;
}

} // namespace

Result<std::vector<StoredReading>> readMeterReadings(const LogbookFile& logbook,
                                                     const std::string& meter)
{
    return readRegister<StoredReading>(logbook, meter, meterReadingFrom<StoredReading>,
                                       " FROM meter_readings r",
                                       countsOnly + std::string(" ORDER BY r.at"));
}

Result<std::vector<RecordedRegister>> readRegisterRecord(const LogbookFile& logbook,
                                                         const std::string& meter)
{
    // In the order in which a load adds them: of withdrawn imports, deleted ones, and those that
    // count.
    return readRegister<RecordedRegister>(
        logbook, meter, recordedFrom, ", r.import, r.line, r.set_aside FROM meter_readings r",
        " ORDER BY r.at, r.set_aside = 0, r.set_aside <> 1, r.import, r.id");
}

Result<RegisterList> listRegister(const LogbookFile& logbook, const std::string& meter, Span span,
                                  std::size_t most)
{
    auto readings = readRegister<ListedRegister>(
        logbook, meter, listedFrom,
        ", coalesce(i.file, ''), r.line, r.set_aside, coalesce(a.why, '') "
        "FROM meter_readings r LEFT JOIN imports i ON i.id = r.import "
        "LEFT JOIN acts a ON a.id = r.set_aside AND r.set_aside NOT IN (0, 1)",
        " AND r.at BETWEEN ? AND ? AND i.taken_back_at IS NULL ORDER BY r.at, r.id LIMIT ?",
        toMs(span.start), toMs(span.end), static_cast<std::int64_t>(most + 1));
    HOLDBAND_TRY(readings);
    RegisterList list;
    list.more = readings->size() > most;
    readings->resize(std::min(most, readings->size()));
    list.readings = std::move(*readings);
    return list;
}

Result<MeterReadingId> addMeterReading(const Change& change, const std::string& meter,
                                       const MeterReading& reading,
                                       const std::optional<ReadingSource>& source)
{
    const Database& database = change.database();
    auto id = idOf(database, "meters", "meter", meter);
    HOLDBAND_TRY(id);
    auto existing = query(
        database, "SELECT 1 FROM meter_readings WHERE meter = ? AND at = ? AND set_aside = 0",
        [](const Statement& row) { return row.integer(0); }, *id, toMs(reading.at));
    HOLDBAND_TRY(existing);
    if (!existing->empty())
        return dataProblem(
            Phrase::tr("the meter \"%1\" has a reading at that instant already").with(meter));
    std::optional<std::int64_t> import;
    std::optional<std::int64_t> line;
    if (source) {
        import = source->import.value;
        line = source->line;
    }
    std::optional<std::string_view> event;
    if (reading.event)
        event = nameOf(*reading.event);
    std::optional<std::int64_t> doubt;
    if (reading.timeDoubt && !source)
        doubt = reading.timeDoubt->count();
    HOLDBAND_TRY(execute(
        database,
        "INSERT INTO meter_readings (meter, at, kwh, decimals, event, note, import, line, act, "
        "time_doubt_ms) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        *id, toMs(reading.at), reading.registerReading.kilowattHours(), reading.decimals, event,
        FreeText{reading.note}, import, line, change.entry().value, doubt));
    return MeterReadingId{database.lastRowId()};
}

Done setMeterReadingNote(const Change& change, MeterReadingId reading, const std::string& note)
{
    return setReadingNote(change, registerTables, reading.value, note);
}

Done correctMeterReading(const Change& change, MeterReadingId reading, double kwh, int decimals,
                         Instant at, const std::string& why)
{
    return addCorrection(change, registerTables, {reading.value, kwh, decimals, at, why});
}

Done deleteMeterReading(const Change& change, MeterReadingId reading,
                        std::optional<HistoryEntryId> by)
{
    return execute(change.database(), "UPDATE meter_readings SET set_aside = ? WHERE id = ?",
                   by.value_or(change.entry()).value, reading.value);
}

Done restoreMeterReading(const Change& change, MeterReadingId reading)
{
    auto taken = query(
        change.database(),
        "SELECT 1 FROM meter_readings a JOIN meter_readings b ON b.meter = a.meter AND "
        "b.at = a.at AND b.set_aside = 0 AND b.id <> a.id WHERE a.id = ?",
        [](const Statement&) { return true; }, reading.value);
    HOLDBAND_TRY(taken);
    if (!taken->empty())
        return dataProblem(Phrase::tr("another reading has since been entered for the same time"),
                           {}, Phrase::tr("delete that one first"));
    return execute(change.database(), "UPDATE meter_readings SET set_aside = 0 WHERE id = ?",
                   reading.value);
}

Done setMeterReadingEvent(const Change& change, const std::string& meter, Instant at,
                          const std::optional<MeterEvent>& event)
{
    auto id = idOf(change.database(), "meters", "meter", meter);
    HOLDBAND_TRY(id);
    std::optional<std::string_view> name;
    if (event)
        name = nameOf(*event);
    return execute(
        change.database(),
        "UPDATE meter_readings SET event = ? WHERE meter = ? AND at = ? AND set_aside = 0", name,
        *id, toMs(at));
}

} // namespace holdband::store
