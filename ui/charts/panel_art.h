// What one panel of a chart draws, with no widget behind it: the same on the screen, on paper and
// in an image. Draws on any thread where its device can be drawn on.
#pragma once

#include "ui/charts/run_chart.h"
#include "ui/theme/colours.h"

#include <QFont>
#include <QPainter>
#include <QPen>
#include <optional>

namespace holdband::ui {

struct ValueRange {
    double low = 0.0;
    double high = 1.0;
};

/// From instants and values to places in the panel.
struct PlotMap {
    QRectF plot;
    Span shown;
    ValueRange range;

    double x(Instant at) const;
    double y(double value) const;
    Instant instantAt(double x) const;
};

/// The manner in which a panel is drawn.
struct PanelLook {
    const Colours* colours = nullptr;
    QFont font; ///< of the heading; ticks and remarks are a little smaller
    /// The axis was moved a moment ago: draw quickly, the finer drawing follows.
    bool moving = false;
    /// As vectors: lines in one piece, and cut at the plot's edge by themselves, since not every
    /// such device clips.
    bool vectors = false;
    double columns = 1.0; ///< how many columns of points a unit of width is good for
    double headingLeft = spacing::card;
};

/// What is drawn, and how large.
struct PanelPlace {
    QSizeF size;
    Span shown;
    Span all;
};

/// What a line of the panel is, in words beside a stroke of it; without a pen words alone.
struct KeyEntry {
    QString words;
    std::optional<QPen> pen;
};

/// All that the parts of one drawing share.
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
    /// With dates beneath: as a rule only the lowest of the panels.
    void setTimeLabels(bool wanted) { m_timeLabels = wanted; }

    PlotMap map(const PanelPlace& place, const QFont& font) const;
    void paint(QPainter& painter, const PanelPlace& place, const PanelLook& look) const;

    /// Room left of the plot, for the values' labels; the same for all panels.
    static constexpr int leftMargin = 52;
    static constexpr int rightMargin = 14;

protected:
    virtual ValueRange range(const PanelPlace& place) const = 0;
    /// What to say in the place of a plot with nothing in it; empty where there is something.
    virtual QString emptyWords() const { return {}; }
    virtual std::vector<KeyEntry> key(const Colours&) const { return {}; }
    /// Behind the grid, clipped to the plot.
    virtual void paintBehind(PanelCanvas& canvas) const = 0;
    /// The data, clipped to the plot.
    virtual void paintData(PanelCanvas& canvas) const = 0;
    /// Marks and words over everything, not clipped.
    virtual void paintOver(PanelCanvas&) const {}
    /// Room between heading and plot.
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
