// Fewer points, the same line: of each pixel column the first, least, greatest and last point
// (M4: Jugel et al., VLDB 2014). No extreme is lost. No Gui types; safe on any thread.
#pragma once

#include "core/analysis/track.h"

#include <utility>
#include <vector>

namespace holdband::ui {

struct DrawnPoint {
    double ms = 0.0; ///< from the track's origin
    double value = 0.0;

    bool operator==(const DrawnPoint&) const = default;
};

using Polyline = std::vector<DrawnPoint>;

/// Where the least and the greatest value of each block of readings stand, so that a frame need not
/// look at a million of them. Made once for a track, and only good for that track unchanged.
class TrackPyramid {
public:
    TrackPyramid() = default;
    explicit TrackPyramid(const analysis::Track& track);

    /// The indices of the first least and the last greatest value in [from, to), which must not be
    /// empty.
    std::pair<std::size_t, std::size_t> extremes(const analysis::Track& track, std::size_t from,
                                                 std::size_t to) const;

    static constexpr std::size_t blockLength = 64;

private:
    std::vector<std::size_t> m_least;
    std::vector<std::size_t> m_greatest;
};

/// The part of the track from `fromMs` to `toMs` (and the point before and after it, so that lines
/// run on to the edge) as one polyline for each covered run, at most four points a column.
/// `pyramid`: of this track, or none.
std::vector<Polyline> decimate(const analysis::Track& track, double fromMs, double toMs,
                               int columns, const TrackPyramid* pyramid = nullptr);

} // namespace holdband::ui
