#include "core/review/rounds_sheet.h"

#include "core/review/round_calendar.h"
#include "core/review/snapshot.h"
#include "core/text/durations.h"
#include "core/text/numbers.h"
#include "core/text/times.h"

#include <algorithm>

namespace holdband::review {

namespace {

constexpr int roundsShown = 14;
constexpr Hours recentHours{72.0};
constexpr Hours staleHours{7 * 24.0}; ///< past this the recent rate says nothing of now
constexpr int mostDecimals = 6;
constexpr double leastShare = 0.5; ///< of the recent mean power
constexpr double mostShare = 2.0;

using Readings = std::vector<store::KeptReading>;

/// kW over the last three days of readings; absent with fewer than two, or over a reset.
std::optional<double> recentKilowatts(const Readings& readings)
{
    if (readings.size() < 2)
        return std::nullopt;
    const MeterReading& last = readings.back().inForce;
    std::size_t first = readings.size() - 1;
    while (first > 0 && !readings[first].inForce.event &&
           hoursBetween(readings[first - 1].inForce.at, last.at) <= recentHours.count())
        --first;
    if (first == readings.size() - 1 && !readings[first].inForce.event)
        --first;
    const MeterReading& from = readings[first].inForce;
    const double hours = hoursBetween(from.at, last.at);
    if (!(hours > 0.0))
        return std::nullopt;
    return (last.registerReading - from.registerReading).kilowattHours() / hours;
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
    for (const store::KeptReading& kept : readings)
        decimals = std::max(decimals, kept.inForce.decimals);
    return std::min(decimals, mostDecimals);
}

void addExpectation(RoundRow& row, const Readings& readings, Instant now)
{
    const std::optional<double> power = recentKilowatts(readings);
    const double hours = row.lastAt ? hoursBetween(*row.lastAt, now) : 0.0;
    if (!power || hours <= 0.0 || hours > staleHours.count())
        return;
    row.expectedKwh = {row.lastKwh + leastShare * *power * hours,
                       row.lastKwh + mostShare * *power * hours};
    row.expectedWhy = "The last reading plus half to twice what the last three days' mean of " +
                      fixedText(*power * 1000.0, 0) + " W makes of the " +
                      durationText(Hours{hours}) + " since.";
}

RoundRow rowOf(const Meter& meter, const Readings& readings, Instant now)
{
    RoundRow row;
    row.meter = meter.name;
    row.setup = meter.setup;
    row.decimals = decimalsOf(meter, readings);
    if (!readings.empty()) {
        row.lastAt = readings.back().inForce.at;
        row.lastKwh = readings.back().inForce.registerReading.kilowattHours();
    }
    addExpectation(row, readings, now);
    return row;
}

std::string historyText(const store::KeptReading& kept, const Zone& zone)
{
    std::string text;
    for (const store::Replaced& before : kept.before) {
        text += text.empty() ? "" : "; ";
        text += "was " + fixedText(before.kwh, before.decimals) + ", corrected " +
                localShortText(before.until, zone);
        if (!before.why.empty())
            text += ": " + before.why;
    }
    return text;
}

std::vector<RoundCell> cellsOf(const Snapshot& snapshot, const Meter& meter,
                               const std::vector<RoundColumn>& columns, Instant now)
{
    const Readings& readings = snapshot.meterReadings.at(meter.name);
    std::vector<RoundCell> cells(columns.size());
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const bool due = i + 1 < columns.size(); // the current round may still come
        cells[i].missed = due && isExpected(snapshot, meter, dueAt(columns[i], snapshot.zone), now);
    }
    for (const store::KeptReading& kept : readings) {
        const RoundColumn round = roundOf(kept.inForce.at, snapshot.zone);
        const auto found = std::find_if(columns.begin(), columns.end(), [&](const RoundColumn& c) {
            return !earlier(c, round) && !earlier(round, c);
        });
        if (found == columns.end())
            continue;
        RoundCell& cell = cells[static_cast<std::size_t>(found - columns.begin())];
        cell.kwh = kept.inForce.registerReading.kilowattHours();
        cell.decimals = kept.inForce.decimals;
        cell.missed = false;
        cell.history = historyText(kept, snapshot.zone);
    }
    return cells;
}

/// The last rounds: up to now while a batch runs or something was read today, else up to the last
/// reading.
std::vector<RoundColumn> columnsShown(const Snapshot& snapshot, Instant now)
{
    std::optional<Instant> last;
    for (const auto& [meter, readings] : snapshot.meterReadings) {
        if (!readings.empty())
            last = std::max(last.value_or(readings.back().inForce.at), readings.back().inForce.at);
    }
    const bool running = std::any_of(snapshot.batches.begin(), snapshot.batches.end(),
                                     [](const Batch& batch) { return !batch.ended.has_value(); });
    RoundColumn round = roundOf(running || !last ? now : *last, snapshot.zone);
    std::vector<RoundColumn> columns;
    for (int i = 0; i < roundsShown; ++i) {
        columns.push_back(round);
        round = roundBefore(round);
    }
    std::reverse(columns.begin(), columns.end());
    return columns;
}

} // namespace

Result<RoundsSheet> reviewRounds(const store::LogbookFile& logbook)
{
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    auto snapshot = readSnapshot(logbook);
    HOLDBAND_TRY(snapshot);
    RoundsSheet sheet;
    sheet.settings = snapshot->settings;
    sheet.zone = snapshot->zone;
    sheet.now = logbook.now();
    sheet.columns = columnsShown(*snapshot, sheet.now);
    for (const Meter& meter : snapshot->meters) {
        if (!inService(meter, sheet.now))
            continue;
        sheet.rows.push_back(rowOf(meter, snapshot->meterReadings.at(meter.name), sheet.now));
        sheet.cells.push_back(cellsOf(*snapshot, meter, sheet.columns, sheet.now));
    }
    return sheet;
}

} // namespace holdband::review
