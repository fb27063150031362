// Draws a plot's series by Qt Charts. The only file that includes Qt Charts is the one behind this
// header.
#pragma once

#include <QPainter>

namespace holdband::ui {

class Plot;

/// On any thread. A chart exists only on the window's thread, so another thread waits until it is
/// drawn there; it must not be one for which the window's thread waits without serveGuiWork().
/// Needs a QApplication. Text is not drawn here: recorded on one thread and drawn on another, its
/// letters would be placed differently.
void drawSeries(QPainter& painter, const Plot& plot);

} // namespace holdband::ui
