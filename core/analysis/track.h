// The covered parts of a sensor's readings, as straight pieces. No Qt, no SQL.
#pragma once

#include "core/quantity/instant.h"
#include "core/quantity/series.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace holdband::analysis {

/// Readings first … last joined by straight pieces; last > first.
struct Run {
    std::size_t first;
    std::size_t last;
};

/// A quantity over covered time: points of one run are joined by straight lines, between runs
/// nothing is known. `ms` counts milliseconds from `origin`, with fractions at crossings.
struct Track {
    Instant origin;
    std::vector<double> ms;    ///< since origin
    std::vector<double> value; ///< the quantity's own unit: °C, K, W
    std::vector<Run> runs;

    bool empty() const { return runs.empty(); }
    double coveredMs() const;
    /// Covered milliseconds before `untilMs`.
    double coveredMsBefore(double untilMs) const;
};

/// The longest interval that counts as covered where a batch does not set its own: 3 × the median
/// interval between successive readings inside `inside`, and at most 2 h. 2 h if fewer than two
/// readings are inside. The median of an even count is the mean of the middle two.
Milliseconds defaultGapLimit(const Series& series, Span inside);

/// The median interval between successive readings, ms; that of an even count is the mean of the
/// middle two. 0 for fewer than two readings.
double medianIntervalMs(const Series& series);

/// The covered pieces of the series inside the span, ends interpolated. A piece is covered when its
/// readings are at most `gapLimit` apart with no break between them.
Track cover(const Series& series, Milliseconds gapLimit, Span span);

/// a − b where both are covered. Both tracks must have the same origin.
Track difference(const Track& a, const Track& b);

/// The part of a track from `fromMs` to `toMs`, ends interpolated.
Track clip(const Track& track, double fromMs, double toMs);

/// The first time at or below the level from `fromMs` on, ms; absent where it is never, or where it
/// fell below in a gap.
std::optional<double> firstAtOrBelow(const Track& track, double level, double fromMs);

/// The straight line through (t0, v0) and (t1, v1) at t. t1 must differ from t0.
inline double along(double t0, double v0, double t1, double v1, double t)
{
    return v0 + (v1 - v0) * ((t - t0) / (t1 - t0));
}

/// Calls visit(t0, v0, t1, v1, joined) for each covered piece that ends after `fromMs`, clipped to
/// begin there; `joined` is true where the piece starts at the end of the one visited before.
template <typename Visit>
void forEachPiece(const Track& track, double fromMs, Visit visit)
{
    for (const Run& run : track.runs) {
        bool joined = false;
        for (std::size_t i = run.first; i < run.last; ++i) {
            const double t1 = track.ms[i + 1];
            if (t1 <= fromMs)
                continue;
            double t0 = track.ms[i];
            double v0 = track.value[i];
            if (t0 < fromMs) {
                v0 = along(t0, v0, t1, track.value[i + 1], fromMs);
                t0 = fromMs;
            }
            visit(t0, v0, t1, track.value[i + 1], joined);
            joined = true;
        }
    }
}

} // namespace holdband::analysis
