// The texts of a comparison, part by part. Not for use outside core/results.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "core/results/comparison/side_format.h"
#include "core/results/setup_loading.h"

namespace holdband::results {

SameWeatherText weatherText(const SideBySide& review, const SideFormat& format);
MoneyText costsText(const SideBySide& review, const SideFormat& format);
JudgementText judgementText(const SideBySide& review, const SideFormat& format);

/// All texts of a comparison whose numbers are complete; `a` and `b` are the runs of a comparison
/// of two batches.
SideBySideText textOfBatches(const SideBySide& review, const SideFormat& format, const LoadedRun& a,
                             const LoadedRun& b);
SideBySideText textOfSetups(const SideBySide& review, const SideFormat& format);

} // namespace holdband::results
