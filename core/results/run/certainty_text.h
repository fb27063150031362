// How sure a verdict is, in a sentence. Not for use outside core/results.
#pragma once

#include "core/results/run/verdict_text.h"

#include <string>

namespace holdband::results {

/// Empty where there is not enough data.
std::string certaintyText(const analysis::JudgedBatch& judged, const JudgedBy& by,
                          const VerdictFormat& format);

} // namespace holdband::results
