// A sensor's series from the store: logged readings with their corrections, and readings typed by
// hand.
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/import_units.h"
#include "core/store/readings/reading_key.h"
#include "core/store/readings/reading_units.h"
#include "core/store/readings/readings.h"
#include "core/store/readings/series_checksums.h"
#include "core/store/readings/value_corrections.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <cmath>

namespace holdband::store {

namespace {

/// Selects the sensor's readings in the span and their neighbours; `columns` of each.
Result<BulkStatement> openReadings(const Database& database, SensorId id, Span span,
                                   const std::string& columns)
{
    // ?1 … ?2 are all keys of the sensor, ?3 … ?4 those of the span.
    auto statement =
        database.prepare<BulkStatement>("SELECT " + columns +
                                        " FROM readings WHERE "
                                        "place >= coalesce((SELECT max(place) FROM readings WHERE "
                                        "place BETWEEN ?1 AND ?3 - 1), ?3) "
                                        "AND "
                                        "place <= coalesce((SELECT min(place) FROM readings WHERE "
                                        "place BETWEEN ?4 + 1 AND ?2), ?4)");
    HOLDBAND_TRY(statement);
    statement->bindAll(readingKey(id.value, Instant::min()), readingKey(id.value, Instant::max()),
                       readingKey(id.value, span.start), readingKey(id.value, span.end));
    return statement;
}

/// `importOf` and `valueOf` return the import and the base value of a row.
template <typename ImportOf, typename ValueOf>
Result<Series> seriesOf(BulkStatement& statement, SeriesChecksums& checksums, ImportOf importOf,
                        ValueOf valueOf)
{
    Series series;
    sqlite3_stmt* raw = statement.raw();
    for (;;) {
        auto row = statement.step();
        HOLDBAND_TRY(row);
        if (!*row)
            return series;
        const std::int64_t ms = msOfKey(sqlite3_column_int64(raw, 0));
        const double stored = sqlite3_column_double(raw, 1);
        const std::int64_t import = importOf(raw);
        checksums.add(import, ms, stored);
        series.at.push_back(instantFromMs(ms));
        series.value.push_back(valueOf(stored, import));
    }
}

/// This runs for a million rows, so it is faster not to read the import if there is only one, nor
/// the unit if all have the same.
Result<Series> loggedRows(const Database& database, SensorId id, Span span, ImportUnits& units,
                          SeriesChecksums& checksums)
{
    const bool oneImport = checksums.onlyOne();
    auto rows =
        openReadings(database, id, span, oneImport ? "place, value" : "place, value, import");
    HOLDBAND_TRY(rows);
    const auto importOf = [first = checksums.firstImport(), oneImport](sqlite3_stmt* row) {
        return oneImport ? first : sqlite3_column_int64(row, 2);
    };
    const std::optional<ReadingUnit> only = units.only();
    if (!only)
        return seriesOf(*rows, checksums, importOf, [&](double value, std::int64_t import) {
            return baseValue(value, units.unitOf(import));
        });
    auto series =
        seriesOf(*rows, checksums, importOf, [](double value, std::int64_t) { return value; });
    HOLDBAND_TRY(series);
    for (double& value : series->value)
        value = baseValue(value, *only);
    return series;
}

Result<Series> loggedSeries(const Database& database, SensorId id, Span span)
{
    auto units = ImportUnits::of(database, id.value);
    HOLDBAND_TRY(units);
    SeriesChecksums checksums(id.value, units->inForce());
    auto logged = loggedRows(database, id, span, *units, checksums);
    HOLDBAND_TRY(logged);
    HOLDBAND_TRY(checksums.check(database, span));
    return logged;
}

/// A damaged file may contain values that no reading can have.
Done allFinite(const LogbookFile& logbook, const std::string& sensor, const Series& series)
{
    if (std::all_of(series.value.begin(), series.value.end(),
                    [](double value) { return std::isfinite(value); }))
        return {};
    return fileProblem(
        Phrase::tr("the file is damaged: a reading of \"%1\" is no number").with(sensor),
        logbook.database().path());
}

Done correct(const LogbookFile& logbook, SensorId id, Series& series)
{
    auto corrections = readValueCorrections(logbook, id);
    HOLDBAND_TRY(corrections);
    for (const ValueCorrection& correction : *corrections) {
        const auto found = std::lower_bound(series.at.begin(), series.at.end(), correction.at);
        if (found != series.at.end() && *found == correction.at)
            series.value[static_cast<std::size_t>(found - series.at.begin())] =
                baseValue(correction.value, correction.unit);
    }
    return {};
}

/// Those inside the span and one neighbour on each side.
std::vector<StoredHandReading> around(std::vector<StoredHandReading> readings, Span span)
{
    const auto before = [](const StoredHandReading& stored, Instant at) {
        return stored.inForce.at < at;
    };
    auto first = std::lower_bound(readings.begin(), readings.end(), span.start, before);
    if (first != readings.begin())
        --first;
    auto last = std::upper_bound(
        first, readings.end(), span.end,
        [](Instant at, const StoredHandReading& stored) { return at < stored.inForce.at; });
    if (last != readings.end())
        ++last;
    return {std::make_move_iterator(first), std::make_move_iterator(last)};
}

/// If both exist at one instant, the logged value is used.
Series merged(const Series& logged, const std::vector<StoredHandReading>& hand)
{
    Series series;
    std::size_t next = 0;
    const auto takeLoggedUntil = [&](Instant at) {
        for (; next < logged.size() && logged.at[next] <= at; ++next) {
            series.at.push_back(logged.at[next]);
            series.value.push_back(logged.value[next]);
        }
    };
    for (const StoredHandReading& stored : hand) {
        takeLoggedUntil(stored.inForce.at);
        if (!series.empty() && series.at.back() == stored.inForce.at)
            continue;
        series.at.push_back(stored.inForce.at);
        series.value.push_back(baseValue(stored.inForce.value, stored.inForce.unit));
    }
    takeLoggedUntil(Instant::max());
    return series;
}

} // namespace

Result<Series> readSeries(const LogbookFile& logbook, const std::string& sensor, Span span)
{
    auto id = idOf(logbook.database(), "sensors", "sensor", sensor);
    HOLDBAND_TRY(id);
    auto logged = loggedSeries(logbook.database(), {*id}, span);
    HOLDBAND_TRY(logged);
    HOLDBAND_TRY(allFinite(logbook, sensor, *logged));
    HOLDBAND_TRY(correct(logbook, {*id}, *logged));
    auto hand = readHandReadings(logbook, SensorId{*id});
    HOLDBAND_TRY(hand);
    if (!hand->empty())
        *logged = merged(*logged, around(std::move(*hand), span));
    return logged;
}

namespace {

/// `ofPlaces` is min(place) or max(place).
Result<std::optional<Instant>> loggedAt(const Database& database, std::int64_t sensor,
                                        const std::string& ofPlaces)
{
    auto logged = query<BulkStatement>(
        database, "SELECT " + ofPlaces + " FROM readings WHERE place BETWEEN ? AND ?",
        [](const BulkStatement& row) {
            const auto place = row.optionalInteger(0);
            return place ? std::optional(instantFromMs(msOfKey(*place))) : std::nullopt;
        },
        readingKey(sensor, Instant::min()), readingKey(sensor, Instant::max()));
    HOLDBAND_TRY(logged);
    return logged->front();
}

} // namespace

Result<std::optional<Instant>> firstLoggedAt(const LogbookFile& logbook, const std::string& sensor)
{
    auto id = idOf(logbook.database(), "sensors", "sensor", sensor);
    HOLDBAND_TRY(id);
    return loggedAt(logbook.database(), *id, "min(place)");
}

Result<std::optional<Instant>> lastReadingAt(const LogbookFile& logbook, const std::string& sensor)
{
    const Database& database = logbook.database();
    auto id = idOf(database, "sensors", "sensor", sensor);
    HOLDBAND_TRY(id);
    const auto instantAt = [](const BulkStatement& row) {
        return row.isNull(0) ? std::nullopt : std::optional(row.instant(0));
    };
    auto logged = loggedAt(database, *id, "max(place)");
    HOLDBAND_TRY(logged);
    auto hand = query<BulkStatement>(
        database, "SELECT max(at) FROM hand_readings WHERE sensor = ? AND set_aside = 0", instantAt,
        *id);
    HOLDBAND_TRY(hand);
    return std::max(*logged, hand->front()); // an absent one sorts first
}

} // namespace holdband::store
