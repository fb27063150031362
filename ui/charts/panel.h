// One panel of a chart: card, heading, axes, crosshair, and the mouse and keys that move the shared
// time axis. What is inside is drawn by the derived panel, once for each change (kept as a picture;
// only the crosshair is drawn anew while the pointer moves). All panels have the same plot edges.
#pragma once

#include "ui/charts/time_view.h"
#include "ui/theme/colours.h"

#include "core/text/zone.h"

#include <QPixmap>
#include <QTimer>
#include <QWidget>
#include <functional>

namespace holdband::ui {

struct ValueRange {
    double low = 0.0;
    double high = 1.0;
};

/// From instants and values to places in the widget.
struct PlotMap {
    QRectF plot;
    Span shown;
    ValueRange range;

    double x(Instant at) const;
    double y(double value) const;
    Instant instantAt(double x) const;
};

class ChartPanel : public QWidget {
    Q_OBJECT
public:
    ChartPanel(TimeView& time, const QString& title, QWidget* parent = nullptr);

    void setHeading(const QString& heading);
    void setZone(const Zone& zone);
    /// With dates beneath: as a rule only the lowest of the panels.
    void setTimeLabels(bool wanted);
    const TimeView& time() const { return *m_time; }
    PlotMap map() const;

    /// Room left of the plot, for the values' labels; the same for all panels.
    static constexpr int leftMargin = 52;
    static constexpr int rightMargin = 14;

protected:
    virtual ValueRange range() const = 0;
    /// What to say in the place of a plot with nothing in it; empty where there is something.
    virtual QString emptyWords() const { return {}; }
    /// Behind the grid, clipped to the plot.
    virtual void paintBehind(QPainter& painter, const PlotMap& map) = 0;
    /// The data, clipped to the plot.
    virtual void paintData(QPainter& painter, const PlotMap& map) = 0;
    /// Marks and words over everything, not clipped.
    virtual void paintOver(QPainter& painter, const PlotMap& map);
    /// Room between heading and plot.
    virtual int headRoom() const { return 4; }
    virtual std::vector<double> ticksOf(ValueRange range, int most) const;

    const Colours& colours() const { return coloursOf(*this); }
    void dataChanged();
    /// The axis was moved a moment ago: draw quickly, the finer drawing follows.
    bool moving() const { return m_settle.isActive(); }

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
    QRectF plotRect() const;
    void shownMoved();
    void renderPicture();
    void paintHeading(QPainter& painter);
    void paintPlot(QPainter& painter);
    void paintValueAxis(QPainter& painter, const PlotMap& map);
    void paintTimeAxis(QPainter& painter, const PlotMap& map);
    void paintElapsed(QPainter& painter, const PlotMap& map);
    void paintCrosshair(QPainter& painter, const PlotMap& map);

    TimeView* m_time;
    QString m_heading;
    Zone m_zone;
    bool m_timeLabels = false;
    QPixmap m_picture;
    QTimer m_settle;
    bool m_stale = true;
    bool m_dragging = false;
    double m_dragX = 0.0;
};

/// A smaller font for ticks and remarks.
QFont smallFont(const QWidget& widget);

} // namespace holdband::ui
