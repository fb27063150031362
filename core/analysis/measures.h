// The measures of one side of a comparison, with their bounds. Not for use outside core/analysis.
#pragma once

#include "core/analysis/comparison.h"

#include <optional>

namespace holdband::analysis {

using Figure = std::optional<Bounded>;

/// Absent where the measure is not a temperature measure, or there is no data for it.
Figure temperatureMeasure(const ComparisonSide& side, MeasureId id);

/// An estimate whose factors are more uncertain than the meter: no bounds, and neither side is
/// ahead.
Figure performanceOf(const ComparisonSide& side);

Figure partsOf(const ComparisonSide& side);

/// Whether the run missed the stage that the measure is about, or any stage for a measure of the
/// full run.
bool missedStage(const RunFigures& figures, MeasureId id);

/// The measure with both figures, their difference and ratio, and who is ahead.
Measure completed(const MeasureRule& rule, Figure a, Figure b);

} // namespace holdband::analysis
