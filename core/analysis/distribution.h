// A histogram of the time over a quantity's values, with given bins; exact over the straight pieces
// (uniform on each, as in statistics.h). No Qt, no SQL.
#pragma once

#include "core/analysis/verdict.h"

#include <optional>
#include <span>
#include <vector>

namespace holdband::analysis {

/// Covered time, ms, by the quantity's value. Bin i holds edges[i] ≤ x < edges[i + 1], the last one
/// its upper edge too. As with the hold band, a piece that passes an outermost edge by at most
/// `edgeSlack` counts as inside.
struct Distribution {
    std::vector<double> edges; ///< increasing
    std::vector<double> binMs; ///< one fewer than edges
    double belowMs = 0.0;      ///< below the first edge
    double aboveMs = 0.0;      ///< above the last edge

    double totalMs() const;
    /// Shares of the total, dimensionless; 0 where nothing is covered.
    double share(std::size_t bin) const;
    double shareBelow() const;
    double shareAbove() const;
};

/// Of the covered part of a track from `fromMs` on. `edges`: at least two, increasing.
Distribution distributionOf(const Track& track, double fromMs, std::span<const double> edges);

/// Of the deviation (K) over all covered hold time of the batch as planned.
Distribution distributionOf(const JudgedBatch& batch, std::span<const double> edges);

/// Minimum and maximum of a quantity over covered time; absent where nothing is covered.
struct Extent {
    double least = 0.0; ///< in the unit of the track
    double most = 0.0;  ///< in the unit of the track
};
std::optional<Extent> extentOf(const Track& track, double fromMs);

/// Of the deviation (K) over all covered hold time of the batch as planned.
std::optional<Extent> extentOf(const JudgedBatch& batch);

/// Edges at multiples of tolerance / `binsInTolerance`, so that the band's own edges are among
/// them: from ±tolerance outwards until the extent is covered, but no further than `mostTolerances`
/// × tolerance either way; values beyond are below or above all bins. The tolerance (K) must be
/// positive.
std::vector<double> bandEdges(double tolerance, Extent extent, int binsInTolerance = 4,
                              int mostTolerances = 5);

} // namespace holdband::analysis
