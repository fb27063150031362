#include "ui/charts/deviation_plot.h"

#include "ui/charts/temperature_plot.h"
#include "ui/charts/ticks.h"
#include "ui/charts/track_series.h"
#include "ui/words/words.h"

#include <QFontMetricsF>
#include <algorithm>

namespace holdband::ui {

namespace {

double widestTolerance(const RunChart& chart)
{
    double widest = 0.0;
    for (const BandPiece& band : chart.bands)
        widest = std::max(widest, band.tolerance);
    return widest > 0.0 ? widest : 1.0;
}

} // namespace

ValueRange deviationRange(const RunChart& chart, Span shown)
{
    const double widest = widestTolerance(chart);
    const ValueRange ms = shownMs(chart, shown);
    ValueRange range{-1.7 * widest, 1.7 * widest};
    for (const ExcursionMark& mark : chart.excursions) {
        if (mark.time.toMs < ms.low || mark.time.fromMs > ms.high)
            continue;
        range.low = std::min(range.low, mark.peakDeviation * 1.12);
        range.high = std::max(range.high, mark.peakDeviation * 1.12);
    }
    range.low = std::max(range.low, -8.0 * widest);
    range.high = std::min(range.high, 8.0 * widest);
    return range;
}

DeviationPlot::DeviationPlot() : RunPlot(Words::tr("Deviation from target")) {}

ValueRange DeviationPlot::range(const PanelPlace& place) const
{
    return deviationRange(*chart(), place.shown);
}

/// In a low panel only the target and the edges of the band.
void DeviationPlot::addUpAxis(Plot& plot) const
{
    const double line = 1.9 * QFontMetricsF(plot.small()).height();
    const int most = static_cast<int>(plot.area().height() / line);
    const double widest = widestTolerance(*chart());
    const std::vector<double> edges{-widest, 0.0, widest};
    plot.addUpTicks(most < 6 ? edges : axisTicks(plot.up().low, plot.up().high, most), true);
}

QString DeviationPlot::emptyText() const
{
    return !chart() || chart()->hasDeviation()
               ? QString()
               : Words::tr("Appears after the first reading of the beer.");
}

void DeviationPlot::addMarks(Plot& plot, const PanelPlace&) const
{
    addStretches(plot, *chart(), false);
}

void DeviationPlot::addData(Plot& plot) const
{
    std::vector<QPolygonF> bands;
    for (const BandPiece& band : chart()->bands)
        bands.push_back(
            {{QPointF(band.time.fromMs, band.tolerance), QPointF(band.time.toMs, band.tolerance),
              QPointF(band.time.toMs, -band.tolerance),
              QPointF(band.time.fromMs, -band.tolerance)}});
    if (!bands.empty())
        plot.addArea(joinedAreas(bands), plot.colours().band);
    for (const ExcursionMark& mark : chart()->excursions)
        addOutside(plot, mark);
    plot.addLevel(0.0, QPen(plot.colours().target, 1.0, Qt::DashLine));
    for (std::size_t i = 0; i < chart()->deviation.size(); ++i)
        addTrack(plot, chart()->deviation[i], chart()->deviationPyramids[i],
                 QPen(setupLine(chart()->setup, plot.colours()), 1.5));
}

/// The area between the curve and the edge that it crossed.
void DeviationPlot::addOutside(Plot& plot, const ExcursionMark& mark) const
{
    const double from = std::max(mark.time.fromMs, plot.across().low);
    const double to = std::min(mark.time.toMs, plot.across().high);
    if (!(to > from))
        return;
    const auto beyond = [&](double deviation) {
        return mark.above ? std::max(deviation, mark.edgeDeviation)
                          : std::min(deviation, mark.edgeDeviation);
    };
    const int columns = std::max(2, static_cast<int>(plot.x(to) - plot.x(from)));
    for (std::size_t i = 0; i < chart()->deviation.size(); ++i) {
        for (const Polyline& line :
             decimate(chart()->deviation[i], from, to, columns, &chart()->deviationPyramids[i])) {
            QPolygonF outline{QPointF(from, mark.edgeDeviation)};
            for (const DrawnPoint& point : line) {
                if (point.ms >= from && point.ms <= to)
                    outline << QPointF(point.ms, beyond(point.value));
            }
            outline << QPointF(to, mark.edgeDeviation);
            plot.marks().fills.push_back({std::move(outline), plot.colours().excursionFill,
                                          QPen(plot.colours().excursion, 1.0)});
        }
    }
}

} // namespace holdband::ui
