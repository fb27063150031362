// The setups of a forecast as pictures show them: their names and colours.
#pragma once

#include "core/results/forecast/next_batch.h"
#include "ui/theme/colours.h"
#include "ui/words/words.h"

#include <QString>
#include <vector>

namespace holdband::ui {

struct ForecastSide {
    QString name;
    int colour = 0; ///< of setupColour

    QColor line(const Colours& colours) const { return setupLine(colour, colours); }
    QColor text(const Colours& colours) const { return setupText(colour, colours); }
};

/// In the order of `setups`.
using ForecastSides = std::vector<ForecastSide>;

inline ForecastSides sidesOf(const results::NextBatch& review)
{
    ForecastSides sides;
    for (const results::SetupForecast& setup : review.setups)
        sides.push_back({shown(setup.setup.name), static_cast<int>(setup.place)});
    return sides;
}

} // namespace holdband::ui
