// A sensor's series from the store: logged readings with their corrections, and readings typed by
// hand.
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/import_units.h"
#include "core/store/readings/reading_blocks.h"
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

/// What is read of a sensor: its readings from one time to another, both included, and the blocks
/// that they are in.
struct Stretch {
    std::int64_t firstMs = 0, lastMs = 0;
    std::int64_t firstBlock = 0, lastBlock = 0;
};

/// The span with one neighbour on each side.
Result<Stretch> stretchOf(const Database& database, SensorId id, Span span)
{
    Stretch stretch{storedMs(span.start), storedMs(span.end), 0, 0};
    auto before = readingBefore(database, id.value, stretch.firstMs);
    HOLDBAND_TRY(before);
    auto after = readingAfter(database, id.value, stretch.lastMs);
    HOLDBAND_TRY(after);
    stretch.firstBlock = blockOf(stretch.firstMs);
    stretch.lastBlock = blockOf(stretch.lastMs);
    if (*before) {
        stretch.firstMs = (*before)->ms;
        stretch.firstBlock = std::min(stretch.firstBlock, blockOf(stretch.firstMs));
    }
    if (*after) {
        stretch.lastMs = (*after)->ms;
        stretch.lastBlock = std::max(stretch.lastBlock, blockOf(stretch.lastMs));
    }
    return stretch;
}

void append(const BlockReadings& block, const Stretch& stretch, ImportUnits& units, Series& series)
{
    const auto first = std::lower_bound(block.ms.begin(), block.ms.end(), stretch.firstMs);
    const auto last = std::upper_bound(first, block.ms.end(), stretch.lastMs);
    const auto from = static_cast<std::size_t>(first - block.ms.begin());
    const auto to = static_cast<std::size_t>(last - block.ms.begin());
    for (std::size_t i = from; i < to; ++i) {
        series.at.push_back(instantFromMs(block.ms[i]));
        series.value.push_back(baseValue(block.value[i], units.unitOf(block.import[i])));
    }
}

Result<Series> loggedSeries(const Database& database, SensorId id, Span span)
{
    auto units = ImportUnits::of(database, id.value);
    HOLDBAND_TRY(units);
    auto stretch = stretchOf(database, id, span);
    HOLDBAND_TRY(stretch);
    auto walk = BlockWalk::over(database, id.value, stretch->firstBlock, stretch->lastBlock);
    HOLDBAND_TRY(walk);
    Series series;
    SeriesChecksums checksums(id.value);
    for (;;) {
        auto block = walk->next();
        HOLDBAND_TRY(block);
        if (!*block)
            break;
        checksums.add(**block);
        append(**block, *stretch, *units, series);
    }
    HOLDBAND_TRY(checksums.check(database, stretch->firstBlock, stretch->lastBlock));
    return series;
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

std::optional<Instant> timeOf(const std::optional<PlacedReading>& reading)
{
    return reading ? std::optional(instantFromMs(reading->ms)) : std::nullopt;
}

} // namespace

Result<std::optional<Instant>> firstLoggedAt(const LogbookFile& logbook, const std::string& sensor)
{
    auto id = idOf(logbook.database(), "sensors", "sensor", sensor);
    HOLDBAND_TRY(id);
    return readingAfter(logbook.database(), *id, -1).map(timeOf);
}

Result<std::optional<Instant>> lastReadingAt(const LogbookFile& logbook, const std::string& sensor)
{
    const Database& database = logbook.database();
    auto id = idOf(database, "sensors", "sensor", sensor);
    HOLDBAND_TRY(id);
    const auto instantAt = [](const BulkStatement& row) {
        return row.isNull(0) ? std::nullopt : std::optional(row.instant(0));
    };
    auto logged = readingBefore(database, *id, instantRange).map(timeOf);
    HOLDBAND_TRY(logged);
    auto hand = query<BulkStatement>(
        database, "SELECT max(at) FROM hand_readings WHERE sensor = ? AND set_aside = 0", instantAt,
        *id);
    HOLDBAND_TRY(hand);
    return std::max(*logged, hand->front()); // an absent one sorts first
}

} // namespace holdband::store
