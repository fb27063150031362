// The line of a setup without one of its past batches, from sums. Section 8.1 of the method in
// DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/forecast_parts.h"
#include "core/analysis/lift_interval.h"
#include "core/analysis/regression.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace holdband::analysis {

class LinesWithout {
public:
    /// In each pair at least one of the batches ran.
    LinesWithout(const std::vector<PastBatch>& batches, const std::vector<BatchPoint>& pairs);

    /// Fitted to the pairs in which another of the batches ran. Absent where they have no line.
    std::optional<LinearFit> without(std::size_t batch) const;

private:
    FitSums m_all;
    std::vector<FitSums> m_alone; ///< by batch: the pairs of no other one
};

} // namespace holdband::analysis
