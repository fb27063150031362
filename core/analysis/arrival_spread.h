// The moderated spread of a few errors, and the hours that a few past hours promise: the head of
// section 8 of the method in DEVELOPERS.md. All logarithms are natural. No Qt, no SQL.
#pragma once

#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <cstddef>
#include <span>

namespace holdband::analysis {

/// Hours with their 90 % interval.
struct HoursRange {
    double middle = 0.0; ///< hours
    double low = 0.0;    ///< hours
    double high = 0.0;   ///< hours
};

/// The spread of n errors, where an assumed SD weighs as much as four degrees of freedom (after
/// Smyth 2004; the four are ours).
struct ModeratedSpread {
    double sd = 0.0;      ///< dimensionless: of a logarithm
    double freedom = 4.0; ///< degrees of freedom
};

/// `assumedSd` and the errors are of logarithms; `squares` is the sum of the squared errors.
inline ModeratedSpread moderatedSpread(double assumedSd, double squares, std::size_t errors)
{
    if (errors == 0)
        return {assumedSd, 4.0};
    const double freedom = 3.0 + static_cast<double>(errors);
    return {std::sqrt((4.0 * assumedSd * assumedSd + squares) / freedom), freedom};
}

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
    const auto [sd, freedom] = moderatedSpread(assumedSd, squares, logarithms.size());
    const double half = boost::math::quantile(boost::math::students_t(freedom), 0.95) * sd *
                        std::sqrt(1.0 + 1.0 / count);
    return {std::exp(mean), std::exp(mean - half), std::exp(mean + half)};
}

} // namespace holdband::analysis
