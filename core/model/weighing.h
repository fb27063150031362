// The settings for weighing two arrangements against each other: how much each criterion counts,
// and the case to compute. Stored in the logbook. No Qt.
#pragma once

#include "core/quantity/instant.h"
#include "core/quantity/temperature.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace holdband {

struct Weighing {
    /// Criterion → 0 … mostWeight, dimensionless. A criterion that is not listed has usualWeight;
    /// one that is neither measured nor usual was added by the user.
    std::map<std::string, double> weights;
    std::optional<TemperatureDifference> referenceLift; ///< absent: the mean of both
    std::optional<Hours> referenceHours;                ///< absent: the mean of both
    std::optional<double> batchesPerYear;               ///< > 0; absent: no figures per year
    std::optional<double> otherPricePerKwh;             ///< a second price to try
    /// Length from pitching until the heat of fermentation no longer counts; absent: 72 h.
    std::optional<Hours> quietAfter;

    bool operator==(const Weighing&) const = default;
};

inline constexpr double usualWeight = 1.0;
inline constexpr double mostWeight = 5.0;
inline constexpr Hours usualQuietAfter{72.0};

/// Criteria that can't be measured and are rated 1 … 5, more is better.
inline constexpr std::array<std::string_view, 5> usualCriteria{"build effort", "ease of use",
                                                               "cleaning", "noise", "space"};

} // namespace holdband
