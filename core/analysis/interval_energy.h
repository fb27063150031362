// The energy of successive intervals (a plug's Wh of each ten minutes, a day's kWh) as a cumulative
// register with a reading at each interval's edge. A missing interval is a gap: no energy is known
// there, and nothing is filled in. Section 4 of the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/meter_curve.h"
#include "core/model/equipment.h"
#include "core/quantity/series.h"

#include <functional>
#include <vector>

namespace holdband::analysis {

/// The instant at the same local time so many days later (or earlier, if negative).
using DayStep = std::function<Instant(Instant at, int days)>;

struct EnergyInterval {
    Span span;
    double kwh = 0.0;

    bool operator==(const EnergyInterval&) const = default;
};

/// One interval for each reading of `energies` (kWh), in order of time. The usual length is the
/// median of the times between readings. Neighbours at most 1.5 of it apart touch; elsewhere an
/// interval has the usual length, and after it (for times at the end: before it) there is a gap.
/// Intervals of a day (23 to 25 h) last from local day to local day, as `dayStep` says. Empty with
/// fewer than two readings, from which no length follows.
std::vector<EnergyInterval> intervalsOf(const Series& energies, IntervalTime time,
                                        const DayStep& dayStep);

/// The register that rises by each interval's energy. Each interval may have been rounded by itself
/// to the finest decimal among them.
MeterRegister registerOf(const std::vector<EnergyInterval>& intervals);

} // namespace holdband::analysis
