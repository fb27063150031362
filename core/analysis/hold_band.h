// One stage held against its band: arrival, settling, time inside and outside, excursions.
// Sections 2 and 3 of the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/target.h"
#include "core/analysis/track.h"
#include "core/model/cause.h"

#include <optional>
#include <vector>

namespace holdband::analysis {

/// A reading that sits on the edge in either unit is inside: instants and pieces are classified
/// with this slack, K. Crossings, peaks and areas use the tolerance itself.
inline constexpr double edgeSlack = 1e-6;

using holdband::Side;

/// What ended an excursion.
enum class Cut { cameBack, gap, stageEnd };

/// A longest stretch of covered hold time beyond one edge. Times in ms from the stage's start.
struct Excursion {
    Side side = Side::above;
    double startMs = 0.0; ///< ms from the stage's start
    double endMs = 0.0;   ///< ms from the stage's start
    double peak = 0.0;    ///< K beyond the edge
    double areaMs = 0.0;  ///< K·ms beyond the edge
    Cut cut = Cut::cameBack;

    double lengthMs() const { return endMs - startMs; }
    bool operator==(const Excursion&) const = default;
};

/// Where the beer first was inside the band.
struct Arrival {
    double ms = 0.0;        ///< from the stage's start
    double deviation = 0.0; ///< K, at that instant
    bool seen = false;      ///< the instant before it is covered

    bool operator==(const Arrival&) const = default;
};

/// A stage judged with one tolerance.
struct BandJudgement {
    double tolerance = 0.0; ///< K
    std::optional<Arrival> arrival;
    bool settles = false; ///< began with a jump and outside the band
    bool missed = false;
    double holdFromMs = 0.0; ///< ms from the stage's start; covered time from here on is judged
    double settlingMs = 0.0; ///< ms, covered and not judged
    double holdMs = 0.0;     ///< ms, clock
    double coveredMs = 0.0;  ///< ms of hold time
    double insideMs = 0.0;   ///< ms, covered and in the band
    double aboveMs = 0.0;    ///< ms, covered and above it
    double belowMs = 0.0;    ///< ms, covered and below it
    std::vector<Excursion> excursions;
};

/// Deviation from target over the covered part of the stage, K, and whether the instant before the
/// stage's start is covered too.
struct StageTrack {
    Track deviation;
    bool coveredBefore = false;
};

StageTrack stageTrack(const Series& beer, Milliseconds gapLimit, const PlacedStage& stage);

/// Judges the stage with the given tolerance (K, may be ≤ 0: then next to nothing is inside).
BandJudgement judgeStage(const StageTrack& track, const PlacedStage& stage, double tolerance);

/// How the beer travelled to a new target. Figures are absent where the stage did not settle, or
/// never arrived.
struct SettlingFigures {
    std::optional<double> clockMs;   ///< stage's start to arrival
    std::optional<double> ratePerMs; ///< K/ms, positive when cooling from above
    std::optional<double> overshoot; ///< K past the target in the direction of travel
};

SettlingFigures settlingFigures(const StageTrack& track, const BandJudgement& judged);

} // namespace holdband::analysis
