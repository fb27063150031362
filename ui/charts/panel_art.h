// Draws one panel of a chart without a widget: the same on the screen, on paper and in an image.
// Draws on any thread on which its device can be used.
#pragma once

#include "ui/charts/run_chart.h"
#include "ui/charts/value_range.h"
#include "ui/theme/colours.h"

#include <QFont>
#include <QPainter>
#include <QPen>
#include <optional>

namespace holdband::ui {

/// Converts instants and values to coordinates in the panel.
struct PlotMap {
    QRectF plot;
    Span shown;
    ValueRange range;

    double x(Instant at) const;
    double y(double value) const;
    Instant instantAt(double x) const;
};

/// How a panel is drawn.
struct PanelLook {
    const Colours* colours = nullptr;
    QFont font; ///< of the heading; ticks and remarks are a little smaller
    /// The axis is moving: draw quickly, a finer drawing follows.
    bool moving = false;
    /// Vector output: lines are not split, and are clipped at the plot's edge by geometry, because
    /// not every such device clips.
    bool vectors = false;
    double columns = 1.0; ///< columns of points per unit of width
    double headingLeft = spacing::card;
};

/// The part to draw, and the size.
struct PanelPlace {
    QSizeF size;
    Span shown;
    Span all;
};

/// The label of a line in the panel, next to a sample of it; without a pen only the label.
struct KeyEntry {
    QString words;
    std::optional<QPen> pen;
};

/// Shared by the parts of one drawing.
struct PanelCanvas {
    QPainter& painter;
    PlotMap map;
    const PanelLook& look;

    const Colours& colours() const { return *look.colours; }
};

class PanelArt {
public:
    explicit PanelArt(QString heading) : m_heading(std::move(heading)) {}
    virtual ~PanelArt() = default;

    /// `chart` must outlive the panel or the next call.
    virtual void setChart(const RunChart* chart);
    const RunChart* chart() const { return m_chart; }
    const QString& heading() const { return m_heading; }
    void setHeading(const QString& heading) { m_heading = heading; }
    /// With dates below: normally only the lowest of the panels.
    void setTimeLabels(bool wanted) { m_timeLabels = wanted; }

    PlotMap map(const PanelPlace& place, const QFont& font) const;
    void paint(QPainter& painter, const PanelPlace& place, const PanelLook& look) const;

    /// Space left of the plot, for the values' labels; the same for all panels.
    static constexpr int leftMargin = 52;
    static constexpr int rightMargin = 14;

protected:
    virtual ValueRange range(const PanelPlace& place) const = 0;
    /// A text in place of an empty plot; empty if there is something to draw.
    virtual QString emptyText() const { return {}; }
    virtual std::vector<KeyEntry> key(const Colours&) const { return {}; }
    /// Drawn behind the grid, clipped to the plot.
    virtual void paintBehind(PanelCanvas& canvas) const = 0;
    /// The data, clipped to the plot.
    virtual void paintData(PanelCanvas& canvas) const = 0;
    /// Marks and labels on top of everything, not clipped.
    virtual void paintOver(PanelCanvas&) const {}
    /// Space between heading and plot.
    virtual double headRoom(const QFont&) const { return 7.0; }
    virtual std::vector<double> ticksOf(ValueRange range, int most) const;

private:
    QRectF plotRect(const PanelPlace& place, const QFont& font) const;
    bool keyBeneath(const PanelPlace& place, const QFont& font) const;
    void paintHeading(QPainter& painter, const PanelLook& look) const;
    void paintKey(PanelCanvas& canvas, const PanelPlace& place) const;
    void paintPlot(PanelCanvas& canvas, const PanelPlace& place) const;
    void paintValueAxis(PanelCanvas& canvas) const;
    void paintTimeAxis(PanelCanvas& canvas, const PanelPlace& place) const;
    void paintElapsed(PanelCanvas& canvas, const PanelPlace& place) const;

    const RunChart* m_chart = nullptr;
    QString m_heading;
    bool m_timeLabels = false;
};

/// A smaller font for ticks and remarks.
QFont smallFont(const QFont& font);

} // namespace holdband::ui
