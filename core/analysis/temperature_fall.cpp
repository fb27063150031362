#include "core/analysis/temperature_fall.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace holdband::analysis {

namespace {

constexpr std::size_t readingsOfBeginning = 3;
constexpr double belowBeginningK = 0.01; // so that noise at the beginning is not a passage
constexpr double blockEdgeSlack = 1e-9;  // of a block: hours are seldom whole in binary

std::size_t indexOfBeginning(std::span<const TemperatureAt> fall)
{
    const auto first = fall.first(std::min(readingsOfBeginning, fall.size()));
    const auto greatest = std::max_element(
        first.begin(), first.end(),
        [](const TemperatureAt& a, const TemperatureAt& b) { return a.celsius < b.celsius; });
    return static_cast<std::size_t>(greatest - first.begin());
}

double passageHour(const TemperatureAt& before, const TemperatureAt& after, double celsius)
{
    const double share = (before.celsius - celsius) / (before.celsius - after.celsius);
    return before.hours + share * (after.hours - before.hours);
}

} // namespace

std::vector<TemperatureAt> inOrder(std::span<const TemperatureAt> readings)
{
    std::vector<TemperatureAt> kept;
    for (const TemperatureAt& each : readings) {
        if (std::isfinite(each.hours) && std::isfinite(each.celsius) && each.hours >= 0.0)
            kept.push_back(each);
    }
    std::stable_sort(kept.begin(), kept.end(), [](const TemperatureAt& a, const TemperatureAt& b) {
        return a.hours < b.hours;
    });
    return kept;
}

double beginningOf(std::span<const TemperatureAt> fall)
{
    return fall[indexOfBeginning(fall)].celsius;
}

std::optional<double> firstAtOrBelow(std::span<const TemperatureAt> fall, double celsius)
{
    const std::size_t start = indexOfBeginning(fall);
    for (std::size_t i = start; i < fall.size(); ++i) {
        if (fall[i].celsius > celsius)
            continue;
        return i == start ? fall[i].hours : passageHour(fall[i - 1], fall[i], celsius);
    }
    return std::nullopt;
}

std::optional<double> hoursFromTo(std::span<const TemperatureAt> fall, double from, double to)
{
    const double beginning = beginningOf(fall) - belowBeginningK;
    const double begin = std::min(from, beginning);
    const auto left = firstAtOrBelow(fall, begin);
    const auto came = firstAtOrBelow(fall, to);
    if (!left || !came || begin <= to)
        return std::nullopt;
    if (begin == from)
        return *came - *left;
    const auto quarter = firstAtOrBelow(fall, begin - (begin - to) / 4.0);
    const double hoursOfOneK = (*quarter - *left) / ((begin - to) / 4.0);
    return *came - *left + (from - begin) * hoursOfOneK;
}

std::vector<TemperatureAt> blockMeans(std::span<const TemperatureAt> readings, double fromHours,
                                      double toHours, int count)
{
    struct Sum {
        TemperatureAt sum;
        double readings = 0.0;
    };
    std::vector<Sum> sums(static_cast<std::size_t>(count));
    const double length = (toHours - fromHours) / count;
    for (const TemperatureAt& each : readings) {
        const double block = std::floor((each.hours - fromHours) / length + blockEdgeSlack);
        if (!(block >= 0.0) || each.hours > toHours)
            continue;
        Sum& into = sums[static_cast<std::size_t>(std::min(block, count - 1.0))];
        into.sum.hours += each.hours;
        into.sum.celsius += each.celsius;
        into.readings += 1.0;
    }
    std::vector<TemperatureAt> means;
    for (const auto& [sum, readingsIn] : sums) {
        if (readingsIn > 0.0)
            means.push_back({sum.hours / readingsIn, sum.celsius / readingsIn});
    }
    return means;
}

} // namespace holdband::analysis
