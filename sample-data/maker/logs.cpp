#include "sample-data/maker/logs.h"

#include "sample-data/maker/beer.h"
#include "sample-data/maker/noise.h"
#include "sample-data/maker/text.h"

#include <algorithm>
#include <cmath>

namespace holdband::sample {

namespace {

using namespace std::chrono_literals;

constexpr auto interval = 5min;
constexpr double sensorNoiseC = 0.03;
constexpr double missingShare = 0.0006;

/// A sensor: its error, its noise, its resolution of 1/16 °C, and sometimes no value at all.
class Sensor {
public:
    Sensor(std::uint64_t start, double errorC) : m_noise(start), m_errorC(errorC) {}

    double readC(double trueC)
    {
        const double seen = trueC + m_errorC + sensorNoiseC * m_noise.normal();
        return std::round(seen * 16.0) / 16.0;
    }
    bool silent() { return m_noise.uniform() < missingShare; }

private:
    Noise m_noise;
    double m_errorC;
};

std::string usTime(Instant at)
{
    const WallParts p = parts(denverWall(at));
    const int hour = p.hour % 12 == 0 ? 12 : p.hour % 12;
    return format("%02d/%02d/%04d %02d:%02d %s", p.month, p.day, p.year, hour, p.minute,
                  p.hour < 12 ? "AM" : "PM");
}

std::string utcTime(Instant at)
{
    const WallParts p = parts(at);
    return format("%04d-%02d-%02dT%02d:%02d:%02dZ", p.year, p.month, p.day, p.hour, p.minute,
                  p.second);
}

std::string dottedDateAndTime(Instant at)
{
    const WallParts p = parts(denverWall(at));
    return format("%02d.%02d.%04d;%02d:%02d:%02d", p.day, p.month, p.year, p.hour, p.minute,
                  p.second);
}

std::string tenthF(double celsiusRead)
{
    return format("%.1f", fahrenheit(celsiusRead));
}

std::string decimalComma(double value)
{
    std::string text = format("%.2f", value);
    std::replace(text.begin(), text.end(), '.', ',');
    return text;
}

std::string loopBeer(const Scenario& scenario, Vessel vessel, Sensor& sensor, Instant at,
                     double trueC)
{
    const bool missing = sensor.silent();
    const double read = sensor.readC(trueC);
    if (!batchIn(scenario, vessel, at))
        return {};
    return missing ? "--" : tenthF(read);
}

template <typename Line>
std::string rows(const std::vector<Span>& spans, std::chrono::seconds phase, Line line)
{
    std::string text;
    for (const Span& span : spans)
        for (Instant at = span.from + phase; at < span.to; at += interval)
            text += line(at);
    return text;
}

} // namespace

std::string loopLog(const Scenario& scenario, const Trace& trace)
{
    Sensor beer1(101, 0.12);
    Sensor beer2(102, -0.3);
    Sensor coolant(103, -0.1);
    const auto line = [&](Instant at) -> std::string {
        if (scenario.loopLogGap.contains(at) || scenario.powerCut.contains(at))
            return {};
        const Moment& now = trace.at(at);
        const std::string first = loopBeer(scenario, Vessel::loop1, beer1, at, now.loopBeer1C);
        const std::string second = loopBeer(scenario, Vessel::loop2, beer2, at, now.loopBeer2C);
        const std::string bath = coolant.silent() ? "--" : tenthF(coolant.readC(now.bathC));
        return usTime(at) + "," + first + "," + second + "," + bath + "\n";
    };
    return "Logged,Vessel 1 beer (F),Vessel 2 beer (F),Coolant (F)\n" +
           rows(scenario.loopLog, 0s, line);
}

std::string cabinetLog(const Scenario& scenario, const Trace& trace)
{
    Sensor beer(201, 0.05);
    Sensor air(202, -0.08);
    const auto line = [&](Instant at) -> std::string {
        const Moment& now = trace.at(at);
        const bool out = scenario.probeOut.contains(at);
        const double atProbe = out ? now.roomC : now.cabinetBeerC;
        const std::string first = beer.silent() ? "" : decimalComma(beer.readC(atProbe));
        const std::string second = air.silent() ? "" : decimalComma(air.readC(now.cabinetAirC));
        return dottedDateAndTime(at) + ";" + first + ";" + second + "\r\n";
    };
    return "Cabinet logger, made-up data\r\n"
           "Interval;300 s\r\n"
           "\r\n"
           "Date;Time;Beer (°C);Chamber air (°C)\r\n" +
           rows(scenario.cabinetLog, 17s, line);
}

std::string roomLog(const Scenario& scenario, const Trace& trace)
{
    Sensor room(301, 0.04);
    const auto line = [&](Instant at) -> std::string {
        const bool missing = room.silent();
        const double read = room.readC(trace.at(at).roomC);
        return utcTime(at) + "\t" + (missing ? "" : tenthF(read)) + "\n";
    };
    const Span logged{scenario.cabinetLog.front().from, scenario.cabinetLog.back().to};
    return "time\troom F\n" + rows({logged}, 120s, line);
}

} // namespace holdband::sample
