#include "sample-data/maker/weather.h"

#include "sample-data/maker/noise.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace holdband::sample {

namespace {

constexpr double winterC = 17.3;
constexpr double springRiseC = 3.8;
constexpr double dailyC = 0.9;
constexpr double warmestHour = 17.0;
constexpr double spellRiseC = 9.5;
constexpr double spellEdgeHours = 40.0;

struct Wave {
    double periodHours;
    double heightC;
};
constexpr std::array<Wave, 3> weather{{{79.0, 0.45}, {137.0, 0.55}, {218.0, 0.6}}};

double wave(double turns)
{
    return std::sin(2.0 * std::numbers::pi * turns);
}

double smooth(double x)
{
    const double t = std::clamp(x, 0.0, 1.0);
    return t * t * (3.0 - 2.0 * t);
}

} // namespace

Room::Room(const Scenario& scenario) : m_whole(scenario.whole), m_spell(scenario.warmSpell)
{
    Noise noise(20260214);
    for (double& phase : m_phases)
        phase = noise.uniform();
}

double Room::spellC(Instant at) const
{
    const double in = hoursBetween(m_spell.from, at) / spellEdgeHours;
    const double out = hoursBetween(at, m_spell.to) / spellEdgeHours;
    return spellRiseC * smooth(std::min(in, out));
}

double Room::temperatureC(Instant at) const
{
    const double hours = hoursBetween(m_whole.from, at);
    const double season = smooth(hours / hoursBetween(m_whole.from, m_whole.to));
    double air = winterC + springRiseC * season + spellC(at);
    air += dailyC * wave((hourOfDay(at) - warmestHour) / 24.0 + 0.25);
    for (std::size_t i = 0; i < weather.size(); ++i)
        air += weather[i].heightC * wave(hours / weather[i].periodHours + m_phases[i]);
    return air;
}

} // namespace holdband::sample
