// The two that a picture compares: what they are called and which colours are theirs.
#pragma once

#include "ui/theme/colours.h"

#include <QString>

namespace holdband::ui {

struct PairSides {
    QString a;
    QString b;
    int colourA = 0; ///< of setupColour
    int colourB = 1;

    /// Of lines, bars and dots.
    QColor colour(bool first, const Colours& colours) const
    {
        return setupLine(first ? colourA : colourB, colours);
    }
    QColor text(bool first, const Colours& colours) const
    {
        return setupText(first ? colourA : colourB, colours);
    }
};

/// A and B on the paths of their own: A's line is whole, B's dashed, so that colour does not stand
/// alone.
inline Qt::PenStyle penStyle(bool first)
{
    return first ? Qt::SolidLine : Qt::DashLine;
}

} // namespace holdband::ui
