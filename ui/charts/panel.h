// One panel of a chart: card, heading, axes, crosshair, and the mouse and keys that move the shared
// time axis. The derived panel draws the contents, once for each change (cached as a picture; while
// the pointer moves only the crosshair is drawn again). All panels have the same plot edges.
#pragma once

#include "ui/charts/run_plot.h"
#include "ui/charts/time_view.h"

#include <QPixmap>
#include <QTimer>
#include <QWidget>

namespace holdband::ui {

class ChartPanel : public QWidget {
    Q_OBJECT
public:
    explicit ChartPanel(TimeView& time, QWidget* parent = nullptr);

    /// `chart` must outlive the panel or the next call.
    void setChart(const RunChart* chart);
    void setHeading(const QString& heading);
    /// With dates below: normally only the lowest of the panels.
    void setTimeLabels(bool wanted);
    const TimeView& time() const { return *m_time; }
    PlotMap map() const;

protected:
    /// What the panel draws.
    virtual RunPlot& plot() = 0;
    virtual const RunPlot& plot() const = 0;
    PanelPlace place() const;
    PictureLook look() const;

    void dataChanged();

    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void shownMoved();
    void renderPicture();
    void paintCrosshair(QPainter& painter, const PlotMap& map);
    void paintMark(QPainter& painter, const PlotMap& map);
    Instant instantInside(double x) const;

    TimeView* m_time;
    QPixmap m_picture;
    QTimer m_settle;
    bool m_stale = true;
    bool m_dragging = false;
    bool m_markDragging = false;
    double m_dragX = 0.0;
};

} // namespace holdband::ui
