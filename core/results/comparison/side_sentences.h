// The sentences at the top of a comparison, and remarks on its measures. Not for use outside
// core/results.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "core/results/comparison/side_format.h"
#include "core/results/setup_loading.h"

namespace holdband::results {

const analysis::Measure& measureOf(const SideBySide& review, analysis::MeasureId id);

/// "Over the same 13.5 days A used 2.30 times B's energy (2.2 – 2.4): 11.52 kWh against 5.01 kWh."
std::string energySentence(const SideBySide& review, const SideFormat& format);

std::string temperatureSentenceOfBatches(const SideBySide& review, const SideFormat& format,
                                         const LoadedRun& a, const LoadedRun& b);
std::string temperatureSentenceOfSetups(const SideBySide& review, const SideFormat& format);

/// Adds the headline and the text below it, after all other sentences of `text`.
void addHeadline(const SideBySide& review, SideBySideText& text);

/// Why nobody is ahead in that measure, and how an interval was cut; may be empty.
std::string remarkOn(const SideBySide& review, std::size_t measure);

} // namespace holdband::results
