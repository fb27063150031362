// Drawing functions that several panels share.
#pragma once

#include "ui/charts/panel_art.h"

namespace holdband::ui {

/// Draws a track as lines, a few points for each column, interrupted where nothing is known. While
/// the axis is moving the lines are simple: one pixel wide, not antialiased.
void drawTrack(PanelCanvas& canvas, const RunChart& chart, const analysis::Track& track,
               const TrackPyramid& pyramid, const QPen& pen);

/// Uses the painter's pen, inside the plot.
void drawOpenLine(PanelCanvas& canvas, const QPolygonF& line);
/// Uses the painter's pen and brush, inside the plot.
void drawArea(PanelCanvas& canvas, const QPolygonF& area);

/// A stretch of time as a rectangle over the full height of the plot.
QRectF columnOf(const PlotMap& map, const RunChart& chart, const Stretch& stretch);

/// Draws gaps shaded, settling hatched, and parts left out by hand with vertical lines.
void drawStretches(PanelCanvas& canvas, const RunChart& chart);

/// Labels the stretches at the bottom, where they are wide enough.
void nameStretches(PanelCanvas& canvas, const RunChart& chart,
                   const std::vector<Stretch>& stretches, const QString& words);

} // namespace holdband::ui
