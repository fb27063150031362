// Texts about a bar, a group of bars or the rounds: for tooltips and for assistive technology.
#pragma once

#include "core/results/overview/lanes.h"
#include "core/text/zone.h"
#include "ui/lanes/lanes_layout.h"

#include <QString>
#include <vector>

namespace holdband::ui {

/// The meaning of the mark: "↛ a target was missed".
QString markMeaning(const results::LaneBar& bar);
/// "7 Mar 2026 06:30 – 9 Mar 2026 06:30 (2.0 days)", "… – still open (2.0 days so far)"
QString spanText(const results::LaneBar& bar, const Zone& zone);
/// Name, span, verdict sentence, meaning of the mark: one line each.
QString barText(const results::LaneBar& bar, const Zone& zone);
/// "12 batches, Jan 2019 – Mar 2020", the count of each verdict, and what a click does.
QString groupText(const std::vector<const results::LaneBar*>& bars, const Zone& zone);
/// "Readings of 7 Mar 06:30", "14 rounds, 2 of them missed, 7 Mar – 13 Mar 2026"
QString roundsText(const PlacedTick& tick, const Zone& zone);

} // namespace holdband::ui
