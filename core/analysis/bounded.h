// Interval arithmetic on bounded figures, and the rule for who is ahead. No Qt, no SQL.
#pragma once

#include "core/analysis/comparison.h"

namespace holdband::analysis {

Bounded exactly(double value);
Bounded fromEnergy(const EnergyFigure& energy);
/// value ± uncertainty, not below `floor`; unbounded where the uncertainty is unknown.
Bounded withUncertainty(double value, std::optional<double> doubt, double floor);
Bounded scaled(const Bounded& figure, double factor);

std::optional<Bounded> differenceOf(const std::optional<Bounded>& a,
                                    const std::optional<Bounded>& b);
/// Absent where b is 0; a bound is absent where it is unknown or has no limit, for example where b
/// may be 0 or below.
std::optional<Bounded> ratioOf(const std::optional<Bounded>& a, const std::optional<Bounded>& b);
/// The size of a figure whose sign doesn't matter.
Bounded sizeOf(const Bounded& figure);

/// Ahead only where the bounds do not overlap; absent where bounds are unknown.
std::optional<Ahead> whoIsAhead(const std::optional<Bounded>& a, const std::optional<Bounded>& b,
                                Better better);

} // namespace holdband::analysis
