#include "core/results/rounds/round_rows.h"

#include "core/model/meter_service.h"
#include "core/model/plan_in_force.h"
#include "core/text/durations.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::results {

namespace {

constexpr Hours recentHours{72.0};
constexpr Hours staleHours{7 * 24.0}; ///< after that, the recent rate is out of date
constexpr int mostDecimals = 6;
constexpr double leastShare = 0.5; ///< as a factor of the recent mean power
constexpr double mostShare = 2.0;

using Readings = std::vector<store::StoredReading>;

/// kWh counted from one reading to the next; absent across a reset.
std::optional<double> counted(const MeterReading& from, const MeterReading& to, const Meter& meter)
{
    const double moved = (to.registerReading - from.registerReading).kilowattHours();
    if (!to.event)
        return moved;
    if (*to.event == MeterEvent::rollover && meter.rollsOverAt)
        return moved + meter.rollsOverAt->kilowattHours();
    return std::nullopt;
}

/// kW over the last three days of readings, or of the last two readings; absent with fewer, or
/// across a reset.
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

/// 0.01 kWh needs two decimals.
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
    for (const store::StoredReading& stored : readings)
        decimals = std::max(decimals, stored.inForce.decimals);
    return std::min(decimals, mostDecimals);
}

/// A late reading must be between its neighbours.
void expectBetween(RoundRow& row, const MeterReading& after)
{
    if (!row.lastAt || after.event)
        return;
    row.expected = {row.last, after.registerReading.kilowattHours()};
    row.expectedWhy = Phrase::tr("Between the reading before it and the one after it.");
}

/// If the range passes the register's top, it ends or begins there, and the sentence says so.
void endAtTop(RoundRow& row, const Meter& meter, char sign)
{
    if (!meter.rollsOverAt || row.expected->second < meter.rollsOverAt->kilowattHours())
        return;
    const double top = meter.rollsOverAt->kilowattHours();
    const double beyond = row.expected->second - top;
    if (row.expected->first >= top) { // certainly past it
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

} // namespace

RoundRow meterRow(const Meter& meter, const Readings& all, Instant at, char sign)
{
    const auto after =
        std::find_if(all.begin(), all.end(),
                     [at](const store::StoredReading& stored) { return stored.inForce.at > at; });
    const Readings readings(all.begin(), after);
    RoundRow row;
    row.name = meter.name;
    row.topKnown = meter.rollsOverAt.has_value();
    row.setup = setupAt(meter, at).value_or(meter.setup);
    row.decimals = decimalsOf(meter, all);
    row.week = weekBefore(meter, all, at);
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

void expectFall(RoundRow& row)
{
    constexpr double leastGravity = 0.990; // dry beer; common practice, no source
    if (!row.lastAt || row.last <= leastGravity)
        return;
    row.expected = {leastGravity, row.last};
    row.expectedWhy =
        Phrase::tr("Gravity falls while the beer ferments: not above the last reading.");
}

void expectBand(RoundRow& row, const Snapshot& snapshot, Instant now)
{
    for (const Batch& batch : snapshot.batches) {
        const std::string& sensor =
            batch.beerUses.empty() ? batch.beerSensor : batch.beerUses.back().sensor;
        if (batch.ended || sensor != row.name || !batch.tolerance)
            continue;
        const auto target = targetAt(stagesInForce(batch), now);
        if (!target)
            continue;
        const TemperatureUnit unit = snapshot.settings.temperatureUnit();
        row.expected = {valueIn(*target - *batch.tolerance, unit),
                        valueIn(*target + *batch.tolerance, unit)};
        row.expectedWhy = Phrase::tr("The band of %1 now.").with(batch.name);
    }
}

} // namespace holdband::results
