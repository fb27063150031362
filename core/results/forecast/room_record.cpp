#include "core/results/forecast/room_record.h"

#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::results {

using analysis::Track;

namespace {

constexpr std::chrono::hours oneRoomDay{24};
constexpr double dayCoverageNeeded = 0.9;
constexpr std::int64_t mostStarts = 30;

std::vector<std::string> roomSensors(const Snapshot& snapshot)
{
    std::vector<std::string> names;
    for (const Sensor& sensor : snapshot.sensors) {
        if (sensor.reads == SensorKind::ambient)
            names.push_back(sensor.name);
    }
    return names;
}

struct MeanAndRange {
    double area = 0.0; ///< °C·ms
    double coveredMs = 0.0;
    double low = 0.0;
    double high = 0.0;
};

MeanAndRange meanAndRange(const Track& track)
{
    MeanAndRange sum;
    analysis::forEachPiece(track, 0.0, [&](double t0, double v0, double t1, double v1, bool) {
        if (sum.coveredMs == 0.0)
            sum.low = sum.high = v0;
        sum.area += (t1 - t0) * (v0 + v1) / 2.0;
        sum.coveredMs += t1 - t0;
        sum.low = std::min({sum.low, v0, v1});
        sum.high = std::max({sum.high, v0, v1});
    });
    return sum;
}

double sinceOrigin(const Track& track, Instant at)
{
    return static_cast<double>((at - track.origin).count());
}

void addDays(RoomRecord& record, const Zone& zone)
{
    double low = 0.0;
    double high = 0.0;
    int days = 0;
    for (const LocalDay& day : zone.localDays(record.span)) {
        const Track part = analysis::clip(record.track, sinceOrigin(record.track, day.span.start),
                                          sinceOrigin(record.track, day.span.end));
        const MeanAndRange range = meanAndRange(part);
        if (range.coveredMs <
            dayCoverageNeeded * static_cast<double>(Milliseconds(oneRoomDay).count()))
            continue;
        low += range.low;
        high += range.high;
        ++days;
    }
    if (days == 0)
        return;
    record.dayLow = low / days;
    record.dayHigh = high / days;
}

/// From the first covered instant to the last.
Span coveredSpan(const Track& track)
{
    if (track.empty())
        return {track.origin, track.origin};
    return {plusMs(track.origin, track.ms[track.runs.front().first]),
            plusMs(track.origin, track.ms[track.runs.back().last])};
}

Result<RoomRecord> recordOfSensor(const store::LogbookFile& logbook, const Snapshot& snapshot,
                                  const Sensor& sensor, Span span)
{
    auto judged = judgedSeries(logbook, snapshot, sensor, span, std::nullopt);
    HOLDBAND_TRY(judged);
    RoomRecord record;
    record.sensor = sensor.name;
    record.track = analysis::cover(judged->series, judged->gapLimit, span);
    record.span = coveredSpan(record.track);
    const MeanAndRange all = meanAndRange(record.track);
    const auto length = static_cast<double>((record.span.end - record.span.start).count());
    record.coverage = length > 0.0 ? all.coveredMs / length : 0.0;
    if (all.coveredMs > 0.0)
        record.meanCelsius = all.area / all.coveredMs;
    return record;
}

double coveredHours(const RoomRecord& record)
{
    return record.coverage * record.span.hours();
}

Result<std::vector<std::string>> wantedSensors(const Snapshot& snapshot, const std::string& sensor)
{
    const std::vector<std::string> known = roomSensors(snapshot);
    if (sensor.empty()) {
        if (known.empty())
            return dataProblem(Phrase::tr("no sensor reads the room"), {},
                               Phrase::tr("type the room's temperature instead"));
        return known;
    }
    if (std::find(known.begin(), known.end(), sensor) == known.end())
        return dataProblem(Phrase::tr("no sensor of the room is called \"%1\"").with(sensor), {},
                           suggestion(sensor, known));
    return std::vector{sensor};
}

} // namespace

Result<RoomRecord> roomRecord(const store::LogbookFile& logbook, const Snapshot& snapshot,
                              const std::string& sensor, Span span)
{
    auto names = wantedSensors(snapshot, sensor);
    HOLDBAND_TRY(names);
    if (span.end - span.start < oneRoomDay)
        return dataProblem(Phrase::tr("the stretch of the room is shorter than a day"), {},
                           Phrase::tr("choose a longer one"));
    std::optional<RoomRecord> best;
    for (const std::string& name : *names) {
        auto record = recordOfSensor(logbook, snapshot, *snapshot.sensor(name), span);
        HOLDBAND_TRY(record);
        if (!best || coveredHours(*record) > coveredHours(*best))
            best = std::move(*record);
    }
    if (best->track.empty())
        return dataProblem(Phrase::tr("the room has no readings in that time"), {},
                           Phrase::tr("choose another stretch, or type its temperature"));
    if (best->span.end - best->span.start < oneRoomDay)
        return dataProblem(Phrase::tr("the room has readings of less than a day in that time"), {},
                           Phrase::tr("choose another stretch, or type its temperature"));
    addDays(*best, snapshot.zone);
    return std::move(*best);
}

Result<std::vector<RoomMonth>> roomMonths(const store::LogbookFile& logbook,
                                          const Snapshot& snapshot)
{
    std::optional<Instant> first;
    std::optional<Instant> last;
    for (const std::string& name : roomSensors(snapshot)) {
        auto begins = store::firstLoggedAt(logbook, name);
        HOLDBAND_TRY(begins);
        auto ends = store::lastReadingAt(logbook, name);
        HOLDBAND_TRY(ends);
        if (!*begins || !*ends)
            continue;
        first = std::min(first.value_or(**begins), **begins);
        last = std::max(last.value_or(**ends), **ends);
    }
    std::vector<RoomMonth> months;
    if (!first)
        return months;
    const Date date = snapshot.zone.localDate(*first);
    for (std::chrono::year_month month = date.year() / date.month();;
         month += std::chrono::months{1}) {
        const std::chrono::year_month next = month + std::chrono::months{1};
        const Span span{snapshot.zone.startOfDay(month / 1), snapshot.zone.startOfDay(next / 1)};
        if (span.start > *last)
            return months;
        months.push_back({month, span, span.end <= *last + oneRoomDay});
    }
}

Track roomForPlan(const RoomRecord& record, Milliseconds length)
{
    Track room = record.track;
    const Milliseconds days =
        (record.span.end - record.span.start) / oneRoomDay * Milliseconds(oneRoomDay);
    if (length <= record.span.end - record.span.start)
        return room;
    const auto step = static_cast<double>(days.count());
    const Track once = analysis::clip(record.track, sinceOrigin(record.track, record.span.start),
                                      sinceOrigin(record.track, record.span.start + days));
    room = once;
    for (double shift = step; shift < static_cast<double>(length.count()); shift += step) {
        const std::size_t before = room.ms.size();
        for (std::size_t i = 0; i < once.ms.size(); ++i) {
            room.ms.push_back(once.ms[i] + shift);
            room.value.push_back(once.value[i]);
        }
        for (const analysis::Run& run : once.runs)
            room.runs.push_back({before + run.first, before + run.last});
    }
    return room;
}

std::vector<Instant> possibleStarts(const RoomRecord& record, Milliseconds length)
{
    std::vector<Instant> starts{record.span.start};
    const std::int64_t days = (record.span.end - record.span.start - length) / oneRoomDay;
    const std::int64_t step = std::max<std::int64_t>(1, (days + mostStarts - 1) / mostStarts);
    for (std::int64_t day = step; day <= days; day += step)
        starts.push_back(record.span.start + day * oneRoomDay);
    return starts;
}

} // namespace holdband::results
