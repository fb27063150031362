// Measures and fairness notes as text, in the units of the logbook.
#pragma once

#include "core/results/comparison/side_by_side_text.h"
#include "core/results/comparison/side_format.h"

namespace holdband::results {

MeasureText measureText(const analysis::Measure& measure, const SideFormat& format);

/// One figure of the measure, as in the table.
std::string figureText(analysis::MeasureId id, double value, const SideFormat& format);

/// The measure's title in the table: "Energy, kWh".
std::string measureTitle(analysis::MeasureId id, const SideFormat& format);

/// The names of the two sides, for notes.
struct SideNames {
    std::string a;
    std::string b;
    bool ofSetups = false; ///< figures are means over batches
};

NoteText noteText(const analysis::FairnessNote& note, const SideFormat& format,
                  const SideNames& names);

} // namespace holdband::results
