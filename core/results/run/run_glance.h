// A run at a glance: the share of time on target, and the few figures that people ask for next, as
// text in the logbook's units. Window and picture show the same.
#pragma once

#include "core/results/run/explain.h"
#include "core/results/run/run_review.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

struct GlanceFigure {
    std::string value;   ///< "99.4 %"
    std::string caption; ///< "on target, of 24.3 days recorded"
    Figure figure = Figure::insideShare;
    bool warns = false; ///< it speaks against the batch
};

struct RunGlance {
    std::optional<GlanceFigure> lead; ///< absent where no hold time is covered
    std::vector<GlanceFigure> others; ///< in the order to show
};

/// With the decimal sign of the review.
RunGlance glanceOf(const RunReview& review);

} // namespace holdband::results
