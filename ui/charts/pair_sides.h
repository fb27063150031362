// The two sides that a picture compares: their names and colours.
#pragma once

#include "ui/theme/colours.h"

#include <QString>

namespace holdband::ui {

struct PairSides {
    QString a;
    QString b;
    int colourA = 0; ///< of setupColour
    int colourB = 1;

    /// For lines, bars and dots.
    QColor colour(bool first, const Colours& colours) const
    {
        return setupLine(first ? colourA : colourB, colours);
    }
    QColor text(bool first, const Colours& colours) const
    {
        return setupText(first ? colourA : colourB, colours);
    }
};

/// A's line is solid, B's dashed, so that the difference does not depend on colour alone.
inline Qt::PenStyle penStyle(bool first)
{
    return first ? Qt::SolidLine : Qt::DashLine;
}

} // namespace holdband::ui
