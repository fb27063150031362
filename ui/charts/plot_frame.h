// A plain plot for pictures of a few dozen points: heading, value axis, and where things stand.
#pragma once

#include "ui/charts/pair_sides.h"
#include "ui/charts/panel_art.h"
#include "ui/charts/picture.h"

namespace holdband::ui {

class PlotFrame {
public:
    /// `box`: heading, axis and plot all lie in it.
    PlotFrame(QPainter& painter, QRectF box, ValueRange range, const PictureLook& look);

    /// Room right of the plot, for words at the ends of lines.
    void leaveRight(double width);
    /// Room under the plot for lines of small words.
    void leaveBelow(int lines);
    /// What the plot shows from its left to its right edge.
    void setAcross(ValueRange across) { m_across = across; }
    const QRectF& plot() const { return m_plot; }
    QFont small() const { return smallFont(m_look.font); }
    QFont bold() const;
    double x(double value) const;
    double y(double value) const;

    void paintHeading(const QString& heading, const QString& remark = {});
    /// With the names of both, each behind a square of its colour, before the remark. Names that
    /// are too long are cut.
    void paintHeading(const QString& heading, const PairSides& sides, const QString& remark);
    void paintValueAxis();
    /// Days of elapsed time along the bottom.
    void paintDays(double hours);
    /// Values along the bottom, and beneath them what they are.
    void paintAcross(const QString& words = {});

private:
    double paintSide(double x, double base, bool first, const PairSides& sides,
                     const QString& name);

    QPainter& m_painter;
    QRectF m_box;
    QRectF m_plot;
    ValueRange m_range;
    ValueRange m_across;
    const PictureLook& m_look;
};

/// Moves two heights of words apart where they are closer than `least`, each by the same.
void keepApart(double& a, double& b, double least);

} // namespace holdband::ui
