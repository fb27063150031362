// Measures and fairness notes in words and in the units of the logbook.
#pragma once

#include "core/review/side_by_side.h"

namespace holdband::review {

MeasureWords measureWords(const analysis::Measure& measure, const LogbookSettings& settings);

/// `a` and `b` are the names of the two sides.
NoteWords noteWords(const analysis::FairnessNote& note, const LogbookSettings& settings,
                    const std::string& a, const std::string& b);

/// The fixed name of a measure: "energy_kwh".
std::string_view measureName(analysis::MeasureId id);

} // namespace holdband::review
