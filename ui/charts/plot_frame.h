// A plain plot for pictures of a few dozen points: heading, value axis, and the conversion of
// values to coordinates.
#pragma once

#include "ui/charts/pair_sides.h"
#include "ui/charts/panel_art.h"
#include "ui/charts/picture.h"

namespace holdband::ui {

class PlotFrame {
public:
    /// `box` contains heading, axis and plot.
    PlotFrame(QPainter& painter, QRectF box, ValueRange range, const PictureLook& look);

    /// Leaves space right of the plot, for labels at the ends of lines.
    void leaveRight(double width);
    /// Leaves space below the plot for lines of small text.
    void leaveBelow(int lines);
    /// The range from the plot's left to its right edge.
    void setAcross(ValueRange across) { m_across = across; }
    const QRectF& plot() const { return m_plot; }
    QFont small() const { return smallFont(m_look.font); }
    QFont bold() const;
    double x(double value) const;
    double y(double value) const;

    void paintHeading(const QString& heading, const QString& remark = {});
    /// With the names of both sides, each after a square in its colour, before the remark. Names
    /// that are too long are shortened.
    void paintHeading(const QString& heading, const PairSides& sides, const QString& remark);
    void paintValueAxis();
    /// Days of elapsed time along the bottom.
    void paintDays(double hours);
    /// Values along the bottom, and a label below them.
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

/// Moves two label heights apart if they are closer than `least`, each by the same amount.
void separateLabels(double& a, double& b, double least);

} // namespace holdband::ui
