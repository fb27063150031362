// A sensor's or a meter's readings as the cells of a table. Pure, without widgets.
#pragma once

#include "ui/record/readings_view.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

TableText readingWords(const ReadingsView& view);

/// Why a sensor's reading is left out; absent if it counts.
std::optional<std::string> leftOutBecause(const ReadingsView& view, Instant at);

/// "412 readings in this stretch.", or what to do if there are none to show.
QString countWords(const ReadingsView& view);

} // namespace holdband::ui
