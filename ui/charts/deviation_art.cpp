#include "ui/charts/deviation_art.h"

#include "ui/charts/drawing.h"
#include "ui/words/words.h"

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

ValueRange deviationRange(const RunChart& chart)
{
    const double widest = widestTolerance(chart);
    ValueRange range{-1.7 * widest, 1.7 * widest};
    for (const ExcursionMark& mark : chart.excursions) {
        range.low = std::min(range.low, mark.peakDeviation * 1.12);
        range.high = std::max(range.high, mark.peakDeviation * 1.12);
    }
    range.low = std::max(range.low, -8.0 * widest);
    range.high = std::min(range.high, 8.0 * widest);
    return range;
}

DeviationArt::DeviationArt() : PanelArt(Words::tr("Deviation from target")) {}

void DeviationArt::setChart(const RunChart* chart)
{
    PanelArt::setChart(chart);
    m_range = chart ? deviationRange(*chart) : ValueRange{-1.0, 1.0};
    m_widest = chart ? widestTolerance(*chart) : 0.5;
}

std::vector<double> DeviationArt::ticksOf(ValueRange range, int most) const
{
    if (most < 6)
        return {-m_widest, 0.0, m_widest};
    return PanelArt::ticksOf(range, most);
}

QString DeviationArt::emptyText() const
{
    const bool any =
        chart() && std::any_of(chart()->deviation.begin(), chart()->deviation.end(),
                               [](const analysis::Track& track) { return !track.empty(); });
    return any || !chart() ? QString() : Words::tr("Appears after the first reading of the beer.");
}

void DeviationArt::paintBehind(PanelCanvas& canvas) const
{
    if (!chart())
        return;
    drawStretches(canvas, *chart());
    for (const BandPiece& band : chart()->bands) {
        QRectF box = columnOf(canvas.map, *chart(), band.time);
        box.setTop(canvas.map.y(band.tolerance));
        box.setBottom(canvas.map.y(-band.tolerance));
        canvas.painter.fillRect(box & canvas.map.plot, canvas.colours().band);
    }
}

void DeviationArt::paintData(PanelCanvas& canvas) const
{
    if (!chart())
        return;
    const PlotMap& map = canvas.map;
    for (const ExcursionMark& mark : chart()->excursions)
        paintOutside(canvas, mark);
    canvas.painter.setPen(QPen(canvas.colours().target, 1.0, Qt::DashLine));
    canvas.painter.drawLine(QPointF(map.plot.left(), map.y(0.0)),
                            QPointF(map.plot.right(), map.y(0.0)));
    for (std::size_t i = 0; i < chart()->deviation.size(); ++i)
        drawTrack(canvas, *chart(), chart()->deviation[i], chart()->deviationPyramids[i],
                  QPen(canvas.colours().beer, 1.5));
}

/// The area between the curve and the edge that it crossed.
void DeviationArt::paintOutside(PanelCanvas& canvas, const ExcursionMark& mark) const
{
    const PlotMap& map = canvas.map;
    const double from = std::max(mark.time.fromMs, chart()->msOf(map.shown.start));
    const double to = std::min(mark.time.toMs, chart()->msOf(map.shown.end));
    if (!(to > from))
        return;
    const auto place = [&](double ms, double deviation) {
        const double beyond = mark.above ? std::max(deviation, mark.edgeDeviation)
                                         : std::min(deviation, mark.edgeDeviation);
        return QPointF(map.x(chart()->instantOf(ms)), map.y(beyond));
    };
    canvas.painter.setPen(QPen(canvas.colours().excursion, 1.0)); // so that a short one is visible
    canvas.painter.setBrush(canvas.colours().excursionFill);
    const int columns = std::max(2, static_cast<int>(columnOf(map, *chart(), {from, to}).width()));
    for (std::size_t i = 0; i < chart()->deviation.size(); ++i) {
        for (const Polyline& line :
             decimate(chart()->deviation[i], from, to, columns, &chart()->deviationPyramids[i])) {
            QPolygonF area{place(from, mark.edgeDeviation)};
            for (const DrawnPoint& point : line) {
                if (point.ms >= from && point.ms <= to)
                    area << place(point.ms, point.value);
            }
            area << place(to, mark.edgeDeviation);
            drawArea(canvas, area);
        }
    }
}

} // namespace holdband::ui
