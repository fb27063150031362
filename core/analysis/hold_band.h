// Judges one stage against its band: arrival, settling, time inside and outside, excursions.
// Sections 2 and 3 of the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/held_time.h"
#include "core/analysis/target.h"
#include "core/analysis/track.h"
#include "core/model/batch.h"
#include "core/model/cause.h"

#include <optional>
#include <vector>

namespace holdband::analysis {

/// A reading exactly on the edge in either unit (°F or °C) is inside: instants and pieces are
/// classified with this slack, K. Crossings, peaks and areas use the tolerance itself.
inline constexpr double edgeSlack = 1e-6;

/// Lengths are compared with a limit to the microsecond, ms: rounding must not decide.
inline constexpr double lengthSlackMs = 1e-3;

using holdband::Side;

/// What ended an excursion.
enum class Cut { cameBack, gap, stageEnd };

/// From the beer's leaving the band by one edge to its last crossing back before it stayed inside
/// for the return time, crossed the other edge, or a gap or the stage's end came. Times in ms from
/// the stage's start.
struct Excursion {
    Side side = Side::above;
    double startMs = 0.0; ///< ms from the stage's start
    double endMs = 0.0;   ///< ms from the stage's start: the last crossing back, or the cut
    double peak = 0.0;    ///< K beyond the edge
    double peakMs = 0.0;  ///< ms from the stage's start: where the peak is first
    double areaMs = 0.0;  ///< K·ms beyond the edge
    Cut cut = Cut::cameBack;
    double outsideMs = 0.0; ///< ms: the sum of its stretches beyond the edge

    /// K beyond the edge, below 0 for the lower one.
    double signedPeak() const { return side == Side::above ? peak : -peak; }
    bool operator==(const Excursion&) const = default;
};

/// The one that is farthest past its edge, the earliest of equals; null where there is none.
const Excursion* worstOf(const std::vector<Excursion>& excursions);

/// The instants of an excursion of that stage.
Span spanOf(const PlacedStage& stage, const Excursion& excursion);

/// The first covered instant inside the band from which the beer stayed inside for the dwell. The
/// look ahead ends early at a gap, the last reading or the stage's end.
struct Arrival {
    double ms = 0.0;        ///< from the stage's start
    double deviation = 0.0; ///< K, at that instant
    bool seen = false;      ///< the instant before the arrival is covered

    bool operator==(const Arrival&) const = default;
};

/// A stage judged with one tolerance.
struct BandJudgement : HeldTime {
    double tolerance = 0.0; ///< K
    std::optional<Arrival> arrival;
    /// Stays inside the band before the arrival, each shorter than the dwell.
    std::size_t visits = 0;
    bool settles = false; ///< began with a jump and outside the band
    bool missed = false;
    double holdFromMs = 0.0; ///< ms from the stage's start; covered time from here on is judged
    std::vector<Excursion> excursions;
};

/// Deviation from target over the covered part of the stage, K, and whether the instant before the
/// stage's start is covered too.
struct StageTrack {
    Track deviation;
    bool coveredBefore = false;
};

StageTrack stageTrack(const Series& beer, Milliseconds gapLimit, const PlacedStage& stage);

/// Judges the stage with the given tolerance (K, may be ≤ 0: then almost nothing is inside). Reads
/// each piece once for the arrival and once for the rest.
BandJudgement judgeStage(const StageTrack& track, const PlacedStage& stage, double tolerance,
                         const BandTimes& times);

/// How the beer moved to a new target. Figures are absent where the stage did not settle, or never
/// arrived.
struct SettlingFigures {
    std::optional<double> clockMs;   ///< stage's start to arrival
    std::optional<double> ratePerMs; ///< K/ms, positive when cooling from above
    std::optional<double> overshoot; ///< K past the target in the direction of travel
};

SettlingFigures settlingFigures(const StageTrack& track, const BandJudgement& judged);

} // namespace holdband::analysis
