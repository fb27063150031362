// The table of measures and the fairness notes, as text.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

/// Each measure with the numbers of its notes.
TableText measuresTable(const results::SideBySide& comparison);
/// The meaning of the brackets; for two setups also the batches included.
QString batchesThatCount(const results::SideBySide& comparison);
/// Numbered as in the table.
QStringList fairnessNotes(const results::SideBySide& comparison);

/// How the lines of both sides were computed, and why they may decide nothing.
QString weatherDetails(const results::SideBySide& comparison);

/// Turns each text into a sentence with a full stop.
QStringList sentences(const std::vector<std::string>& lines);

} // namespace holdband::ui
