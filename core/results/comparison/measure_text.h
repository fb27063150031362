// Measures and fairness notes as text, in the units of the logbook.
#pragma once

#include "core/results/comparison/side_by_side_text.h"
#include "core/results/comparison/side_format.h"

namespace holdband::results {

MeasureText measureText(const analysis::Measure& measure, const SideFormat& format);

/// One figure of the measure as the table writes it.
std::string figureText(analysis::MeasureId id, double value, const SideFormat& format);

/// What the table calls the measure: "Energy, kWh".
std::string measureTitle(analysis::MeasureId id, const SideFormat& format);

/// The two sides that notes speak of.
struct SideNames {
    std::string a;
    std::string b;
    bool ofSetups = false; ///< figures are means over batches
};

NoteText noteText(const analysis::FairnessNote& note, const SideFormat& format,
                  const SideNames& names);

} // namespace holdband::results
