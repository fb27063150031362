// What a plot marks besides its series, as plain values: stretches of time, stages, excursions,
// remarks. Qt Charts has no series for these, so they are painted behind and over the chart.
#pragma once

#include <QPainter>
#include <QPen>
#include <QPolygonF>
#include <QString>
#include <vector>

namespace holdband::ui {

class Plot;

enum class Shading {
    plain,   ///< nothing is known
    slanted, ///< settling
    upright  ///< left out by hand; nothing else uses upright lines
};

/// A stretch of the axis across over the full height, behind everything else.
struct PlotStretch {
    double from = 0.0;
    double to = 0.0;
    Shading shading = Shading::plain;
    QString name = {}; ///< at its bottom, where it is wide enough

    bool operator==(const PlotStretch&) const = default;
};

/// A closed area behind the series, with an outline so that a narrow one is visible.
struct PlotFill {
    QPolygonF outline;
    QColor fill;
    QPen edge;
};

/// A box above the plot.
struct PlotStage {
    double from = 0.0;
    double to = 0.0;
    QString label;
};

struct PlotRing {
    QPointF at;
    QString label = {}; ///< next to it, if the ring before leaves enough space
};

/// A small box with a number at the bottom of the plot, and a line up from it.
struct PlotNote {
    double at = 0.0;
    QString label;
};

struct PlotMarks {
    std::vector<PlotStretch> stretches;
    std::vector<PlotFill> fills;
    std::vector<PlotStage> stages;
    std::vector<PlotRing> rings;
    std::vector<PlotNote> notes;
};

/// Inside the plot: stretches and fills.
void paintMarksBehind(QPainter& painter, const Plot& plot);
/// The names of the stretches, stages, notes and rings.
void paintMarksOver(QPainter& painter, const Plot& plot);

/// The box of a note, in the picture's units.
QRectF noteBox(const Plot& plot, std::size_t note);
/// The index of the ring at a place of the picture; -1 if there is none.
int ringAt(const Plot& plot, QPointF place);
/// The space that the stages need above the plot.
double stageHeight(const QFont& small);

} // namespace holdband::ui
