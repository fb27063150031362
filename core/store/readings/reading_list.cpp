#include "core/store/readings/reading_list.h"

#include "core/model/names.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/reading_key.h"
#include "core/store/readings/reading_units.h"
#include "core/store/readings/value_corrections.h"
#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::store {

namespace {

Result<std::vector<ListedReading>> logged(const Database& database, std::int64_t sensor, Span span,
                                          std::size_t most)
{
    return query<BulkStatement>(
        database,
        "SELECT r.place, r.value, c.unit, i.file FROM readings r "
        "LEFT JOIN import_columns c ON c.import = r.import AND c.sensor = ?1 "
        "LEFT JOIN imports i ON i.id = r.import "
        "WHERE r.place BETWEEN ?2 AND ?3 ORDER BY r.place LIMIT ?4",
        [](const BulkStatement& row) {
            ListedReading reading;
            reading.at = instantFromMs(msOfKey(row.integer(0)));
            reading.value = row.real(1);
            reading.unit = choiceNamed<ReadingUnit>(row.text(2)).value_or(ReadingUnit::celsius);
            reading.from = row.text(3);
            return reading;
        },
        sensor, readingKey(sensor, span.start), readingKey(sensor, span.end),
        static_cast<std::int64_t>(most));
}

void addHand(const std::vector<StoredHandReading>& stored, Span span,
             std::vector<ListedReading>& into)
{
    const std::string byHand = Phrase::tr("by hand");
    for (const StoredHandReading& reading : stored) {
        if (reading.inForce.at < span.start || reading.inForce.at > span.end)
            continue;
        ListedReading listed{
            reading.inForce.at, reading.inForce.value, reading.inForce.unit, byHand, {}, {},
            reading.id};
        if (!reading.before.empty()) {
            listed.instead = listed.value;
            listed.value = reading.before.front().value;
            listed.why = reading.before.back().why;
        }
        into.push_back(std::move(listed));
    }
}

void addCorrections(const std::vector<ValueCorrection>& corrections,
                    std::vector<ListedReading>& into)
{
    for (const ValueCorrection& correction : corrections) {
        const auto found =
            std::find_if(into.begin(), into.end(), [&](const ListedReading& reading) {
                return reading.at == correction.at && !reading.hand;
            });
        if (found == into.end())
            continue;
        found->instead = correction.unit == found->unit
                             ? correction.value
                             : rawValue(baseValue(correction.value, correction.unit), found->unit);
        found->why = correction.why;
    }
}

} // namespace

Result<ReadingList> listReadings(const LogbookFile& logbook, const std::string& sensor, Span span,
                                 std::size_t most)
{
    auto id = idOf(logbook.database(), "sensors", "sensor", sensor);
    HOLDBAND_TRY(id);
    auto readings = logged(logbook.database(), *id, span, most + 1);
    HOLDBAND_TRY(readings);
    auto hand = readHandReadings(logbook, {HandOwner::Kind::sensor, sensor});
    HOLDBAND_TRY(hand);
    auto corrections = readValueCorrections(logbook, {*id});
    HOLDBAND_TRY(corrections);
    addHand(*hand, span, *readings);
    std::stable_sort(readings->begin(), readings->end(),
                     [](const ListedReading& a, const ListedReading& b) { return a.at < b.at; });
    addCorrections(*corrections, *readings);
    ReadingList list;
    list.more = readings->size() > most;
    readings->resize(std::min(most, readings->size()));
    list.readings = std::move(*readings);
    return list;
}

} // namespace holdband::store
