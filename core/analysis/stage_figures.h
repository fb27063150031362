// The figures of a stage that every screen and report shows, each computed in one place. Sections 2
// and 3 of the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/verdict.h"

#include <optional>

namespace holdband::analysis {

/// Whether the beer reached the stage's band.
enum class Settled {
    notNeeded, ///< the target did not jump, or the beer was in the band at its first reading
    arrived,
    notYet, ///< the stage is still running
    missed, ///< the stage is over
};

struct StageFigures {
    Settled settled = Settled::notNeeded;
    std::optional<double> settledInMs;   ///< on the clock, stage's start to arrival
    double settlingMs = 0.0;             ///< covered time before the arrival, not judged
    std::optional<double> ratePerMs;     ///< K/ms, positive when cooling from above
    std::optional<double> overshoot;     ///< K past the target in the direction of travel
    std::optional<double> coverage;      ///< covered / hold time; absent without hold time
    std::optional<double> insideShare;   ///< inside / covered; absent where nothing is covered
    std::optional<double> meanDeviation; ///< K
    std::optional<double> worst;         ///< K past the edge, below 0 for the lower one; absent
                                         ///< without an excursion
};

StageFigures stageFigures(const JudgedBatch& judged, std::size_t stage);

} // namespace holdband::analysis
