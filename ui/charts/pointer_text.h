// The text at the crosshair for an instant: a few short lines with values.
#pragma once

#include "ui/charts/run_chart.h"

#include <QStringList>

namespace holdband::ui {

/// "4 Apr 01:20 · day 7.3", "beer 52.6 · target 52.0 · room 60.1", "5.14 kWh (4.96 – 5.33)"
QStringList wordsAt(const RunChart& chart, Instant at);

} // namespace holdband::ui
