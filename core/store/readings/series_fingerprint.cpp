#include "core/store/readings/series_fingerprint.h"

#include "core/assign_result.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/reading_blocks.h"
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

/// One reading on each side of the span.
Result<std::vector<Row>> neighboursOf(const Database& database, std::int64_t sensor, Span span,
                                      const std::vector<Column>& columns)
{
    auto before = readingBefore(database, sensor, storedMs(span.start));
    HOLDBAND_TRY(before);
    auto after = readingAfter(database, sensor, storedMs(span.end));
    HOLDBAND_TRY(after);
    std::vector<Row> rows;
    for (const auto& neighbour : {*before, *after}) {
        if (!neighbour)
            continue;
        const auto column = std::find_if(columns.begin(), columns.end(), [&](const Column& one) {
            return one.import == neighbour->import;
        });
        rows.push_back({*neighbour, column == columns.end() ? std::string() : column->unit});
    }
    return rows;
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
        assignResult(neighboursOf(m_logbook->database(), print.sensor, span, (*records)->columns),
                     print.neighbours));
    print.corrections = (*records)->corrections;
    print.hand = around((*records)->hand, span);
    return print;
}

/// Adds the import's readings after that time.
void SeriesFingerprints::addTail(const BlockReadings& block, std::int64_t import,
                                 std::int64_t after, Tail& tail)
{
    for (std::size_t i = 0; i < block.size(); ++i) {
        if (block.import[i] != import || block.ms[i] <= after)
            continue;
        ++tail.readings;
        tail.checksum += rowHash(block.ms[i], block.value[i]);
    }
}

Result<SeriesFingerprints::Tail> SeriesFingerprints::tailOf(std::int64_t sensor,
                                                            std::int64_t import, std::int64_t after)
{
    const std::array key{sensor, import, after};
    const auto known = m_tails.find(key);
    if (known != m_tails.end())
        return known->second;
    auto walk = BlockWalk::over(m_logbook->database(), sensor, blockOf(after), lastBlock);
    HOLDBAND_TRY(walk);
    Tail tail;
    for (;;) {
        auto block = walk->next();
        HOLDBAND_TRY(block);
        if (!*block)
            break;
        addTail(**block, import, after, tail);
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
