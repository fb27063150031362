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
constexpr double garageSummitC = 25.0; // of the year's wave: the mean of a day in late July
constexpr double garageYearC = 10.4;
constexpr double garageDailyC = 5.0;
constexpr double hoursOfAYear = 8766.0;
constexpr double movingHours = 2.0; // until the room's sensor shows the garage
constexpr Instant summit =
    std::chrono::sys_days{std::chrono::July / 20 / 2026} + std::chrono::hours{18};
constexpr double warmestHour = 17.0;
constexpr double spellEdgeHours = 40.0;

struct Wave {
    double periodHours;
    double heightC;
};
constexpr std::array<Wave, 3> slowWaves{{{79.0, 0.45}, {137.0, 0.55}, {218.0, 0.6}}};

double wave(double turns)
{
    return std::sin(2.0 * std::numbers::pi * turns);
}

double smooth(double x)
{
    const double t = std::clamp(x, 0.0, 1.0);
    return t * t * (3.0 - 2.0 * t);
}

/// The mean of a day in the garage.
double garageC(Instant at)
{
    return garageSummitC -
           garageYearC * (1.0 - wave(hoursBetween(summit, at) / hoursOfAYear + 0.25));
}

} // namespace

Room::Room(const Weather& weather) : m_weather(weather)
{
    Noise noise(weather.start);
    for (double& phase : m_phases)
        phase = noise.uniform();
}

double Room::spellsC(Instant at) const
{
    double rise = 0.0;
    for (const WarmSpell& spell : m_weather.warmSpells) {
        const double in = hoursBetween(spell.span.from, at) / spellEdgeHours;
        const double out = hoursBetween(at, spell.span.to) / spellEdgeHours;
        rise += spell.riseC * smooth(std::min(in, out));
    }
    return rise;
}

double Room::temperatureC(Instant at) const
{
    const double hours = hoursBetween(m_weather.spring.from, at);
    const double season = smooth(hours / hoursBetween(m_weather.spring.from, m_weather.spring.to));
    const double moved = smooth(hoursBetween(m_weather.movedToGarage, at) / movingHours);
    double air = winterC + springRiseC * season;
    air += moved * (garageC(at) - air) + spellsC(at);
    const double daily = dailyC + moved * (garageDailyC - dailyC);
    air += daily * wave((hourOfDay(at) - warmestHour) / 24.0 + 0.25);
    for (std::size_t i = 0; i < slowWaves.size(); ++i)
        air += slowWaves[i].heightC * wave(hours / slowWaves[i].periodHours + m_phases[i]);
    return air;
}

} // namespace holdband::sample
