// Which curves of cooling the latest readings allow: from a straight fall (the power limit) to
// Newton's cooling at any pace. Section 8.3 of the method in DEVELOPERS.md. A warm-up is handed in
// mirrored. No Qt, no SQL.
#pragma once

#include "core/analysis/temperature_fall.h"

#include <optional>
#include <span>
#include <vector>

namespace holdband::analysis {

/// T = now − rate·g, with g = t (pace 0) or (1 − e^(−pace·t)) / pace, t in hours from now.
struct CoolingCurve {
    double pace = 0.0;    ///< 1/h; 0 is a straight fall
    double now = 0.0;     ///< °C
    double rate = 0.0;    ///< K/h at present, positive where it falls
    double squares = 0.0; ///< K², the sum of the squared residuals

    /// The temperature that the curve comes near to, °C; absent for a straight line.
    std::optional<double> levelsOffAt() const;
    /// Hours from now; 0 where the curve is there already, absent where it never gets there.
    std::optional<double> hoursTo(double celsius) const;
};

struct CoolingCurves {
    CoolingCurve best;
    std::vector<CoolingCurve> accepted; ///< by their pace, with the best one
};

/// The curves that the means of blocks allow at 95 %. Absent for fewer than 4 blocks, or where all
/// are of one time.
std::optional<CoolingCurves> coolingCurvesOf(std::span<const TemperatureAt> blocks,
                                             double nowHours);

} // namespace holdband::analysis
