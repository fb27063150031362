// How far a forecast may miss: the spread of past errors, moderated by an assumed one because there
// are few of them. Section 8.1 of the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include <cstddef>

namespace holdband::analysis {

/// The standard deviations that are assumed before any error is known, of natural logarithms (about
/// fractions). Tuned on simulated setups.
struct AssumedSpread {
    double total;         ///< of a batch's energy
    double part;          ///< of the energy before the crash, or in it
    double crashDuration; ///< of the hours to cool down
};

inline constexpr AssumedSpread assumedAlone{0.05, 0.08, 0.15};
/// Where another batch ran on the setup meanwhile.
inline constexpr AssumedSpread assumedShared{0.12, 0.15, 0.25};

inline constexpr const AssumedSpread& assumedSpreadOf(bool shared)
{
    return shared ? assumedShared : assumedAlone;
}

/// A variance and its degrees of freedom.
struct ModeratedSpread {
    double variance = 0.0; ///< of natural logarithms
    double freedom = 0.0;
    std::size_t errors = 0; ///< on which it rests; with 0 and 1 it is the assumption alone
};

/// s² = (4c² + Q) / (3 + n) with 3 + n degrees of freedom; without errors c² with 4. The assumption
/// weighs as much as four degrees of freedom (Smyth 2004).
ModeratedSpread moderatedSpread(double assumedVariance, double squares, std::size_t errors);

/// Student's quantile of a forecast's 90 % interval: t(0.95, ν).
double forecastQuantile(const ModeratedSpread& spread);

} // namespace holdband::analysis
