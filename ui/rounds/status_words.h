// What the line at the bottom says: the next round, and how old the meters' last readings are.
#pragma once

#include "core/results/rounds/rounds_sheet.h"

#include <QStringList>

namespace holdband::ui {

/// `running`: the setups that have an open batch.
QString statusWords(const results::RoundsSheet& sheet, const QStringList& running);

/// "5 h ago", "3 days ago"
QString agoText(Instant then, Instant now);

} // namespace holdband::ui
