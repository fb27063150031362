// The energy a run used per day: the mean over complete days, the minimum and the maximum.
#pragma once

#include "core/analysis/run.h"
#include "core/text/zone.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

struct DailyEnergy {
    /// Indices into RunEnergy::days, in order: local calendar days that are inside the run and were
    /// metered from midnight to midnight.
    std::vector<std::size_t> wholeDays;
    double meanKwh = 0.0;  ///< kWh
    std::size_t least = 0; ///< indices into RunEnergy::days
    std::size_t most = 0;
};

/// Absent without a complete day.
std::optional<DailyEnergy> dailyEnergyOf(const analysis::RunEnergy& energy, const Zone& zone);

/// The day of an entry of RunEnergy::days as text: "7 Mar 2026".
std::string dayText(const analysis::SpanEnergy& day, const Zone& zone);

} // namespace holdband::results
