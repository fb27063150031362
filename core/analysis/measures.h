// The measures of one side of a comparison, with their bounds. Not for use outside core/analysis.
#pragma once

#include "core/analysis/comparison.h"

#include <optional>

namespace holdband::analysis {

using Figure = std::optional<Bounded>;

/// Absent where the measure is none of temperature, or there is nothing to take it from.
Figure temperatureMeasure(const ComparisonSide& side, MeasureId id);

/// An estimate whose factors are uncertain by more than the meter: no bounds, nobody ahead.
Figure performanceOf(const ComparisonSide& side);

Figure partsOf(const ComparisonSide& side);

/// Whether the run missed the stage that the measure is of, or any stage for one of the whole run.
bool missedStage(const RunFigures& figures, MeasureId id);

/// Both figures with their difference, ratio, and who is ahead.
Measure completed(const MeasureRule& rule, Figure a, Figure b);

} // namespace holdband::analysis
