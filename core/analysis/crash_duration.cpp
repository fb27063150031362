#include "core/analysis/crash_duration.h"

#include "core/analysis/arrival_spread.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace holdband::analysis {

namespace {

constexpr std::size_t firstReadings = 3; // a crash begins at the greatest of them
constexpr double belowStartK = 0.01;
constexpr double firstQuarter = 0.25;

/// Where a crash began: the greatest of its first readings.
std::size_t greatestAtStart(const Track& beer)
{
    const auto end = beer.value.begin() +
                     static_cast<std::ptrdiff_t>(std::min(firstReadings, beer.value.size()));
    return static_cast<std::size_t>(std::max_element(beer.value.begin(), end) - beer.value.begin());
}

/// The hours of a crash that began below `fromCelsius`, at `began` or a little after `beganMs`.
std::optional<double> extendedHours(const Track& beer, double beganMs, double began,
                                    double fromCelsius, double toCelsius)
{
    const double top = began - belowStartK;
    const double way = top - toCelsius;
    if (!(way > 0.0))
        return std::nullopt;
    const auto start = firstAtOrBelow(beer, top, beganMs);
    const auto quarter = firstAtOrBelow(beer, top - firstQuarter * way, beganMs);
    const auto arrived = firstAtOrBelow(beer, toCelsius, beganMs);
    if (!start || !quarter || !arrived)
        return std::nullopt;
    const double msPerK = (*quarter - *start) / (firstQuarter * way);
    return (*arrived - *start + (fromCelsius - top) * msPerK) / msPerHour;
}

} // namespace

std::optional<double> hoursToCool(const Track& beer, double fromCelsius, double toCelsius)
{
    if (beer.empty() || !(fromCelsius > toCelsius))
        return std::nullopt;
    const std::size_t greatest = greatestAtStart(beer);
    const double beganMs = beer.ms[greatest];
    const double began = beer.value[greatest];
    if (began < fromCelsius)
        return extendedHours(beer, beganMs, began, fromCelsius, toCelsius);
    const auto start = firstAtOrBelow(beer, fromCelsius, beganMs);
    const auto arrived = firstAtOrBelow(beer, toCelsius, beganMs);
    if (!start || !arrived)
        return std::nullopt;
    return (*arrived - *start) / msPerHour;
}

std::optional<CrashDuration> crashDuration(std::span<const PastCrash> past, const CrashPlan& plan,
                                           bool shared)
{
    std::vector<double> logs;
    for (const PastCrash& crash : past) {
        const auto hours = hoursToCool(crash.beer, plan.fromCelsius, plan.toCelsius);
        if (hours && *hours > 0.0)
            logs.push_back(std::log(*hours * plan.litres / crash.litres));
    }
    if (logs.empty())
        return std::nullopt;
    const HoursRange hours = oneMoreOf(logs, assumedSpreadOf(shared).crashDuration);
    return CrashDuration{hours.middle, hours.low, hours.high, hours.spread, logs.size()};
}

namespace {

/// The hours after which a crash had passed a temperature, of the `all` that it took between the
/// plan's. What is missing of a crash that began lower is a straight line.
double hoursToPass(const PastCrash& crash, const CrashPlan& plan, double all, double celsius)
{
    const double began = crash.beer.value[greatestAtStart(crash.beer)];
    if (began >= plan.fromCelsius)
        return hoursToCool(crash.beer, plan.fromCelsius, celsius).value_or(0.0);
    const double top = began - belowStartK;
    const double seen = hoursToCool(crash.beer, top, plan.toCelsius).value_or(all);
    if (celsius >= top)
        return along(plan.fromCelsius, 0.0, top, all - seen, celsius);
    return all - seen + hoursToCool(crash.beer, top, celsius).value_or(0.0);
}

} // namespace

std::vector<double> crashShape(std::span<const PastCrash> past, const CrashPlan& plan,
                               std::size_t steps)
{
    std::vector<double> shape(steps + 1, 0.0);
    double crashes = 0.0;
    for (const PastCrash& crash : past) {
        const auto all = hoursToCool(crash.beer, plan.fromCelsius, plan.toCelsius);
        if (!all || !(*all > 0.0))
            continue;
        ++crashes;
        double passed = 0.0;
        for (std::size_t i = 1; i <= steps; ++i) {
            const double way = static_cast<double>(i) / static_cast<double>(steps);
            const double celsius = along(0.0, plan.fromCelsius, 1.0, plan.toCelsius, way);
            passed = std::clamp(hoursToPass(crash, plan, *all, celsius) / *all, passed, 1.0);
            shape[i] += passed;
        }
    }
    if (crashes == 0.0)
        return {};
    for (double& share : shape)
        share /= crashes;
    return shape;
}

} // namespace holdband::analysis
