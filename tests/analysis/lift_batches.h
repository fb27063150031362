// Batches for the tests of lines by batch.
#pragma once

#include "core/analysis/lift_interval.h"

#include <array>

namespace holdband::test {

/// Points of 12 h: lift in K, power in W.
inline std::vector<analysis::BatchPoint> batch(const std::string& name,
                                               std::vector<std::array<double, 2>> points)
{
    std::vector<analysis::BatchPoint> all;
    for (const auto& [lift, watts] : points)
        all.push_back({{lift, watts, 12.0}, {name}});
    return all;
}

inline std::vector<analysis::BatchPoint>
together(std::vector<std::vector<analysis::BatchPoint>> batches)
{
    std::vector<analysis::BatchPoint> all;
    for (const auto& each : batches)
        all.insert(all.end(), each.begin(), each.end());
    return all;
}

} // namespace holdband::test
