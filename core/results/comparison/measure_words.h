// Measures and fairness notes in words and in the units of the logbook.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "core/results/comparison/side_format.h"

namespace holdband::results {

MeasureWords measureWords(const analysis::Measure& measure, const SideFormat& manner);

/// One figure of the measure as the table writes it.
std::string figureText(analysis::MeasureId id, double value, const SideFormat& manner);

/// What the table calls the measure: "Energy, kWh".
std::string measureTitle(analysis::MeasureId id, const SideFormat& manner);

/// The two sides that notes speak of.
struct SideNames {
    std::string a;
    std::string b;
    bool ofSetups = false; ///< figures are means over batches
};

NoteWords noteWords(const analysis::FairnessNote& note, const SideFormat& manner,
                    const SideNames& names);

/// The fixed name of a measure: "energy_kwh".
std::string_view measureName(analysis::MeasureId id);

} // namespace holdband::results
