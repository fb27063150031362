// Where the beer of an open batch may go from its last reading until it comes into its band: a pale
// fan in the temperature plot, with the middle of the forecast as a dashed line. Plain values in
// display units; times are ms from the chart's origin. Safe on any thread.
#pragma once

#include "core/results/run/run_review.h"
#include "ui/charts/plot.h"

#include <optional>

namespace holdband::ui {

struct ArrivalFan {
    int setup = 0;          ///< of setupColour
    double nowMs = 0.0;     ///< of the last reading
    double beer = 0.0;      ///< at that reading
    double target = 0.0;    ///< of the stage in progress
    double tolerance = 0.0; ///< ± difference
    double edge = 0.0;      ///< of the band, where the beer comes in
    double lowMs = 0.0;
    std::optional<double> middleMs; ///< absent where the beer may not arrive
    std::optional<double> highMs;   ///< absent where the beer may not arrive
    double endMs = 0.0;             ///< how far the chart goes for it
};

/// A chart goes no farther than this after the last reading.
inline constexpr Milliseconds longestFan = std::chrono::hours{48};

/// Absent where the forecast has no time to show.
std::optional<ArrivalFan> fanOf(const results::RunReview& review, Instant origin);

/// From the last reading to the edge of the band, between the soonest and the latest way.
QPolygonF outlineOf(const ArrivalFan& fan);

void addFan(Plot& plot, const ArrivalFan& fan);
/// Of the sample beside its name: as the middle is drawn, or the fan where it has none.
QPen fanKeyPen(const ArrivalFan& fan, const Colours& colours);

} // namespace holdband::ui
