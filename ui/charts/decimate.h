// Fewer points, the same line: of each pixel column the first, least, greatest and last point
// (M4: Jugel et al., VLDB 2014). No extreme is lost. No Gui types; safe on any thread.
#pragma once

#include "core/analysis/series.h"

#include <vector>

namespace holdband::ui {

struct DrawnPoint {
    double ms = 0.0; ///< from the track's origin
    double value = 0.0;

    bool operator==(const DrawnPoint&) const = default;
};

using Polyline = std::vector<DrawnPoint>;

/// The part of the track from `fromMs` to `toMs` (and the point before and after it, so that lines
/// run on to the edge) as one polyline for each covered run, at most four points a column.
std::vector<Polyline> decimate(const analysis::Track& track, double fromMs, double toMs,
                               int columns);

} // namespace holdband::ui
