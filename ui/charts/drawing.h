// Strokes that several panels share.
#pragma once

#include "ui/charts/panel_art.h"

namespace holdband::ui {

/// A track as lines, a few points for each column, broken where nothing is known. While the axis is
/// moving the lines are plain: one pixel wide, not smoothed.
void drawTrack(PanelCanvas& canvas, const RunChart& chart, const analysis::Track& track,
               const TrackPyramid& pyramid, const QPen& pen);

/// With the painter's pen, inside the plot.
void drawOpenLine(PanelCanvas& canvas, const QPolygonF& line);
/// With the painter's pen and brush, inside the plot.
void drawArea(PanelCanvas& canvas, const QPolygonF& area);

/// A stretch of time as an upright rectangle over the whole plot.
QRectF columnOf(const PlotMap& map, const RunChart& chart, const Stretch& stretch);

/// Gaps shaded, settling hatched, what was left out by hand with upright lines.
void drawStretches(PanelCanvas& canvas, const RunChart& chart);

/// What stretches are, at their foot, where they are wide enough for it.
void nameStretches(PanelCanvas& canvas, const RunChart& chart,
                   const std::vector<Stretch>& stretches, const QString& words);

} // namespace holdband::ui
