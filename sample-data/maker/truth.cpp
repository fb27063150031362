#include "sample-data/maker/truth.h"

#include "sample-data/maker/noise.h"
#include "sample-data/maker/summer.h"
#include "sample-data/maker/text.h"
#include "sample-data/maker/trace.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdint>

namespace holdband::sample {

namespace {

using namespace std::chrono_literals;

constexpr double kelvinOfBand = 3.0 / 1.8; // the plan's tolerance, 3 °F
constexpr double joulesOfKwh = 3.6e6;
constexpr int repeats = 20;

Scenario aloneOnItsSetup(const Batch& batch, const Weather& weather)
{
    Scenario s;
    s.whole = {batch.filled - 48h, batch.ended + 1min};
    s.weather = weather;
    s.batches = {batch};
    if (batch.vessel != Vessel::cabinet)
        s.bathOn = {{batch.filled - 24h, batch.ended + 1min}};
    return s;
}

Instant crashOf(const Batch& batch)
{
    double hours = 0.0;
    for (const Stage& stage : batch.schedule)
        hours += stage.hours;
    return batch.pitched + std::chrono::minutes{std::lround(hours * 60.0)};
}

/// What one vessel's beer and its setup's meter did, from a trace.
class Seen {
public:
    Seen(const Trace& trace, Vessel vessel) : m_trace(trace), m_vessel(vessel) {}

    double beerC(Instant at) const
    {
        const Moment& now = m_trace.at(at);
        return m_vessel == Vessel::cabinet ? now.cabinetBeerC
               : m_vessel == Vessel::loop1 ? now.loopBeer1C
                                           : now.loopBeer2C;
    }
    double kwh(const Span& span) const { return kwhUntil(span.to) - kwhUntil(span.from); }
    double liftK(const Span& span) const
    {
        return mean(span,
                    [&](Instant at) { return std::max(0.0, m_trace.at(at).roomC - beerC(at)); });
    }
    double roomC(const Span& span) const
    {
        return mean(span, [&](Instant at) { return m_trace.at(at).roomC; });
    }
    double swingC(const Span& span) const;
    std::optional<double> hoursUntil(double celsius, const Span& span) const
    {
        for (Instant at = span.from; at < span.to; at += 1min)
            if (beerC(at) <= celsius)
                return hoursBetween(span.from, at);
        return std::nullopt;
    }

    double hoursAbove(double celsius, const Span& span) const
    {
        int minutes = 0;
        for (Instant at = span.from; at < span.to; at += 1min)
            minutes += beerC(at) > celsius ? 1 : 0;
        return minutes / 60.0;
    }

private:
    double kwhUntil(Instant at) const
    {
        const Moment& now = m_trace.at(at);
        return (m_vessel == Vessel::cabinet ? now.cabinetJoules : now.loopJoules) / joulesOfKwh;
    }
    template <typename Value>
    static double mean(const Span& span, Value value)
    {
        double sum = 0.0;
        int minutes = 0;
        for (Instant at = span.from; at < span.to; at += 1min, ++minutes)
            sum += value(at);
        return sum / minutes;
    }

    const Trace& m_trace;
    Vessel m_vessel;
};

double Seen::swingC(const Span& span) const
{
    double sum = 0.0;
    int days = 0;
    for (Instant day = span.from; day + 24h <= span.to; day += 24h, ++days) {
        double lowest = m_trace.at(day).roomC;
        double highest = lowest;
        for (Instant at = day; at < day + 24h; at += 1min) {
            lowest = std::min(lowest, m_trace.at(at).roomC);
            highest = std::max(highest, m_trace.at(at).roomC);
        }
        sum += highest - lowest;
    }
    return sum / days;
}

/// The sample's plan "Ale" on one setup. The gravities are the usual ones of its ales.
Batch plannedAle(Vessel vessel, Instant pitched)
{
    Batch b;
    b.name = "Ale";
    b.vessel = vessel;
    b.filled = pitched - 50min;
    b.pitched = pitched;
    b.fillF = 68;
    b.originalGravity = 1.052;
    b.finalGravity = 1.011;
    b.halfwayHours = 44;
    b.paceHours = 9;
    b.schedule = aleSchedule(69, 72, 72);
    b.ended = crashOf(b) + 72h;
    b.emptied = b.ended + 40min;
    return b;
}

std::string rowOf(const char* name, const Batch& batch, const Weather& weather)
{
    const TrueBatch t = trueBatch(batch, weather);
    const std::string hours = t.crashHours ? format("%.2f", *t.crashHours) : std::string();
    return format("%s,%s,%s,%.3f,%.3f,%.3f,%.3f,%.4f,%.4f,%s,%.2f\n", name,
                  batch.vessel == Vessel::cabinet ? "Cabinet" : "Loop",
                  denverText(batch.pitched).c_str(), t.roomMeanC, t.roomSwingC, t.liftBeforeK,
                  t.liftCrashK, t.kwhBefore, t.kwhCrash, hours.c_str(), t.crashAboveHours);
}

/// Another July's weather, another week of it, and yeast that is a little faster or slower.
std::string repeatRows(int number)
{
    Noise noise(7000 + static_cast<std::uint64_t>(number));
    Weather weather = springAndSummer().weather;
    weather.start = 8000 + static_cast<std::uint64_t>(number);
    const Instant pitched = denver("2026-07-01 18:00") + std::chrono::days{7} * (number % 3);
    const double halfwayHours = 44 + 2.5 * noise.normal();
    const double paceHours = 9 + 0.5 * noise.normal();
    const double fillF = 68 + 1.5 * noise.normal();
    std::string rows;
    for (const Vessel vessel : {Vessel::loop1, Vessel::cabinet}) {
        Batch ale = plannedAle(vessel, pitched);
        ale.halfwayHours = halfwayHours;
        ale.paceHours = paceHours;
        ale.fillF = fillF;
        rows += rowOf(format("repeat %d", number).c_str(), ale, weather);
    }
    return rows;
}

} // namespace

TrueBatch trueBatch(const Batch& batch, const Weather& weather)
{
    const Scenario scenario = aloneOnItsSetup(batch, weather);
    const Trace trace(scenario);
    const Seen seen(trace, batch.vessel);
    const Span before{batch.pitched, crashOf(batch)};
    const Span crash{before.to, batch.ended};
    const Span whole{before.from, crash.to};
    const double edgeC = celsius(batch.schedule.back().targetF) + kelvinOfBand;
    TrueBatch truth;
    truth.roomMeanC = seen.roomC(whole);
    truth.roomSwingC = seen.swingC(whole);
    truth.liftBeforeK = seen.liftK(before);
    truth.liftCrashK = seen.liftK(crash);
    truth.kwhBefore = seen.kwh(before);
    truth.kwhCrash = seen.kwh(crash);
    truth.crashHours = seen.hoursUntil(edgeC, crash);
    if (truth.crashHours)
        truth.crashAboveHours = seen.hoursAbove(edgeC, crash) - *truth.crashHours;
    return truth;
}

std::string truthTable()
{
    const Weather weather = springAndSummer().weather;
    std::string rows = "weather,setup,pitched,room_mean_c,room_swing_c,lift_before_k,lift_crash_k,"
                       "kwh_before,kwh_crash,crash_h,crash_above_h\n";
    for (const Vessel vessel : {Vessel::loop1, Vessel::cabinet})
        rows += rowOf("July 2026", plannedAle(vessel, denver("2026-07-01 18:00")), weather);
    for (int number = 1; number <= repeats; ++number)
        rows += repeatRows(number);
    return rows;
}

} // namespace holdband::sample
