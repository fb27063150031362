// Names of days, months or years under the lanes: as fine as they fit without touching.
#pragma once

#include "core/text/zone.h"

#include <functional>
#include <string>
#include <vector>

namespace holdband::ui {

using TextWidth = std::function<double(const std::string&)>; ///< in pixels

struct PlacedLabel {
    double x = 0.0; ///< its left edge
    std::string label;
    bool atEdge = false; ///< its time began before what is shown
};

/// `left` and `right`: where the shown span begins and ends.
std::vector<PlacedLabel> timeLabels(Span shown, const Zone& zone, double left, double right,
                                    const TextWidth& width);

} // namespace holdband::ui
