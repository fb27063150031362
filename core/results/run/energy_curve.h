// The cumulative energy of a run, and what it may be at least and at most between the readings.
#pragma once

#include "core/analysis/run.h"

#include <optional>
#include <vector>

namespace holdband::results {

/// The batch's cumulative energy since pitching (or since the first register reading after it).
struct EnergyPoint {
    Instant at;
    double kwh = 0.0;          ///< kWh
    std::optional<double> low; ///< absent where unbounded
    std::optional<double> high;
    bool read = false;       ///< a register reading; else a stage's or batch's edge
    bool afterReset = false; ///< the register restarted before this reading
    bool afterHole = false;  ///< not metered between the point before and this one
};

/// What the cumulative energy may be at one instant.
struct EnergyBounds {
    Instant at;
    double low = 0.0;    ///< kWh
    double high = 0.0;   ///< kWh
    bool joined = false; ///< metered between the point before and this one
};

struct EnergyRange {
    std::vector<EnergyBounds> points; ///< where both bounds are known, in order of time
    bool unbounded = false;           ///< somewhere one of them is not
};

/// Whether a register of the setup restarted at 0 during the batch.
bool registerRestarts(const analysis::RunInput& input);

/// Each point is the energy from pitching until then, so its bounds are those of that span.
std::vector<EnergyPoint> energyCurveOf(const analysis::RunInput& input,
                                       const analysis::RunEnergy& energy);

/// Of the curve, and at some places between its points.
EnergyRange energyRangeOf(const analysis::RunInput& input, const analysis::RunEnergy& energy,
                          const std::vector<EnergyPoint>& curve);

} // namespace holdband::results
