// What a run used on its days: the mean over the whole ones, the least and the most.
#pragma once

#include "core/analysis/run.h"
#include "core/text/zone.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

struct DailyEnergy {
    /// Indices into RunEnergy::days, in order: local calendar days that lie within the run and were
    /// metered from midnight to midnight.
    std::vector<std::size_t> wholeDays;
    double meanKwh = 0.0;  ///< kWh
    std::size_t least = 0; ///< indices into RunEnergy::days
    std::size_t most = 0;
};

/// Absent without a whole day.
std::optional<DailyEnergy> dailyEnergyOf(const analysis::RunEnergy& energy, const Zone& zone);

/// The day of an entry of RunEnergy::days for people: "7 Mar 2026".
std::string dayText(const analysis::SpanEnergy& day, const Zone& zone);

} // namespace holdband::results
