// Labels of days, months or years below the lanes: as many as fit without touching.
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
    bool atEdge = false; ///< it began before the shown part
};

/// `left` and `right`: the pixels at which the shown span begins and ends.
std::vector<PlacedLabel> timeLabels(Span shown, const Zone& zone, double left, double right,
                                    const TextWidth& width);

} // namespace holdband::ui
