// Draws single controls for the house style. Rectangles are in the widget's coordinates, in pixels.
#pragma once

#include "ui/theme/colours.h"

class QPainter;
class QStyleOption;

namespace holdband::ui {

/// The background and the edge of a control.
struct ControlLook {
    QColor ground;
    QColor edge;
    double edgeWidth = 1.0;
    double radius = 4.0;
};

/// The edge has the focus colour if the control has the focus, else `quiet`.
ControlLook lookOf(const QStyleOption& option, const Colours& colours, const QColor& ground,
                   const QColor& quiet);

void paintBox(QPainter& painter, const QRect& rect, const ControlLook& look);
void paintTick(QPainter& painter, const QRect& rect, const QColor& colour);
void paintPartTick(QPainter& painter, const QRect& rect, const QColor& colour);
/// A ring, with a dot in it if it is chosen.
void paintRing(QPainter& painter, const QRect& rect, const ControlLook& look, bool chosen,
               const QColor& dot);
/// An arrow that points down, or up.
void paintAngle(QPainter& painter, const QRect& rect, const QColor& colour, bool down);

} // namespace holdband::ui
