#include "core/analysis/falling_way.h"

#include <algorithm>
#include <cmath>

namespace holdband::analysis {

std::vector<TemperatureAt> FallingWay::inKelvins(std::span<const TemperatureAt> readings) const
{
    std::vector<TemperatureAt> series = inOrder(readings);
    for (TemperatureAt& each : series)
        each.celsius = sign * (each.celsius - targetC);
    return series;
}

std::optional<FallingWay> FallingWay::of(const ArrivalQuestion& question)
{
    if (!std::isfinite(question.targetC) || !std::isfinite(question.toleranceK) ||
        question.toleranceK < 0.0)
        return std::nullopt;
    FallingWay way;
    way.targetC = question.targetC;
    way.bandK = question.toleranceK;
    way.fall = way.inKelvins(question.readings);
    if (way.fall.empty())
        return std::nullopt;
    if (way.fall.front().celsius < 0.0) {
        way.sign = -1.0;
        way.fall = way.inKelvins(question.readings);
    }
    if (question.floorC && std::isfinite(*question.floorC))
        way.floorK = way.sign * (*question.floorC - question.targetC);
    way.nowH = way.fall.back().hours;
    way.nowK = way.fall.back().celsius;
    way.beginningK = beginningOf(way.fall);
    return way;
}

bool FallingWay::arrived() const
{
    return std::any_of(fall.begin(), fall.end(),
                       [this](const TemperatureAt& reading) { return reading.celsius <= bandK; });
}

} // namespace holdband::analysis
