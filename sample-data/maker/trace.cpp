#include "sample-data/maker/trace.h"

#include "sample-data/maker/cabinet.h"
#include "sample-data/maker/loop.h"
#include "sample-data/maker/weather.h"

namespace holdband::sample {

using namespace std::chrono_literals;

Trace::Trace(const Scenario& scenario) : m_start(scenario.whole.from)
{
    constexpr auto step = 10s;
    const Room room(scenario.weather);
    CoolantLoop loop(scenario);
    Cabinet cabinet(scenario);
    for (Instant at = m_start; at < scenario.whole.to; at += step) {
        const double roomC = room.temperatureC(at);
        if ((at - m_start) % 1min == 0s)
            m_minutes.push_back({roomC, loop.beerC(0), loop.beerC(1), loop.bathC(), cabinet.beerC(),
                                 cabinet.airC(), loop.joulesUsed(), cabinet.joulesUsed()});
        loop.step(at, roomC, 10.0);
        cabinet.step(at, roomC, 10.0);
    }
}

const Moment& Trace::at(Instant instant) const
{
    const auto minute = (instant - m_start) / 1min;
    return m_minutes.at(static_cast<std::size_t>(minute));
}

} // namespace holdband::sample
