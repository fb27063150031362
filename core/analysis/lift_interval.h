// How sure the same-weather line of a setup is, by batch: batches differ, and successive times
// between readings are alike, so neither counts as so many independent points. Section 8.2 of the
// method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/regression.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace holdband::analysis {

/// A point of the line and the batches that it was measured on.
struct BatchPoint {
    FitPoint point;              ///< x: lift, K; y: mean power, W; weight: hours
    std::vector<std::string> of; ///< at least one
};

/// The indices of points that belong together: batches that share a point are one group, and a
/// group of fewer than 3 points joins the one before it (the first one: the next). In the order of
/// their first points. No point is in two groups.
std::vector<std::vector<std::size_t>> batchGroups(std::span<const BatchPoint> points);

enum class SpreadSource {
    byBatch, ///< from how much batches differ: the line was fitted again without each group
    assumed  ///< fewer than 3 groups, or one of those fits has no line: partly assumed
};

/// The 95 % intervals of a line. With 3 groups or more a cluster jackknife (MacKinnon, Nielsen and
/// Webb 2023); the spread of one more batch is our own.
class LiftInterval {
public:
    /// Absent where the points have no line. Units of x and y are the points' own.
    static std::optional<LiftInterval> of(std::span<const BatchPoint> points);

    const LinearFit& fit() const { return m_fit; }
    SpreadSource source() const { return m_source; }
    std::size_t groups() const { return m_groups; }

    /// The mean of many batches at x.
    Interval95 meanResponse(double x) const;
    /// The mean of one more batch at x.
    Interval95 oneMoreBatch(double x) const;
    /// Of y for one of x.
    Interval95 slope() const;
    /// Of y at x = 0.
    Interval95 intercept() const { return meanResponse(0.0); }

private:
    LiftInterval() = default;
    bool fitWithoutEach(std::span<const BatchPoint> points,
                        const std::vector<std::vector<std::size_t>>& groups);
    void assume(std::span<const BatchPoint> points,
                const std::vector<std::vector<std::size_t>>& groups);
    double variance(double x) const;
    double quantile() const;

    LinearFit m_fit;
    SpreadSource m_source = SpreadSource::assumed;
    std::size_t m_groups = 0;
    std::vector<LinearFit> m_without; ///< one for each group; empty where assumed
    double m_batchVariance = 0.0;     ///< of one batch about the line, y squared
};

} // namespace holdband::analysis
