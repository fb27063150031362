// The panels of a run as tables: for people who use a screen reader, and to look up single values.
#pragma once

#include "ui/charts/run_chart.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

/// Beer, target, deviation and room, one row for each stretch of time in `shown`; the stretches are
/// long enough that there are at most `mostRows`.
TableText temperatureTable(const RunChart& chart, Span shown);

/// Every register reading: energy since pitching with its bounds, and the energy since the reading
/// before.
TableText energyReadingsTable(const RunChart& chart, Span shown);

inline constexpr int mostRows = 300;

} // namespace holdband::ui
