#include "core/results/rounds/rounds_sheet.h"

#include "core/model/meter_service.h"
#include "core/model/plan_in_force.h"
#include "core/results/rounds/round_calendar.h"
#include "core/results/snapshot.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/reading_units.h"
#include "core/text/durations.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <algorithm>

namespace holdband::results {

namespace {

constexpr int roundsShown = 14;
constexpr Hours recentHours{72.0};
constexpr Hours staleHours{7 * 24.0}; ///< past this the recent rate says nothing of now
constexpr int mostDecimals = 6;
constexpr double leastShare = 0.5; ///< of the recent mean power
constexpr double mostShare = 2.0;

using Readings = std::vector<store::StoredReading>;

/// kWh counted from one reading to the next; absent over a reset.
std::optional<double> counted(const MeterReading& from, const MeterReading& to, const Meter& meter)
{
    const double moved = (to.registerReading - from.registerReading).kilowattHours();
    if (!to.event)
        return moved;
    if (*to.event == MeterEvent::rollover && meter.rollsOverAt)
        return moved + meter.rollsOverAt->kilowattHours();
    return std::nullopt;
}

/// kW over the last three days of readings, or of the last two; absent with fewer, or over a reset.
std::optional<double> recentKilowatts(const Meter& meter, const Readings& readings)
{
    double kwh = 0.0;
    double hours = 0.0;
    for (std::size_t i = readings.size(); i > 1; --i) {
        const MeterReading& from = readings[i - 2].inForce;
        const double back = hoursBetween(from.at, readings.back().inForce.at);
        const auto used = counted(from, readings[i - 1].inForce, meter);
        if (!used || (hours > 0.0 && back > recentHours.count()))
            break;
        kwh += *used;
        hours = back;
    }
    return hours > 0.0 ? std::optional(kwh / hours) : std::nullopt;
}

/// 0.01 kWh is read to two decimals.
int decimalsOf(Energy resolution)
{
    int decimals = 0;
    for (double unit = 1.0; decimals < mostDecimals && resolution.kilowattHours() < unit * 0.999;
         unit /= 10.0)
        ++decimals;
    return decimals;
}

int decimalsOf(const Meter& meter, const Readings& readings)
{
    int decimals = meter.resolution ? decimalsOf(*meter.resolution) : 0;
    for (const store::StoredReading& kept : readings)
        decimals = std::max(decimals, kept.inForce.decimals);
    return std::min(decimals, mostDecimals);
}

/// Of a late reading: it lies between its neighbours.
void expectBetween(RoundRow& row, const MeterReading& after)
{
    if (!row.lastAt || after.event)
        return;
    row.expected = {row.last, after.registerReading.kilowattHours()};
    row.expectedWhy = Phrase::tr("Between the reading before it and the one after it.");
}

/// Past the top the register begins again: said, and the range ends or begins there.
void endAtTop(RoundRow& row, const Meter& meter, char sign)
{
    if (!meter.rollsOverAt || row.expected->second < meter.rollsOverAt->kilowattHours())
        return;
    const double top = meter.rollsOverAt->kilowattHours();
    const double beyond = row.expected->second - top;
    if (row.expected->first >= top) { // surely past it
        row.expected = {row.expected->first - top, beyond};
        row.expectedWhy += " " + Phrase::tr("It has passed its top since.").text();
        return;
    }
    row.expected->second = top;
    row.expectedWhy += " " + Phrase::tr("It may have passed its top since: then up to %1.")
                                 .with(fixedText(beyond, row.decimals, sign));
}

void addExpectation(RoundRow& row, const Meter& meter, const Readings& readings, Instant now,
                    char sign)
{
    const std::optional<double> power = recentKilowatts(meter, readings);
    const double hours = row.lastAt ? hoursBetween(*row.lastAt, now) : 0.0;
    if (!power || hours <= 0.0 || hours > staleHours.count())
        return;
    row.expected = {row.last + leastShare * *power * hours, row.last + mostShare * *power * hours};
    row.expectedWhy = Phrase::tr("The last reading plus half to twice what the last three days' "
                                 "mean of %1 W makes of the %2 since.")
                          .with(fixedText(*power * 1000.0, 0), durationText(Hours{hours}, sign));
    endAtTop(row, meter, sign);
}

/// The row for a reading at `at`, which may lie before readings that are there.
RoundRow rowOf(const Meter& meter, const Readings& all, Instant at, char sign)
{
    const auto after = std::find_if(all.begin(), all.end(), [at](const store::StoredReading& kept) {
        return kept.inForce.at > at;
    });
    const Readings readings(all.begin(), after);
    RoundRow row;
    row.name = meter.name;
    row.topKnown = meter.rollsOverAt.has_value();
    row.setup = setupAt(meter, at).value_or(meter.setup);
    row.decimals = decimalsOf(meter, all);
    if (!readings.empty()) {
        row.lastAt = readings.back().inForce.at;
        row.last = readings.back().inForce.registerReading.kilowattHours();
    }
    if (after == all.end())
        addExpectation(row, meter, readings, at, sign);
    else
        expectBetween(row, after->inForce);
    return row;
}

/// A reading of any row, as the grid shows it.
struct Shown {
    Instant at;
    double value;
    int decimals;
    std::int64_t id;
    std::string note;
    std::string history;
};

/// How numbers and times of the past are written.
struct UnitFormat {
    const Zone& zone;
    char sign = '.';
};

std::string wasText(double value, int decimals, Instant until, const std::string& why,
                    const UnitFormat& manner)
{
    const std::string number = fixedText(value, decimals, manner.sign);
    const std::string when = localShortText(until, manner.zone);
    if (why.empty())
        return Phrase::tr("was %1, corrected %2", "a value and when").with(number, when);
    return Phrase::tr("was %1, corrected %2: %3", "a value, when and why").with(number, when, why);
}

void addHistory(std::string& text, const std::string& more)
{
    text += (text.empty() ? "" : "; ") + more;
}

std::vector<Shown> shownOf(const Readings& readings, const UnitFormat& manner)
{
    std::vector<Shown> all;
    for (const store::StoredReading& kept : readings) {
        Shown shown{kept.inForce.at,       kept.inForce.registerReading.kilowattHours(),
                    kept.inForce.decimals, kept.id.value,
                    kept.inForce.note,     {}};
        for (const store::Replaced& before : kept.before)
            addHistory(shown.history,
                       wasText(before.kwh, before.decimals, before.until, before.why, manner));
        all.push_back(std::move(shown));
    }
    return all;
}

/// A hand reading as a number in the row's unit.
double inUnit(double value, ReadingUnit from, ReadingUnit to)
{
    return from == to ? value : store::rawValue(store::baseValue(value, from), to);
}

std::vector<Shown> shownOf(const std::vector<store::StoredHandReading>& readings, ReadingUnit unit,
                           const UnitFormat& manner)
{
    std::vector<Shown> all;
    for (const store::StoredHandReading& kept : readings) {
        const HandReading& now = kept.inForce;
        Shown shown{
            now.at, inUnit(now.value, now.unit, unit), now.decimals, kept.id.value, now.note, {}};
        for (const store::ReplacedHandReading& before : kept.before)
            addHistory(shown.history, wasText(inUnit(before.value, now.unit, unit), before.decimals,
                                              before.until, before.why, manner));
        all.push_back(std::move(shown));
    }
    return all;
}

/// The rows and cells of one sheet as they come together.
class SheetMaker {
public:
    SheetMaker(const store::LogbookFile& logbook, const Snapshot& snapshot, const RoundsWish& wish,
               RoundsSheet& sheet)
        : m_logbook(logbook), m_snapshot(snapshot), m_at(wish.at.value_or(sheet.now)),
          m_lastIsOpen(wish.sheetsBack == 0),
          m_sheet(sheet), m_manner{m_sheet.zone, wish.decimalSign}
    {
    }

    void addMeters()
    {
        for (const Meter& meter : m_snapshot.meters) {
            if (!inService(meter, m_sheet.now))
                continue;
            const Readings& readings = m_snapshot.meterReadings.at(meter.name);
            m_sheet.rows.push_back(rowOf(meter, readings, m_at, m_manner.sign));
            addCells(shownOf(readings, m_manner),
                     [&](Instant due) { return isExpected(m_snapshot, meter, due, m_sheet.now); });
        }
    }

    /// Meters that are read no longer but have readings in the grid, to be mended there.
    void addPastMeters()
    {
        for (const Meter& meter : m_snapshot.meters) {
            const Readings& readings = m_snapshot.meterReadings.at(meter.name);
            noteEarlier(readings);
            if (inService(meter, m_sheet.now) || !hasShown(readings))
                continue;
            RoundRow row = rowOf(meter, readings, m_at, m_manner.sign);
            row.toRead = false;
            m_sheet.rows.push_back(std::move(row));
            addCells(shownOf(readings, m_manner),
                     [&](Instant due) { return isExpected(m_snapshot, meter, due, m_sheet.now); });
        }
    }

    Done addThermometers()
    {
        for (const Sensor& sensor : m_snapshot.sensors) {
            if (!sensor.readByHand || (sensor.retired && *sensor.retired <= m_sheet.now))
                continue;
            auto kept =
                store::readHandReadings(m_logbook, {store::HandOwner::Kind::sensor, sensor.name});
            HOLDBAND_TRY(kept);
            noteEarlier(*kept);
            RoundRow row;
            row.kind =
                sensor.reads == SensorKind::gravity ? RoundKind::gravity : RoundKind::thermometer;
            row.name = sensor.name;
            row.setup = sensor.setup.value_or("");
            row.unit = temperatureUnit();
            row.decimals = 1;
            addRow(std::move(row), *kept);
        }
        return {};
    }

    Done addGravities()
    {
        for (const Batch& batch : m_snapshot.batches) {
            if (!batch.ended)
                HOLDBAND_TRY(addGravity(batch, true));
        }
        return {};
    }

    /// Of batches that have ended, where their gravities stand in the grid.
    Done addPastGravities()
    {
        for (const Batch& batch : m_snapshot.batches) {
            if (batch.ended)
                HOLDBAND_TRY(addGravity(batch, false));
        }
        return {};
    }

    /// A batch that runs can be filled in from its pitching on, whether or not it was read.
    void noteEarlierPitches()
    {
        for (const Batch& batch : m_snapshot.batches) {
            if (!batch.ended &&
                earlier(roundOf(batch.pitched, m_sheet.zone, m_sheet.settings.rounds),
                        m_sheet.columns.front()))
                m_sheet.hasEarlier = true;
        }
    }

private:
    template <typename Kept>
    void noteEarlier(const std::vector<Kept>& readings)
    {
        const auto& windows = m_sheet.settings.rounds;
        if (!readings.empty() &&
            earlier(roundOf(readings.front().inForce.at, m_sheet.zone, windows),
                    m_sheet.columns.front()))
            m_sheet.hasEarlier = true;
    }

    /// Whether some of them stand in the grid.
    template <typename Kept>
    bool hasShown(const std::vector<Kept>& readings) const
    {
        return std::any_of(readings.begin(), readings.end(), [this](const Kept& kept) {
            const RoundColumn round =
                roundOf(kept.inForce.at, m_sheet.zone, m_sheet.settings.rounds);
            return !earlier(round, m_sheet.columns.front()) &&
                   !earlier(m_sheet.columns.back(), round);
        });
    }

    Done addGravity(const Batch& batch, bool toRead)
    {
        auto kept = store::readHandReadings(m_logbook, {store::HandOwner::Kind::batch, batch.name});
        HOLDBAND_TRY(kept);
        noteEarlier(*kept);
        if (!toRead && !hasShown(*kept))
            return {};
        RoundRow row;
        row.kind = RoundKind::gravity;
        row.name = batch.name;
        row.setup = batch.setup;
        row.unit = ReadingUnit::specificGravity;
        row.decimals = 3;
        row.toRead = toRead;
        addRow(std::move(row), *kept);
        return {};
    }

    ReadingUnit temperatureUnit() const
    {
        return m_sheet.settings.temperatureUnit() == TemperatureUnit::fahrenheit
                   ? ReadingUnit::fahrenheit
                   : ReadingUnit::celsius;
    }

    void addRow(RoundRow row, const std::vector<store::StoredHandReading>& kept)
    {
        if (!kept.empty()) {
            const HandReading& last = kept.back().inForce;
            row.lastAt = last.at;
            row.last = inUnit(last.value, last.unit, row.unit);
        }
        if (row.kind == RoundKind::gravity)
            expectFall(row);
        else
            expectBand(row);
        const ReadingUnit unit = row.unit;
        m_sheet.rows.push_back(std::move(row));
        addCells(shownOf(kept, unit, m_manner), [](Instant) { return false; });
    }

    static void expectFall(RoundRow& row)
    {
        constexpr double leastGravity = 0.990; // dry beer; common practice, no source
        if (!row.lastAt || row.last <= leastGravity)
            return;
        row.expected = {leastGravity, row.last};
        row.expectedWhy =
            Phrase::tr("Gravity falls while the beer ferments: not above the last reading.");
    }

    /// The band of the running batch whose beer the thermometer reads.
    void expectBand(RoundRow& row) const
    {
        for (const Batch& batch : m_snapshot.batches) {
            const std::string& sensor =
                batch.beerUses.empty() ? batch.beerSensor : batch.beerUses.back().sensor;
            if (batch.ended || sensor != row.name || !batch.tolerance)
                continue;
            const auto target = targetAt(laidInForce(batch), m_sheet.now);
            if (!target)
                continue;
            const TemperatureUnit unit = m_sheet.settings.temperatureUnit();
            row.expected = {valueIn(*target - *batch.tolerance, unit),
                            valueIn(*target + *batch.tolerance, unit)};
            row.expectedWhy = Phrase::tr("The band of %1 now.").with(batch.name);
        }
    }

    template <typename Expected>
    void addCells(const std::vector<Shown>& readings, Expected expected)
    {
        const auto& columns = m_sheet.columns;
        const auto& windows = m_sheet.settings.rounds;
        std::vector<RoundCell> cells(columns.size());
        for (std::size_t i = 0; i < columns.size(); ++i) {
            cells[i].at = dueAt(columns[i], m_sheet.zone, windows);
            const bool over = missedFrom(columns[i], m_sheet.zone, windows) < m_sheet.now;
            const bool open = m_lastIsOpen && i + 1 == columns.size();
            cells[i].missed = over && !open && expected(cells[i].at);
        }
        for (const Shown& reading : readings)
            place(cells, reading);
        m_sheet.cells.push_back(std::move(cells));
    }

    void place(std::vector<RoundCell>& cells, const Shown& reading) const
    {
        const RoundColumn round = roundOf(reading.at, m_sheet.zone, m_sheet.settings.rounds);
        const auto found = std::find_if(
            m_sheet.columns.begin(), m_sheet.columns.end(), [&](const RoundColumn& column) {
                return !earlier(column, round) && !earlier(round, column);
            });
        if (found == m_sheet.columns.end())
            return;
        RoundCell& cell = cells[static_cast<std::size_t>(found - m_sheet.columns.begin())];
        const int decimals = std::max(reading.decimals, m_sheet.rows.back().decimals);
        cell = {reading.value, decimals,     false,          reading.at,
                reading.id,    reading.note, reading.history};
    }

    const store::LogbookFile& m_logbook;
    const Snapshot& m_snapshot;
    Instant m_at;      ///< of the round that is typed
    bool m_lastIsOpen; ///< the last column may still be read
    RoundsSheet& m_sheet;
    UnitFormat m_manner;
};

/// The last rounds: up to now while a batch runs or something was read today, else up to the last
/// reading; or as many sheets before them.
std::vector<RoundColumn> columnsShown(const Snapshot& snapshot, Instant now, int sheetsBack)
{
    const auto& windows = snapshot.settings.rounds;
    std::optional<Instant> last;
    for (const auto& [meter, readings] : snapshot.meterReadings) {
        if (!readings.empty())
            last = std::max(last.value_or(readings.back().inForce.at), readings.back().inForce.at);
    }
    const bool running = std::any_of(snapshot.batches.begin(), snapshot.batches.end(),
                                     [](const Batch& batch) { return !batch.ended.has_value(); });
    RoundColumn round = roundOf(running || !last ? now : *last, snapshot.zone, windows);
    for (int i = 0; i < sheetsBack * roundsShown; ++i)
        round = roundBefore(round, windows);
    std::vector<RoundColumn> columns;
    for (int i = 0; i < roundsShown; ++i) {
        columns.push_back(round);
        round = roundBefore(round, windows);
    }
    std::reverse(columns.begin(), columns.end());
    return columns;
}

/// A meter with a running batch that was not read in the round.
bool isUnread(const Snapshot& snapshot, const Meter& meter, const RoundColumn& round, Instant now)
{
    const Readings& readings = snapshot.meterReadings.at(meter.name);
    const auto& windows = snapshot.settings.rounds;
    return isExpected(snapshot, meter, now, now) &&
           std::none_of(readings.begin(), readings.end(), [&](const store::StoredReading& kept) {
               const RoundColumn read = roundOf(kept.inForce.at, snapshot.zone, windows);
               return !earlier(read, round) && !earlier(round, read);
           });
}

bool isDue(const Snapshot& snapshot, Instant now)
{
    const auto& windows = snapshot.settings.rounds;
    const RoundColumn round = roundOf(now, snapshot.zone, windows);
    return opensAt(round, snapshot.zone, windows) <= now &&
           now < missedFrom(round, snapshot.zone, windows) &&
           std::any_of(snapshot.meters.begin(), snapshot.meters.end(),
                       [&](const Meter& meter) { return isUnread(snapshot, meter, round, now); });
}

Instant nextDueAfter(Instant now, const Snapshot& snapshot, bool dueNow)
{
    const auto& windows = snapshot.settings.rounds;
    RoundColumn round = roundOf(now, snapshot.zone, windows);
    while (!dueNow && dueAt(round, snapshot.zone, windows) <= now)
        round = roundAfter(round, windows);
    return dueAt(round, snapshot.zone, windows);
}

} // namespace

Result<RoundsSheet> reviewRounds(const store::LogbookFile& logbook, const RoundsWish& wish)
{
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    auto snapshot = readSnapshot(logbook);
    HOLDBAND_TRY(snapshot);
    RoundsSheet sheet;
    sheet.settings = snapshot->settings;
    sheet.zone = snapshot->zone;
    sheet.now = logbook.now();
    sheet.columns = columnsShown(*snapshot, sheet.now, wish.sheetsBack);
    sheet.dueNow = isDue(*snapshot, sheet.now);
    sheet.nextDue = nextDueAfter(sheet.now, *snapshot, sheet.dueNow);
    SheetMaker maker(logbook, *snapshot, wish, sheet);
    maker.addMeters();
    HOLDBAND_TRY(maker.addThermometers());
    HOLDBAND_TRY(maker.addGravities());
    maker.addPastMeters();
    HOLDBAND_TRY(maker.addPastGravities());
    maker.noteEarlierPitches();
    return sheet;
}

} // namespace holdband::results
