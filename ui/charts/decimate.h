// Reduces the points of a line without changing its look: of each pixel column the first, lowest,
// highest and last point (M4: Jugel et al., VLDB 2014). No extreme is lost. No Gui types; safe on
// any thread.
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

/// The index of the lowest and the highest value of each block of readings, so that a frame need
/// not look at a million of them. Made once for a track, and valid only while that track is
/// unchanged.
class TrackPyramid {
public:
    TrackPyramid() = default;
    explicit TrackPyramid(const analysis::Track& track);

    /// The indices of the first lowest and the last highest value in [from, to), which must not be
    /// empty.
    std::pair<std::size_t, std::size_t> extremes(const analysis::Track& track, std::size_t from,
                                                 std::size_t to) const;

    static constexpr std::size_t blockLength = 64;

private:
    std::vector<std::size_t> m_least;
    std::vector<std::size_t> m_greatest;
};

/// The part of the track from `fromMs` to `toMs` (and the point before and after it, so that lines
/// continue to the edge) as one polyline for each covered run, at most four points per column.
/// `pyramid`: of this track, or null.
std::vector<Polyline> decimate(const analysis::Track& track, double fromMs, double toMs,
                               int columns, const TrackPyramid* pyramid = nullptr);

} // namespace holdband::ui
