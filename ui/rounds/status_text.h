// The text of the status line: the next round, and the age of the meters' last readings.
#pragma once

#include "core/results/rounds/rounds_sheet.h"

#include <QStringList>

namespace holdband::ui {

/// `running`: the setups with an open batch.
QString statusText(const results::RoundsSheet& sheet, const QStringList& running);

/// "5 h ago", "3 days ago"
QString agoText(Instant then, Instant now);

} // namespace holdband::ui
