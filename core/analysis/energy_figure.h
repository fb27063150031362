// An amount of energy with the bounds that come from reading a register, and the time it covers. No
// Qt, no SQL.
#pragma once

#include "core/quantity/instant.h"

#include <limits>
#include <vector>

namespace holdband::analysis {

/// The upper bound (kWh) of an energy that has none.
inline constexpr double unbounded = std::numeric_limits<double>::infinity();

/// kWh over the metered part of a span. An unbounded `high` is infinity; a figure without known
/// bounds (a power log) has low = −infinity too.
struct EnergyFigure {
    double kwh = 0.0;          ///< kWh
    double low = 0.0;          ///< kWh, at least
    double high = 0.0;         ///< kWh, at most
    std::vector<Span> metered; ///< increasing, not overlapping, not touching

    bool any() const { return !metered.empty(); }
    double meteredMs() const;
    bool lowKnown() const { return low > -unbounded; }
    bool highKnown() const { return high < unbounded; }

    /// Adds the energy of another span of the same source.
    void append(const EnergyFigure& next);
    /// The figure × a share (0 … 1).
    EnergyFigure times(double share) const;
};

/// Unites spans that touch or overlap; the result is increasing.
std::vector<Span> unite(std::vector<Span> spans);

/// The instants that are in both.
std::vector<Span> intersect(const std::vector<Span>& a, const std::vector<Span>& b);

double totalMs(const std::vector<Span>& spans);

} // namespace holdband::analysis
