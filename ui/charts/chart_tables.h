// The panels of a run as tables: for those who hear the window, and for a look at single values.
#pragma once

#include "ui/charts/run_chart.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

/// Beer, target, deviation and room, one row for each stretch of time; the stretches are so long
/// that no more than `mostRows` come out. Of the part from `shown`.
TableWords temperatureTable(const RunChart& chart, Span shown);

/// Every register reading: energy since pitching with its bounds, and what came since the one
/// before.
TableWords energyReadingsTable(const RunChart& chart, Span shown);

inline constexpr int mostRows = 300;

} // namespace holdband::ui
