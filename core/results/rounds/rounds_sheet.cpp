#include "core/results/rounds/rounds_sheet.h"

#include "core/results/rounds/round_calendar.h"
#include "core/results/rounds/round_rows.h"
#include "core/results/rounds/rounds_grid.h"
#include "core/results/rounds/shown_readings.h"
#include "core/results/snapshot.h"
#include "core/store/readings/hand_readings.h"

#include <algorithm>
#include <functional>

namespace holdband::results {

namespace {

/// Collects the rows and cells of one sheet.
class SheetMaker {
public:
    SheetMaker(const store::LogbookFile& logbook, const Snapshot& snapshot,
               const RoundsRequest& request, RoundsSheet& sheet)
        : m_logbook(logbook), m_snapshot(snapshot), m_at(request.at.value_or(sheet.now)),
          m_sheet(sheet),
          m_grid(sheet, request.sheetsBack == 0), m_format{m_sheet.zone, request.decimalSign}
    {
    }

    void addMeters()
    {
        for (const Meter& meter : m_snapshot.meters) {
            if (inService(meter, m_sheet.now))
                addMeter(meter, m_snapshot.meterReadings.at(meter.name), true);
        }
    }

    /// Adds meters that are no longer read but have readings in the grid that may need correction.
    void addPastMeters()
    {
        for (const Meter& meter : m_snapshot.meters) {
            const auto& readings = m_snapshot.meterReadings.at(meter.name);
            noteEarlier(readings);
            if (!inService(meter, m_sheet.now) && hasShown(readings))
                addMeter(meter, readings, false);
        }
    }

    Done addThermometers()
    {
        for (const Sensor& sensor : m_snapshot.sensors) {
            // A gravity belongs to its batch's row; electricity is not read by eye here.
            if (!sensor.readByHand || !readsTemperature(sensor.reads) ||
                (sensor.retired && *sensor.retired <= m_sheet.now))
                continue;
            auto stored =
                store::readHandReadings(m_logbook, {store::HandOwner::Kind::sensor, sensor.name});
            HOLDBAND_TRY(stored);
            noteEarlier(*stored);
            RoundRow row;
            row.kind = RoundKind::thermometer;
            row.name = sensor.name;
            row.setup = sensor.setup.value_or("");
            row.unit = temperatureUnit();
            row.decimals = 1;
            addRow(std::move(row), *stored);
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

    /// Adds ended batches that have gravities in the grid.
    Done addPastGravities()
    {
        for (const Batch& batch : m_snapshot.batches) {
            if (batch.ended)
                HOLDBAND_TRY(addGravity(batch, false));
        }
        return {};
    }

    /// A running batch can be filled in from its pitching on, even before its first reading.
    void noteEarlierPitches()
    {
        for (const Batch& batch : m_snapshot.batches) {
            if (!batch.ended && m_grid.isBefore(batch.pitched))
                m_sheet.hasEarlier = true;
        }
    }

private:
    template <typename Stored>
    void noteEarlier(const std::vector<Stored>& readings)
    {
        if (!readings.empty() && m_grid.isBefore(readings.front().inForce.at))
            m_sheet.hasEarlier = true;
    }

    /// Whether any of them is in the grid.
    template <typename Stored>
    bool hasShown(const std::vector<Stored>& readings) const
    {
        return std::any_of(readings.begin(), readings.end(), [this](const Stored& stored) {
            return m_grid.holds(stored.inForce.at);
        });
    }

    void addMeter(const Meter& meter, const std::vector<store::StoredReading>& readings,
                  bool toRead)
    {
        RoundRow row = meterRow(meter, readings, m_at, m_format.sign);
        row.toRead = toRead;
        addToSheet(std::move(row), shownOf(readings, m_format),
                   [&](Instant due) { return isExpected(m_snapshot, meter, due, m_sheet.now); });
    }

    Done addGravity(const Batch& batch, bool toRead)
    {
        auto stored =
            store::readHandReadings(m_logbook, {store::HandOwner::Kind::batch, batch.name});
        HOLDBAND_TRY(stored);
        noteEarlier(*stored);
        if (!toRead && !hasShown(*stored))
            return {};
        RoundRow row;
        row.kind = RoundKind::gravity;
        row.name = batch.name;
        row.setup = batch.setup;
        row.unit = ReadingUnit::specificGravity;
        row.decimals = 3;
        row.toRead = toRead;
        addRow(std::move(row), *stored);
        return {};
    }

    ReadingUnit temperatureUnit() const
    {
        return m_sheet.settings.temperatureUnit() == TemperatureUnit::fahrenheit
                   ? ReadingUnit::fahrenheit
                   : ReadingUnit::celsius;
    }

    void addRow(RoundRow row, const std::vector<store::StoredHandReading>& stored)
    {
        if (!stored.empty()) {
            const HandReading& last = stored.back().inForce;
            row.lastAt = last.at;
            row.last = inUnit(last.value, last.unit, row.unit);
        }
        if (row.kind == RoundKind::gravity)
            expectFall(row);
        else
            expectBand(row, m_snapshot, m_sheet.now);
        const std::vector<ShownReading> shown = shownOf(stored, row.unit, m_format);
        addToSheet(std::move(row), shown, [](Instant) { return false; });
    }

    void addToSheet(RoundRow row, const std::vector<ShownReading>& shown,
                    const std::function<bool(Instant)>& expected)
    {
        row.at = m_at;
        if (m_snapshot.setup(row.setup))
            row.setupIndex = m_snapshot.indexOfSetup(row.setup);
        m_sheet.cells.push_back(m_grid.cells(shown, row.decimals, expected));
        m_sheet.rows.push_back(std::move(row));
    }

    const store::LogbookFile& m_logbook;
    const Snapshot& m_snapshot;
    Instant m_at; ///< time of the round that is typed
    RoundsSheet& m_sheet;
    RoundsGrid m_grid;
    HistoryFormat m_format;
};

/// A meter with a running batch at `at`, which was not read in the round.
bool isUnread(const Snapshot& snapshot, const Meter& meter, const RoundColumn& round, Instant at,
              Instant now)
{
    const auto& readings = snapshot.meterReadings.at(meter.name);
    const auto& windows = snapshot.settings.rounds;
    return isExpected(snapshot, meter, at, now) &&
           std::none_of(readings.begin(), readings.end(), [&](const store::StoredReading& stored) {
               return roundOf(stored.inForce.at, snapshot.zone, windows) == round;
           });
}

bool anyUnread(const Snapshot& snapshot, const RoundColumn& round, Instant at, Instant now)
{
    return std::any_of(snapshot.meters.begin(), snapshot.meters.end(), [&](const Meter& meter) {
        return isUnread(snapshot, meter, round, at, now);
    });
}

bool isDue(const Snapshot& snapshot, Instant now)
{
    const auto& windows = snapshot.settings.rounds;
    const RoundColumn round = roundOf(now, snapshot.zone, windows);
    return opensAt(round, snapshot.zone, windows) <= now &&
           now < missedFrom(round, snapshot.zone, windows) && anyUnread(snapshot, round, now, now);
}

Instant nextDueAfter(Instant now, const Snapshot& snapshot, bool dueNow)
{
    const auto& windows = snapshot.settings.rounds;
    RoundColumn round = roundOf(now, snapshot.zone, windows);
    while (!dueNow && opensAt(round, snapshot.zone, windows) <= now)
        round = roundAfter(round, windows);
    return dueAt(round, snapshot.zone, windows);
}

/// A round that was missed stays due until the time of the next one begins.
NextRound nextRoundAt(Instant now, const Snapshot& snapshot)
{
    const auto& windows = snapshot.settings.rounds;
    RoundColumn round = roundOf(now, snapshot.zone, windows);
    const Instant opens = opensAt(round, snapshot.zone, windows);
    const bool running =
        std::any_of(snapshot.meters.begin(), snapshot.meters.end(),
                    [&](const Meter& meter) { return isExpected(snapshot, meter, now, now); });
    if (!running)
        return {NextRound::State::none, round, opens};
    const bool over = missedFrom(round, snapshot.zone, windows) <= now;
    const Instant asked = over ? dueAt(round, snapshot.zone, windows) : now;
    if (opens <= now && anyUnread(snapshot, round, asked, now))
        return {NextRound::State::due, round, opens};
    if (opens <= now)
        round = roundAfter(round, windows);
    return {NextRound::State::later, round, opensAt(round, snapshot.zone, windows)};
}

} // namespace

Result<RoundsSheet> reviewRounds(const store::LogbookFile& logbook, const RoundsRequest& request)
{
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    auto snapshot = readSnapshot(logbook);
    HOLDBAND_TRY(snapshot);
    RoundsSheet sheet;
    sheet.settings = snapshot->settings;
    sheet.zone = snapshot->zone;
    sheet.now = logbook.now();
    sheet.columns = columnsShown(*snapshot, sheet.now, request.sheetsBack);
    sheet.dueNow = isDue(*snapshot, sheet.now);
    sheet.next = nextRoundAt(sheet.now, *snapshot);
    sheet.nextDue = nextDueAfter(sheet.now, *snapshot, sheet.dueNow);
    SheetMaker maker(logbook, *snapshot, request, sheet);
    maker.addMeters();
    HOLDBAND_TRY(maker.addThermometers());
    HOLDBAND_TRY(maker.addGravities());
    maker.addPastMeters();
    HOLDBAND_TRY(maker.addPastGravities());
    maker.noteEarlierPitches();
    return sheet;
}

} // namespace holdband::results
