// A plain plot for pictures of a few dozen points: heading, value axis, and where things stand.
#pragma once

#include "ui/charts/panel_art.h"
#include "ui/report/picture.h"

namespace holdband::report {

class PlotFrame {
public:
    /// `box`: heading, axis and plot all lie in it.
    PlotFrame(QPainter& painter, QRectF box, ui::ValueRange range, const PictureLook& look);

    /// Room right of the plot, for words at the ends of lines.
    void leaveRight(double width);
    /// Room under the plot for lines of small words.
    void leaveBelow(int lines);
    const QRectF& plot() const { return m_plot; }
    QFont small() const { return ui::smallFont(m_look.font); }
    QFont bold() const;
    double y(double value) const;

    void paintHeading(const QString& heading, const QString& remark = {});
    void paintValueAxis();
    /// Days of elapsed time along the bottom.
    void paintDays(double hours);

private:
    QPainter& m_painter;
    QRectF m_box;
    QRectF m_plot;
    ui::ValueRange m_range;
    const PictureLook& m_look;
};

} // namespace holdband::report
