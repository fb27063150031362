#include "core/store/readings/reading_list.h"

#include "core/model/names.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/reading_blocks.h"
#include "core/store/readings/reading_key.h"
#include "core/store/readings/reading_units.h"
#include "core/store/readings/value_corrections.h"
#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <map>

namespace holdband::store {

namespace {

/// The unit and the file of each import of a sensor.
struct ListedImport {
    ReadingUnit unit = ReadingUnit::celsius;
    std::string file;
};

Result<std::map<std::int64_t, ListedImport>> importsOf(const Database& database,
                                                       std::int64_t sensor)
{
    std::map<std::int64_t, ListedImport> imports;
    auto rows = query<BulkStatement>(
        database,
        "SELECT i.id, c.unit, i.file FROM import_columns c JOIN imports i ON i.id = c.import "
        "WHERE c.sensor = ?",
        [&](const BulkStatement& row) {
            imports[row.integer(0)] = {
                choiceNamed<ReadingUnit>(row.text(1)).value_or(ReadingUnit::celsius), row.text(2)};
            return true;
        },
        sensor);
    HOLDBAND_TRY(rows);
    return imports;
}

/// The first readings in the span, `most` at most.
Result<std::vector<ListedReading>> logged(const Database& database, std::int64_t sensor, Span span,
                                          std::size_t most)
{
    auto imports = importsOf(database, sensor);
    HOLDBAND_TRY(imports);
    const std::int64_t first = storedMs(span.start);
    const std::int64_t last = storedMs(span.end);
    auto walk = BlockWalk::over(database, sensor, blockOf(first), blockOf(last));
    HOLDBAND_TRY(walk);
    std::vector<ListedReading> listed;
    for (;;) {
        auto block = walk->next();
        HOLDBAND_TRY(block);
        if (!*block || listed.size() == most)
            return listed;
        const BlockReadings& readings = **block;
        for (std::size_t i = 0; i < readings.size() && listed.size() < most; ++i) {
            if (readings.ms[i] < first || readings.ms[i] > last)
                continue;
            const ListedImport& import = (*imports)[readings.import[i]];
            ListedReading reading;
            reading.at = instantFromMs(readings.ms[i]);
            reading.value = readings.value[i];
            reading.unit = import.unit;
            reading.from = import.file;
            listed.push_back(std::move(reading));
        }
    }
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
