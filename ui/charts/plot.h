// What one plot shows, as plain values: ranges, series, ticks and labels. Pictures fill it, tests
// read it, and draw() gives the series to a chart (see chart_scene.h). Safe on any thread.
//
// "across" is the horizontal axis, "up" the vertical one. Series are in the axes' units; labels are
// placed in the picture's own units.
#pragma once

#include "ui/charts/pair_sides.h"
#include "ui/charts/picture.h"
#include "ui/charts/value_range.h"

#include <QPen>
#include <QPolygonF>
#include <variant>
#include <vector>

namespace holdband::ui {

/// A point that interrupts a line.
inline QPointF lineGap()
{
    return {qQNaN(), qQNaN()};
}

/// An open line, possibly with gaps.
struct PlotLine {
    QPolygonF points;
    QPen pen;
};

/// A closed area without an outline.
struct PlotArea {
    QPolygonF outline;
    QColor fill;
};

enum class DotShape { disc, square };

struct PlotDots {
    QPolygonF points;
    QColor fill;
    DotShape shape = DotShape::disc;
    double size = 6.8; ///< across a dot, in the picture's units
    QPen edge = QPen(Qt::NoPen);
};

struct PlotBar {
    double left = 0.0;
    double right = 0.0;
    double value = 0.0;

    bool operator==(const PlotBar&) const = default;
};

/// Bars that stand on the plot's lowest value, from left to right, not overlapping.
struct PlotBars {
    std::vector<PlotBar> bars;
    QColor fill;
};

using PlotSeries = std::variant<PlotArea, PlotLine, PlotDots, PlotBars>;

struct PlotTick {
    double value = 0.0;
    QString label;
};

enum class LabelFont { small, bold };

/// A text over the series.
struct PlotLabel {
    QString text;
    QPointF at; ///< the left end of its baseline
    QColor colour;
    LabelFont font = LabelFont::small;
    bool veiled = false; ///< on a pale background, where it may cover lines
};

class Plot {
public:
    /// `box` contains heading, axes and plot.
    Plot(QRectF box, const PictureLook& look);

    /// Leaves space right of the plot, for labels at the ends of lines.
    void leaveRight(double width);
    /// Leaves space below the plot for lines of small text.
    void leaveBelow(int lines);
    void setArea(const QRectF& area) { m_area = area; }
    void setRanges(ValueRange across, ValueRange up);

    void setHeading(const QString& heading, const QString& remark = {});
    /// With the names of both sides, each after a square in its colour, before the remark. Names
    /// that are too long are shortened.
    void setHeading(const QString& heading, const PairSides& sides, const QString& remark);
    void addUpAxis();
    /// Values along the bottom with lines up to the top, and a label below them.
    void addAcrossAxis(const QString& words = {});
    /// Days of elapsed time along the bottom; the range across is in hours.
    void addDays();
    /// Labels of our own along the bottom, without lines.
    void addAcrossTicks(std::vector<PlotTick> ticks);

    // Series are drawn in the order of adding.
    void addArea(QPolygonF outline, const QColor& fill);
    void addArea(const QRectF& box, const QColor& fill);
    /// Between two lines, both from left to right.
    void addRibbon(const QPolygonF& upper, const QPolygonF& lower, const QColor& fill);
    void addLine(QPolygonF points, const QPen& pen);
    void addDots(PlotDots dots);
    void addBars(PlotBars bars);
    void addLabel(PlotLabel label);
    /// Left of the plot, in the middle of a row.
    void addRowLabel(double up, const QString& text, const QColor& colour);
    /// From edge to edge of the plot.
    void addUpright(double across, const QPen& pen);
    void addLevel(double up, const QPen& pen);

    void draw(QPainter& painter) const;

    const QRectF& box() const { return m_box; }
    const QRectF& area() const { return m_area; }
    const PictureLook& look() const { return m_look; }
    const Colours& colours() const { return m_look.colours(); }
    ValueRange across() const { return m_across; }
    ValueRange up() const { return m_up; }
    const QString& heading() const { return m_heading; }
    const std::vector<PlotSeries>& series() const { return m_series; }
    const std::vector<PlotLabel>& labels() const { return m_labels; }
    const std::vector<PlotTick>& upTicks() const { return m_upTicks; }
    const std::vector<PlotTick>& acrossTicks() const { return m_acrossTicks; }

    QFont small() const;
    QFont bold() const;
    double x(double value) const;
    double y(double value) const;
    /// The lengths in the axes' units of a length in the picture's.
    double acrossOf(double width) const;
    double upOf(double height) const;

    /// Behind the series: the lines of the axes and their labels.
    void paintAxes(QPainter& painter) const;
    /// Over the series: heading and labels.
    void paintLabels(QPainter& painter) const;

private:
    double addSide(double x, double base, bool first, const PairSides& sides, const QString& name);
    void paintUpAxis(QPainter& painter) const;
    void paintAcrossAxis(QPainter& painter) const;
    void paintLabel(QPainter& painter, const PlotLabel& label) const;

    struct Square {
        QRectF box;
        QColor fill;
    };

    QRectF m_box;
    QRectF m_area;
    ValueRange m_across;
    ValueRange m_up;
    PictureLook m_look;
    QString m_heading;
    std::vector<PlotSeries> m_series;
    std::vector<PlotLabel> m_labels;
    std::vector<Square> m_squares; ///< in the heading
    std::vector<PlotTick> m_upTicks;
    std::vector<PlotTick> m_acrossTicks;
    bool m_acrossLines = false;
};

/// A picture of one or more plots.
class PlotPicture : public Picture {
public:
    virtual std::vector<Plot> plots(QSizeF size, const PictureLook& look) const = 0;
    void paint(QPainter& painter, QSizeF size, const PictureLook& look) const final;
};

/// For areas that lines, and other areas, must show through.
QColor paleOf(QColor colour, int alpha);

/// Moves two label heights apart if they are closer than `least`, each by the same amount.
void separateLabels(double& a, double& b, double least);

} // namespace holdband::ui
