// What one plot shows, as plain values: ranges, series, ticks and labels. Pictures fill it, tests
// read it, and draw() gives the series to a chart (see chart_scene.h). Safe on any thread.
//
// "across" is the horizontal axis, "up" the vertical one. Series are in the axes' units; labels are
// placed in the picture's own units.
#pragma once

#include "ui/charts/pair_sides.h"
#include "ui/charts/picture.h"
#include "ui/charts/plot_marks.h"
#include "ui/charts/value_range.h"
#include "ui/theme/type_scale.h"

#include <QPen>
#include <QPolygonF>
#include <optional>
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

enum class DotShape { disc, square, diamond, triangle, star, pentagon };

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
    bool strong = false; ///< a midnight

    bool operator==(const PlotTick&) const = default;
};

/// The name of a line, next to a sample of it; without a pen only the name.
struct PlotKey {
    QString text;
    std::optional<QPen> pen;
};

enum class LabelFont { small, bold, plain };

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
    /// Space left of the plot, for the values' labels.
    static constexpr int leftMargin = 52;

    /// `box` contains heading, axes and plot.
    Plot(QRectF box, const PictureLook& look);

    /// Leaves space right of the plot, for labels at the ends of lines.
    void leaveRight(double width);
    /// Leaves space below the plot for lines of small text.
    void leaveBelow(int lines);
    void setArea(const QRectF& area) { m_area = area; }
    void setRanges(ValueRange across, ValueRange up);
    /// From the box's left edge to the heading.
    void setInset(double inset) { m_inset = inset; }
    /// With it the plot has nothing but its heading and this text.
    void setEmptyText(const QString& text) { m_emptyText = text; }

    void setHeading(const QString& heading, const QString& remark = {});
    /// With the names of both sides, each after a square in its colour, before the remark. Names
    /// that are too long are shortened.
    void setHeading(const QString& heading, const PairSides& sides, const QString& remark);
    /// With the names of lines at the right of the plot, or below the heading; set the area first.
    void setHeading(const QString& heading, const std::vector<PlotKey>& key);
    /// Whether heading and key don't fit side by side.
    bool isKeyBelow(const QString& heading, const std::vector<PlotKey>& key) const;
    void addUpAxis();
    /// `isSigned`: with "+" where positive.
    void addUpTicks(const std::vector<double>& values, bool isSigned = false);
    /// Values along the bottom with lines up to the top, and a label below them.
    void addAcrossAxis(const QString& words = {});
    /// Days of elapsed time along the bottom; the range across is in hours.
    void addDays();
    /// Labels of our own along the bottom, without lines.
    void addAcrossTicks(std::vector<PlotTick> ticks);
    /// Lines at times of day, with their labels along the bottom, and below these elapsed times.
    void addTimes(std::vector<PlotTick> times, std::vector<PlotTick> elapsed);

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

    PlotMarks& marks() { return m_marks; }
    const PlotMarks& marks() const { return m_marks; }

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
    const std::vector<PlotTick>& elapsedTicks() const { return m_elapsedTicks; }
    const QString& emptyText() const { return m_emptyText; }

    QFont small() const;
    QFont bold() const;
    double x(double value) const;
    double y(double value) const;
    /// The lengths in the axes' units of a length in the picture's.
    double acrossOf(double width) const;
    double upOf(double height) const;

    /// Behind the series: stretches of time, the lines of the axes and their labels.
    void paintBehind(QPainter& painter) const;
    /// Over the series: marks, heading and labels.
    void paintOver(QPainter& painter) const;

private:
    double addSide(double x, double base, bool first, const PairSides& sides, const QString& name);
    void paintUpAxis(QPainter& painter) const;
    void paintAcrossAxis(QPainter& painter) const;
    void paintElapsed(QPainter& painter) const;
    void paintTickLabel(QPainter& painter, double x, double base, const QString& label) const;
    void paintEmpty(QPainter& painter) const;
    void paintLabel(QPainter& painter, const PlotLabel& label) const;

    struct Square {
        QRectF box;
        QColor fill;
    };
    struct Sample {
        QLineF line;
        QPen pen;
    };

    QRectF m_box;
    QRectF m_area;
    ValueRange m_across;
    ValueRange m_up;
    PictureLook m_look;
    double m_inset = 2.0;
    QString m_heading;
    QString m_emptyText;
    std::vector<PlotSeries> m_series;
    std::vector<PlotLabel> m_labels;
    std::vector<Square> m_squares; ///< in the heading
    std::vector<Sample> m_samples; ///< in the key
    PlotMarks m_marks;
    std::vector<PlotTick> m_upTicks;
    std::vector<PlotTick> m_acrossTicks;
    std::vector<PlotTick> m_elapsedTicks;
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
