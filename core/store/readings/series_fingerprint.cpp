#include "core/store/readings/series_fingerprint.h"

#include "core/assign_result.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/reading_key.h"
#include "core/store/readings/row_checksum.h"
#include "core/store/readings/value_corrections.h"
#include "core/store/sqlite/rows.h"

#include <algorithm>

namespace holdband::store {

namespace {

using Column = SeriesFingerprint::Column;
using Row = SeriesFingerprint::Row;
using Typed = SeriesFingerprint::Typed;

/// Those in force: the readings of a withdrawn import are stored apart.
Result<std::vector<Column>> columnsOf(const Database& database, std::int64_t sensor)
{
    return query<BulkStatement>(
        database,
        "SELECT c.import, c.unit, c.readings, c.checksum, c.first_at, c.last_at "
        "FROM import_columns c JOIN imports i ON i.id = c.import "
        "WHERE c.sensor = ? AND i.taken_back_at IS NULL ORDER BY c.import",
        [](const BulkStatement& row) {
            return Column{row.integer(0),         row.text(1),
                          row.integer(2),         row.integer(3),
                          row.optionalInteger(4), row.optionalInteger(5)};
        },
        sensor);
}

/// An import of an older format, without its times, may be at any time.
bool mayTouch(const Column& column, Span span)
{
    return (!column.first || *column.first <= toMs(span.end)) &&
           (!column.last || *column.last >= toMs(span.start));
}

Result<std::vector<Row>> neighboursOf(const Database& database, std::int64_t sensor, Span span)
{
    // ?1 … ?2 are all keys of the sensor, ?3 … ?4 those of the span.
    return query<BulkStatement>(
        database,
        "SELECT r.place, r.value, r.import, coalesce(c.unit, '') FROM readings r "
        "LEFT JOIN import_columns c ON c.import = r.import AND c.sensor = r.place >> ?5 "
        "WHERE r.place IN ((SELECT max(place) FROM readings WHERE place BETWEEN ?1 AND ?3 - 1), "
        "(SELECT min(place) FROM readings WHERE place BETWEEN ?4 + 1 AND ?2)) ORDER BY r.place",
        [](const BulkStatement& row) {
            return Row{row.integer(0), row.real(1), row.integer(2), row.text(3)};
        },
        readingKey(sensor, Instant::min()), readingKey(sensor, Instant::max()),
        readingKey(sensor, span.start), readingKey(sensor, span.end), instantBits);
}

/// The readings inside the span and one on each side. `typed` in order of time.
std::vector<Typed> around(const std::vector<Typed>& typed, Span span)
{
    auto first = std::lower_bound(typed.begin(), typed.end(), span.start,
                                  [](const Typed& one, Instant at) { return one.at < at; });
    auto last = std::upper_bound(first, typed.end(), span.end,
                                 [](Instant at, const Typed& one) { return at < one.at; });
    first -= first == typed.begin() ? 0 : 1;
    last += last == typed.end() ? 0 : 1;
    return {first, last};
}

} // namespace

Done SeriesFingerprints::readRecords(const std::string& sensor, SensorRecords& into) const
{
    const Database& database = m_logbook->database();
    HOLDBAND_TRY(assignResult(idOf(database, "sensors", "sensor", sensor), into.id));
    HOLDBAND_TRY(assignResult(columnsOf(database, into.id), into.columns));
    auto corrections = readValueCorrections(*m_logbook, SensorId{into.id});
    HOLDBAND_TRY(corrections);
    for (const ValueCorrection& correction : *corrections)
        into.corrections.push_back({correction.at, correction.value, correction.unit});
    auto hand = readHandReadings(*m_logbook, SensorId{into.id});
    HOLDBAND_TRY(hand);
    for (const StoredHandReading& stored : *hand)
        into.hand.push_back({stored.inForce.at, stored.inForce.value, stored.inForce.unit});
    return {};
}

Result<const SeriesFingerprints::SensorRecords*>
SeriesFingerprints::recordsOf(const std::string& sensor)
{
    const auto found = m_sensors.find(sensor);
    if (found != m_sensors.end())
        return &found->second;
    SensorRecords records;
    HOLDBAND_TRY(readRecords(sensor, records));
    return &m_sensors.emplace(sensor, std::move(records)).first->second;
}

Result<SeriesFingerprint> SeriesFingerprints::of(const std::string& sensor, Span span)
{
    auto records = recordsOf(sensor);
    HOLDBAND_TRY(records);
    SeriesFingerprint print;
    print.sensor = (*records)->id;
    for (const Column& column : (*records)->columns) {
        if (mayTouch(column, span))
            print.columns.push_back(column);
    }
    HOLDBAND_TRY(
        assignResult(neighboursOf(m_logbook->database(), print.sensor, span), print.neighbours));
    print.corrections = (*records)->corrections;
    print.hand = around((*records)->hand, span);
    return print;
}

Result<SeriesFingerprints::Tail> SeriesFingerprints::tailOf(std::int64_t sensor,
                                                            std::int64_t import, std::int64_t after)
{
    const std::array key{sensor, import, after};
    const auto known = m_tails.find(key);
    if (known != m_tails.end())
        return known->second;
    auto statement = m_logbook->database().prepare<BulkStatement>(
        "SELECT place, value FROM readings WHERE place > ? AND place <= ? AND import = ?");
    HOLDBAND_TRY(statement);
    statement->bindAll(readingKey(sensor, instantFromMs(after)), readingKey(sensor, Instant::max()),
                       import);
    Tail tail;
    for (;;) {
        auto row = statement->step();
        HOLDBAND_TRY(row);
        if (!*row)
            break;
        ++tail.readings;
        tail.checksum += rowHash(msOfKey(statement->integer(0)), statement->real(1));
    }
    return m_tails.emplace(key, tail).first->second;
}

/// Whether the import only got further rows at its end: the checksum is a sum over the rows, so the
/// sum of the new rows must be the difference.
Result<bool> SeriesFingerprints::onlyGrew(const Column& before, const Column& now,
                                          std::int64_t sensor, Span span)
{
    const bool sameImport =
        before.import == now.import && before.unit == now.unit && before.first == now.first;
    if (!sameImport || !before.last || !now.last || *before.last < toMs(span.end))
        return false;
    auto tail = tailOf(sensor, now.import, *before.last);
    HOLDBAND_TRY(tail);
    return before.readings + tail->readings == now.readings &&
           static_cast<std::uint64_t>(before.checksum) + tail->checksum ==
               static_cast<std::uint64_t>(now.checksum);
}

Result<bool> SeriesFingerprints::same(const SeriesFingerprint& before, const SeriesFingerprint& now,
                                      Span span)
{
    const bool rest = before.sensor == now.sensor && before.neighbours == now.neighbours &&
                      before.corrections == now.corrections && before.hand == now.hand;
    if (!rest || before.columns.size() != now.columns.size())
        return false;
    for (std::size_t i = 0; i < now.columns.size(); ++i) {
        if (before.columns[i] == now.columns[i])
            continue;
        auto grew = onlyGrew(before.columns[i], now.columns[i], now.sensor, span);
        HOLDBAND_TRY(grew);
        if (!*grew)
            return false;
    }
    return true;
}

} // namespace holdband::store
