// Strokes that several panels share.
#pragma once

#include "ui/charts/panel.h"
#include "ui/charts/run_chart.h"

#include <QPainter>

namespace holdband::ui {

/// A track as lines, a few points for each pixel column, broken where nothing is known. While the
/// axis is `moving` the lines are plain: one pixel wide, not smoothed.
void drawTrack(QPainter& painter, const PlotMap& map, const RunChart& chart,
               const analysis::Track& track, const TrackPyramid& pyramid, const QPen& pen,
               bool moving);

/// A stretch of time as an upright rectangle over the whole plot.
QRectF columnOf(const PlotMap& map, const RunChart& chart, const Stretch& stretch);

/// Gaps shaded, settling hatched.
void drawStretches(QPainter& painter, const PlotMap& map, const RunChart& chart,
                   const Colours& colours);

/// What stretches are, at their foot, where they are wide enough for it.
void nameStretches(QPainter& painter, const PlotMap& map, const RunChart& chart,
                   const std::vector<Stretch>& stretches, const QString& words,
                   const Colours& colours);

} // namespace holdband::ui
