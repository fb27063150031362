// What a batch was forecast to use when it was pitched, to be held against what came. No Qt.
#pragma once

#include "core/quantity/instant.h"
#include "core/quantity/temperature.h"

#include <optional>

namespace holdband {

/// A figure with the range in which nine such batches in ten lie.
struct ForecastFigure {
    double value = 0.0; ///< the figure's own unit
    double low = 0.0;
    double high = 0.0;

    bool holds(double came) const { return low <= came && came <= high; }
    bool operator==(const ForecastFigure&) const = default;
};

struct BatchForecast {
    Instant made;
    ForecastFigure energy;                    ///< kWh, of the whole batch
    std::optional<ForecastFigure> crashHours; ///< h from turning down to the band
    std::optional<Temperature> room;          ///< its mean, as it was taken

    bool operator==(const BatchForecast&) const = default;
};

} // namespace holdband
