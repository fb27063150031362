// The two sentences at the top of a comparison, and remarks on its measures. Not for use outside
// core/results.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "core/results/comparison/side_format.h"
#include "core/results/comparison/side_loading.h"

namespace holdband::results {

const analysis::Measure& measureOf(const SideBySide& review, analysis::MeasureId id);

/// What has anything on record that its energy could be read from.
struct Metering {
    bool a = true;
    bool b = true;
};

/// "Over the same 13.5 days A used 2.30 times B's energy (2.2 – 2.4): 11.52 kWh against 5.01 kWh."
std::string energySentence(const SideBySide& review, const SideFormat& manner,
                           const Metering& metering);

std::string temperatureSentenceOfBatches(const SideBySide& review, const SideFormat& manner,
                                         const LoadedRun& a, const LoadedRun& b);
std::string temperatureSentenceOfSetups(const SideBySide& review, const SideFormat& manner);

/// Why nobody is ahead, and what was cut off an interval: into each line's remark.
/// The headline and what is below it, when all sentences are there.
void addHeadline(SideBySide& review);

void addRemarks(SideBySide& review, const std::vector<analysis::FairnessNote>& notes);

} // namespace holdband::results
