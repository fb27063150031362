#include "sample-data/maker/rounds.h"

#include "sample-data/maker/noise.h"
#include "sample-data/maker/text.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace holdband::sample {

namespace {

using namespace std::chrono_literals;

constexpr double loopStartKwh = 12.4017;
constexpr double cabinetStartKwh = 143.276;
constexpr double joulesPerKwh = 3.6e6;

struct Round {
    Instant at;
    bool evening;
};

/// Every possible round of the scenario, a few minutes early or late as people are.
std::vector<Round> possibleRounds(const Scenario& scenario)
{
    Noise noise(401);
    std::vector<Round> rounds;
    const auto lastDay = std::chrono::floor<std::chrono::days>(denverWall(scenario.whole.to));
    auto day = std::chrono::ceil<std::chrono::days>(denverWall(scenario.whole.from));
    for (; day < lastDay; day += std::chrono::days{1}) {
        for (const bool evening : {false, true}) {
            const double scatter = noise.normal() * (evening ? 14.0 : 8.0);
            const auto late = std::chrono::minutes{static_cast<int>(std::round(scatter))};
            const WallParts p = parts(day);
            const char* usual = evening ? "18:10" : "07:05";
            const Instant at =
                denver(format("%04d-%02d-%02d %s", p.year, p.month, p.day, usual)) + late;
            rounds.push_back({at, evening});
        }
    }
    return rounds;
}

bool missed(const Scenario& scenario, const Round& round)
{
    const std::string day = denverText(round.at).substr(0, 10);
    return std::any_of(scenario.missed.begin(), scenario.missed.end(), [&](const MissedRound& m) {
        return m.day == day && m.evening == round.evening;
    });
}

/// Twice a day while the arrangement is in use; otherwise on Sunday mornings.
bool due(const std::vector<Span>& inUse, const Round& round)
{
    const std::chrono::weekday weekday{std::chrono::floor<std::chrono::days>(denverWall(round.at))};
    return within(inUse, round.at) || (weekday == std::chrono::Sunday && !round.evening);
}

std::string registerText(double kwh, int decimals)
{
    const double units = std::pow(10.0, decimals);
    return format("%.*f", decimals, std::floor(kwh * units) / units);
}

double loopRegister(const Scenario& scenario, const Trace& trace, Instant at)
{
    const double used = trace.at(at).loopJoules;
    if (at < scenario.powerCut.to)
        return loopStartKwh + used / joulesPerKwh;
    return (used - trace.at(scenario.powerCut.to).loopJoules) / joulesPerKwh;
}

/// Swaps the last digit before the point and the first one after it.
std::string digitsSwapped(std::string kwh)
{
    const std::size_t point = kwh.find('.');
    std::swap(kwh[point - 1], kwh[point + 1]);
    return kwh;
}

void addLoopReading(const Scenario& scenario, const Trace& trace, Instant at,
                    std::vector<MeterReading>& readings)
{
    MeterReading reading{"Loop meter", at, {}, false, {}, {}};
    reading.kwh = registerText(loopRegister(scenario, trace, at), loopMeterDecimals);
    const bool first = std::none_of(readings.begin(), readings.end(), [&](const MeterReading& r) {
        return r.reset || (r.meter == reading.meter && r.at >= scenario.powerCut.to);
    });
    if (at >= scenario.powerCut.to && first) {
        reading.reset = true;
        reading.note = "Power cut in the night; the register has started again.";
    }
    readings.push_back(std::move(reading));
}

void mistypeOne(const Scenario& scenario, std::vector<MeterReading>& readings)
{
    const auto isNext = [&](const MeterReading& r) {
        return r.meter == "Loop meter" && r.at >= scenario.mistyped;
    };
    const auto wrong = std::find_if(readings.begin(), readings.end(), isNext);
    if (wrong == readings.end())
        return;
    const auto next = std::find_if(wrong + 1, readings.end(), isNext);
    if (next != readings.end())
        wrong->was = {digitsSwapped(wrong->kwh), next->at + 5min, "digits swapped"};
}

} // namespace

std::vector<MeterReading> meterReadings(const Scenario& scenario, const Trace& trace)
{
    std::vector<MeterReading> readings;
    for (const Round& round : possibleRounds(scenario)) {
        if (missed(scenario, round))
            continue;
        if (due(scenario.loopRounds, round))
            addLoopReading(scenario, trace, round.at, readings);
        const Instant after = round.at + 1min;
        const double cabinetKwh = cabinetStartKwh + trace.at(after).cabinetJoules / joulesPerKwh;
        if (due(scenario.cabinetRounds, round))
            readings.push_back({"Cabinet meter",
                                after,
                                registerText(cabinetKwh, cabinetMeterDecimals),
                                false,
                                {},
                                {}});
    }
    mistypeOne(scenario, readings);
    return readings;
}

} // namespace holdband::sample
