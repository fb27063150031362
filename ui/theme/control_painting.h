// Draws single controls for the house style. Rectangles are those of the widget, in its pixels.
#pragma once

#include "ui/theme/colours.h"

class QPainter;
class QStyleOption;

namespace holdband::ui {

/// Of what a control is drawn: its ground and its edge.
struct ControlLook {
    QColor ground;
    QColor edge;
    double edgeWidth = 1.0;
    double radius = 4.0;
};

/// An edge in the focus's colour where the control has it, in `quiet` else.
ControlLook lookOf(const QStyleOption& option, const Colours& colours, const QColor& ground,
                   const QColor& quiet);

void paintBox(QPainter& painter, const QRect& rect, const ControlLook& look);
void paintTick(QPainter& painter, const QRect& rect, const QColor& colour);
void paintPartTick(QPainter& painter, const QRect& rect, const QColor& colour);
/// A ring with a dot in it where it is chosen.
void paintRing(QPainter& painter, const QRect& rect, const ControlLook& look, bool chosen,
               const QColor& dot);
/// An angle that points down, or up.
void paintAngle(QPainter& painter, const QRect& rect, const QColor& colour, bool down);

} // namespace holdband::ui
