// A narrow strip with the full run and a frame around the part that the panels show: shows the
// position when zoomed, and a click or a drag moves there.
#pragma once

#include "ui/charts/plot.h"
#include "ui/charts/run_chart.h"
#include "ui/charts/time_view.h"

#include <QPixmap>
#include <QWidget>

namespace holdband::ui {

class OverviewStrip : public QWidget {
    Q_OBJECT
public:
    explicit OverviewStrip(TimeView& time, QWidget* parent = nullptr);
    /// `chart` must outlive the strip or the next call.
    void setChart(const RunChart* chart);
    /// The frame around the shown part, in the widget's coordinates.
    QRectF frame() const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QRectF plot() const;
    double x(Instant at) const;
    Instant instantAt(double x) const;
    Plot beerPlot() const;
    void renderPicture();
    void centreOn(double x);

    TimeView* m_time;
    const RunChart* m_chart = nullptr;
    QPixmap m_picture;
    bool m_stale = true;
    double m_grab = 0.0; ///< from the frame's middle to the point where it was grabbed
};

} // namespace holdband::ui
