// A sensor's readings as the cells of a table. Pure, without widgets.
#pragma once

#include "ui/readings/readings_dialog.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

TableWords readingWords(const ReadingsView& view);

/// The reason for which a reading is left out; absent where it counts.
std::optional<std::string> leftOutBecause(const ReadingsView& view, Instant at);

} // namespace holdband::ui
