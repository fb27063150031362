#include "ui/charts/run_plot.h"

#include "ui/charts/ticks.h"
#include "ui/words/words.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double rightMargin = 14.0;

std::vector<PlotTick> placed(const std::vector<TimeTick>& ticks, const RunChart& chart)
{
    std::vector<PlotTick> all;
    for (const TimeTick& tick : ticks)
        all.push_back({chart.msOf(tick.at), shown(tick.label), tick.midnight});
    return all;
}

} // namespace

double PlotMap::x(Instant at) const
{
    const double all = static_cast<double>((shown.end - shown.start).count());
    const double since = static_cast<double>((at - shown.start).count());
    return plot.left() + (all > 0.0 ? since / all : 0.0) * plot.width();
}

double PlotMap::y(double value) const
{
    return plot.bottom() - (value - range.low) / (range.high - range.low) * plot.height();
}

Instant PlotMap::instantAt(double x) const
{
    const double share = plot.width() > 0.0 ? (x - plot.left()) / plot.width() : 0.0;
    return shown.start + std::chrono::round<Milliseconds>((shown.end - shown.start) * share);
}

ValueRange shownMs(const RunChart& chart, Span shown)
{
    return {chart.msOf(shown.start), chart.msOf(shown.end)};
}

double endRoom(const RunChart* chart, const QFont& font, double width)
{
    constexpr double gap = 6.0;         // from the end of a line to its name
    constexpr double leastPlot = 420.0; // below this the plot needs all the space
    double widest = 0.0;
    if (chart) {
        QFont bold = smallFont(font);
        bold.setWeight(QFont::DemiBold);
        const QFontMetricsF metrics(bold);
        for (const ChartLine& line : chart->lines)
            widest = std::max(widest, metrics.horizontalAdvance(shown(line.name)));
    }
    const double room = std::ceil(widest + 2.0 * gap); // columns of whole pixels
    const bool fits = width - Plot::leftMargin - room >= leastPlot && room <= width / 6.0;
    return fits ? std::max(rightMargin, room) : rightMargin;
}

QRectF RunPlot::areaOf(const PanelPlace& place, const QFont& font) const
{
    const double line = QFontMetricsF(font).height();
    const double smallLine = QFontMetricsF(smallFont(font)).height();
    const double top = 8.0 + line + headRoom(font);
    const double bottom = m_timeLabels ? 2.0 * smallLine + 10.0 : 9.0; // dates, and elapsed days
    const double right = endRoom(m_chart, font, place.size.width());
    return {static_cast<double>(Plot::leftMargin), place.top + top,
            std::max(10.0, place.size.width() - Plot::leftMargin - right),
            std::max(10.0, place.size.height() - top - bottom)};
}

/// Area and ranges only: every move of the pointer asks for these.
Plot RunPlot::emptyFrame(const PanelPlace& place, const PictureLook& look) const
{
    constexpr double above = 3.0;
    Plot plot({0.0, place.top + above, place.size.width(), place.size.height() - above}, look);
    plot.setInset(place.inset);
    plot.setArea(areaOf(place, look.font));
    if (!hasContents())
        return plot;
    if (plot.isKeyBelow(m_heading, key(place, look))) {
        const double line = QFontMetricsF(plot.small()).height() + 2.0;
        plot.setArea(plot.area().adjusted(0.0, line, 0.0, 0.0));
    }
    plot.setRanges(shownMs(*m_chart, place.shown), range(place));
    return plot;
}

Plot RunPlot::frame(const PanelPlace& place, const PictureLook& look) const
{
    Plot plot = emptyFrame(place, look);
    if (!hasContents()) {
        plot.setHeading(m_heading);
        plot.setEmptyText(emptyText());
        return plot;
    }
    plot.setHeading(m_heading, key(place, look));
    addUpAxis(plot);
    addTimes(plot, place);
    addMarks(plot, place);
    return plot;
}

Plot RunPlot::plot(const PanelPlace& place, const PictureLook& look) const
{
    Plot plot = frame(place, look);
    if (hasContents())
        addData(plot);
    return plot;
}

PlotMap RunPlot::map(const PanelPlace& place, const QFont& font) const
{
    PictureLook look;
    look.font = font;
    const Plot plot = emptyFrame(place, look);
    return {plot.area(), place.shown, plot.up()};
}

void RunPlot::addTimes(Plot& plot, const PanelPlace& place) const
{
    const double width = plot.area().width();
    const int most = std::max(2, static_cast<int>(width / 78.0));
    std::vector<PlotTick> times = placed(timeTicks(place.shown, m_chart->zone, most), *m_chart);
    if (!m_timeLabels) {
        for (PlotTick& tick : times)
            tick.label.clear();
        return plot.addTimes(std::move(times), {});
    }
    const int mostElapsed = std::max(2, static_cast<int>(width / 64.0));
    plot.addTimes(std::move(times),
                  placed(elapsedTicks(place.shown, place.all.start, mostElapsed), *m_chart));
}

} // namespace holdband::ui
