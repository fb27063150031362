// A crash in progress as a fall towards 0: temperatures are kelvins above the target, and a warm-up
// is mirrored. Section 8.3 of the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/arrival_forecast.h"

#include <optional>
#include <span>
#include <vector>

namespace holdband::analysis {

/// What the question becomes: a fall to `bandK`.
struct FallingWay {
    double targetC = 0.0;
    double sign = 1.0;               ///< −1 for a warm-up
    double bandK = 0.0;              ///< the near edge of the band, above 0
    double floorK = 0.0;             ///< what it could fall to
    std::vector<TemperatureAt> fall; ///< in order, at least one; K above the target
    double nowH = 0.0;               ///< the last reading's hour
    double nowK = 0.0;               ///< the last reading
    double beginningK = 0.0;

    /// Absent without a finite reading, target, and tolerance of at least 0.
    static std::optional<FallingWay> of(const ArrivalQuestion& question);

    /// Another series in the same kelvins, in order.
    std::vector<TemperatureAt> inKelvins(std::span<const TemperatureAt> readings) const;
    double celsius(double kelvins) const { return targetC + sign * kelvins; }
    double wholeWay() const { return beginningK - bandK; }
    bool arrived() const;
};

} // namespace holdband::analysis
