#include "core/analysis/calibration.h"

#include <algorithm>

namespace holdband::analysis {

void applyOffsets(Series& series, const std::vector<Offset>& offsets)
{
    for (std::size_t k = 0; k < offsets.size(); ++k) {
        const auto from = std::lower_bound(series.at.begin(), series.at.end(), offsets[k].from);
        const auto to = k + 1 < offsets.size()
                            ? std::lower_bound(from, series.at.end(), offsets[k + 1].from)
                            : series.at.end();
        for (auto i = from - series.at.begin(); i < to - series.at.begin(); ++i)
            series.value[static_cast<std::size_t>(i)] += offsets[k].add.kelvins();
    }
}

void applyExclusions(Series& series, const std::vector<Span>& excluded)
{
    if (excluded.empty())
        return;
    Series stored;
    const auto isExcluded = [&](Instant at) {
        return std::any_of(excluded.begin(), excluded.end(),
                           [&](const Span& span) { return at >= span.start && at <= span.end; });
    };
    const auto holdsExcluded = [&](Instant from, Instant to) {
        return std::any_of(excluded.begin(), excluded.end(),
                           [&](const Span& span) { return span.start < to && span.end > from; });
    };
    for (std::size_t i = 0; i < series.size(); ++i) {
        if (isExcluded(series.at[i]))
            continue;
        if (!stored.empty() && holdsExcluded(stored.at.back(), series.at[i]))
            stored.breaks.push_back(stored.size());
        stored.at.push_back(series.at[i]);
        stored.value.push_back(series.value[i]);
    }
    series = std::move(stored);
}

std::optional<TemperatureDifference> accuracyOver(const Sensor& sensor, Span span)
{
    std::optional<TemperatureDifference> largest;
    const auto take = [&](std::optional<TemperatureDifference> doubt) {
        if (!doubt)
            return false;
        largest = largest ? std::max(*largest, *doubt) : *doubt;
        return true;
    };
    const auto& offsets = sensor.offsets;
    if ((offsets.empty() || offsets.front().from > span.start) && !take(sensor.accuracy))
        return std::nullopt;
    for (std::size_t k = 0; k < offsets.size(); ++k) {
        const Instant until = k + 1 < offsets.size() ? offsets[k + 1].from : Instant::max();
        const bool inForce = offsets[k].from <= span.end && until > span.start;
        if (inForce && !take(offsets[k].doubt ? offsets[k].doubt : sensor.accuracy))
            return std::nullopt;
    }
    return largest;
}

} // namespace holdband::analysis
