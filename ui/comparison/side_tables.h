// The table of measures and the notes on how fair it is, as words.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

/// Each measure with the numbers of the notes that touch it.
TableWords measuresTable(const results::SideBySide& comparison);
/// What the brackets mean; of two setups also which batches went in.
QString batchesThatCount(const results::SideBySide& comparison);
/// Numbered as in the table.
QStringList fairnessNotes(const results::SideBySide& comparison);

/// Sentences as they stand: with a full stop each.
QStringList sentences(const std::vector<std::string>& lines);

} // namespace holdband::ui
