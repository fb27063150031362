// What a person says when two arrangements are weighed against each other: how much each criterion
// counts, and the case for which they are asked. Kept in the logbook. No Qt.
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
    /// Criterion → 0 … mostWeight, dimensionless. One that is not listed counts usualWeight; one
    /// that is neither measured nor usual is the user's own.
    std::map<std::string, double> weights;
    std::optional<TemperatureDifference> referenceLift; ///< absent: the mean of both
    std::optional<Hours> referenceHours;                ///< absent: the mean of both
    std::optional<double> batchesPerYear;               ///< > 0; absent: nothing is said of years
    std::optional<double> otherPricePerKwh;             ///< a second price to try
    /// From pitching until fermentation's own heat no longer counts; absent: 72 h.
    std::optional<Hours> quietAfter;

    bool operator==(const Weighing&) const = default;
};

inline constexpr double usualWeight = 1.0;
inline constexpr double mostWeight = 5.0;
inline constexpr Hours usualQuietAfter{72.0};

/// What cannot be measured and is rated 1 … 5, more is better.
inline constexpr std::array<std::string_view, 5> usualCriteria{"build effort", "ease of use",
                                                               "cleaning", "noise", "space"};

} // namespace holdband
