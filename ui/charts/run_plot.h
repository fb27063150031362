// One of the three plots of a run, on the run's time axis: the same in the window, on paper and in
// an image. The axis across is in ms since the run's origin. Safe on any thread.
#pragma once

#include "ui/charts/plot.h"
#include "ui/charts/plot_map.h"
#include "ui/charts/run_chart.h"

#include <QFont>

namespace holdband::ui {

/// The part to draw, and the size.
struct PanelPlace {
    QSizeF size;
    Span shown;
    Span all;
    double inset = spacing::card; ///< of the heading
    double top = 0.0;             ///< in a picture of several panels
};

class RunPlot {
public:
    explicit RunPlot(QString heading) : m_heading(std::move(heading)) {}
    virtual ~RunPlot() = default;

    /// `chart` must outlive the plot or the next call.
    virtual void setChart(const RunChart* chart) { m_chart = chart; }
    const RunChart* chart() const { return m_chart; }
    const QString& heading() const { return m_heading; }
    void setHeading(const QString& heading) { m_heading = heading; }
    /// With dates below: normally only the lowest of the panels.
    void setTimeLabels(bool wanted) { m_timeLabels = wanted; }

    Plot plot(const PanelPlace& place, const PictureLook& look) const;
    /// Axes and marks without the lines, which take the longest to make.
    Plot frame(const PanelPlace& place, const PictureLook& look) const;
    PlotMap map(const PanelPlace& place, const QFont& font) const;

protected:
    virtual ValueRange range(const PanelPlace& place) const = 0;
    /// A text in place of an empty plot; empty if there is something to draw.
    virtual QString emptyText() const { return {}; }
    virtual std::vector<PlotKey> key(const PanelPlace&, const PictureLook&) const { return {}; }
    /// Stretches, stages, rings and notes, and labels.
    virtual void addMarks(Plot& plot, const PanelPlace& place) const = 0;
    /// The data. Only with a chart.
    virtual void addData(Plot& plot) const = 0;
    /// Space between heading and plot.
    virtual double headRoom(const QFont&) const { return 7.0; }
    virtual void addUpAxis(Plot& plot) const { plot.addUpAxis(); }

private:
    QRectF areaOf(const PanelPlace& place, const QFont& font) const;
    Plot emptyFrame(const PanelPlace& place, const PictureLook& look) const;
    bool hasContents() const { return m_chart && emptyText().isEmpty(); }
    void addTimes(Plot& plot, const PanelPlace& place) const;

    const RunChart* m_chart = nullptr;
    QString m_heading;
    bool m_timeLabels = false;
};

/// Space right of the plots of a run: the same for all of them, and for the strip below them. Wide
/// enough for the names of the lines at their ends, if a panel is wide enough for that.
double endRoom(const RunChart* chart, const QFont& font, double width);

/// The part of a run that is shown, in ms since its origin.
ValueRange shownMs(const RunChart& chart, Span shown);

} // namespace holdband::ui
