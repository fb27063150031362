// The hours that a few past hours promise: the head of section 8 of the method in DEVELOPERS.md.
// All logarithms are natural. No Qt, no SQL.
#pragma once

#include "core/analysis/forecast_spread.h"

#include <cmath>
#include <span>

namespace holdband::analysis {

/// Hours with their 90 % interval.
struct HoursRange {
    double middle = 0.0; ///< hours
    double low = 0.0;    ///< hours
    double high = 0.0;   ///< hours
    ModeratedSpread spread;
};

/// One more value like those whose logarithms are given (of hours, at least one).
inline HoursRange oneMoreOf(std::span<const double> logarithms, double assumedSd)
{
    const auto count = static_cast<double>(logarithms.size());
    double mean = 0.0;
    for (const double each : logarithms)
        mean += each / count;
    double squares = 0.0;
    for (const double each : logarithms)
        squares += (each - mean) * (each - mean);
    const ModeratedSpread spread =
        moderatedSpread(assumedSd * assumedSd, squares, logarithms.size());
    const double half = forecastQuantile(spread) * std::sqrt(spread.variance * (1.0 + 1.0 / count));
    return {std::exp(mean), std::exp(mean - half), std::exp(mean + half), spread};
}

} // namespace holdband::analysis
