// The tracks of a run as series of a plot whose axis across is in ms: a few points for each column,
// interrupted where nothing is known.
#pragma once

#include "ui/charts/plot.h"
#include "ui/charts/run_chart.h"

namespace holdband::ui {

/// The columns of points for a plot.
int columnsOf(const Plot& plot);

/// `pen`: while the axis is moving it is one pixel wide.
void addTrack(Plot& plot, const analysis::Track& track, const TrackPyramid& pyramid, QPen pen);

/// Several areas that don't overlap, as one.
QPolygonF joinedAreas(const std::vector<QPolygonF>& areas);

/// Points in order across, of which none is lost that could be told from its neighbours if values
/// only grow: the first and the last one of each column, and those beside the plot.
QPolygonF thinned(const Plot& plot, const QPolygonF& points, double columnWidth = 1.0);

} // namespace holdband::ui
