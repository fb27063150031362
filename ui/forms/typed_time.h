// A time as people type it here: ISO, the time of day alone for today, or a date as their locale
// writes it with a clock of 12 or 24 hours ("10/27/2026 6:00 pm").
#pragma once

#include "core/problem.h"
#include "core/text/zone.h"

#include <QString>

namespace holdband::ui {

/// Problem (data): no time, or one that clocks skip or repeat, with both ways to write it.
Result<Instant> readTypedTime(const QString& text, const Zone& zone, Instant now);

} // namespace holdband::ui
