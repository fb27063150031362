#include "ui/charts/deviation_panel.h"

#include "ui/charts/drawing.h"

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

DeviationPanel::DeviationPanel(TimeView& time, QWidget* parent)
    : ChartPanel(time, QStringLiteral("Deviation from target"), parent)
{
    setMinimumHeight(70);
}

void DeviationPanel::setChart(const RunChart* chart)
{
    m_chart = chart;
    m_range = chart ? deviationRange(*chart) : ValueRange{-1.0, 1.0};
    m_widest = chart ? widestTolerance(*chart) : 0.5;
    if (chart)
        setZone(chart->zone);
    dataChanged();
}

std::vector<double> DeviationPanel::ticksOf(ValueRange range, int most) const
{
    if (most < 6)
        return {-m_widest, 0.0, m_widest};
    return ChartPanel::ticksOf(range, most);
}

QString DeviationPanel::emptyWords() const
{
    const bool any =
        m_chart && std::any_of(m_chart->deviation.begin(), m_chart->deviation.end(),
                               [](const analysis::Track& track) { return !track.empty(); });
    return any || !m_chart ? QString()
                           : QStringLiteral("It stands here as soon as the beer is logged.");
}

void DeviationPanel::paintBehind(QPainter& painter, const PlotMap& map)
{
    if (!m_chart)
        return;
    drawStretches(painter, map, *m_chart, colours());
    for (const BandPiece& band : m_chart->bands) {
        QRectF box = columnOf(map, *m_chart, band.time);
        box.setTop(map.y(band.tolerance));
        box.setBottom(map.y(-band.tolerance));
        painter.fillRect(box, colours().band);
    }
}

void DeviationPanel::paintData(QPainter& painter, const PlotMap& map)
{
    if (!m_chart)
        return;
    for (const ExcursionMark& mark : m_chart->excursions)
        paintOutside(painter, map, mark);
    painter.setPen(QPen(colours().target, 1.0, Qt::DashLine));
    painter.drawLine(QPointF(map.plot.left(), map.y(0.0)), QPointF(map.plot.right(), map.y(0.0)));
    for (std::size_t i = 0; i < m_chart->deviation.size(); ++i)
        drawTrack(painter, map, *m_chart, m_chart->deviation[i], m_chart->deviationPyramids[i],
                  QPen(colours().beer, 1.5), moving());
}

/// What lies between the curve and the edge that it crossed.
void DeviationPanel::paintOutside(QPainter& painter, const PlotMap& map, const ExcursionMark& mark)
{
    const double from = std::max(mark.time.fromMs, m_chart->msOf(map.shown.start));
    const double to = std::min(mark.time.toMs, m_chart->msOf(map.shown.end));
    if (!(to > from))
        return;
    const auto place = [&](double ms, double deviation) {
        const double beyond = mark.above ? std::max(deviation, mark.edgeDeviation)
                                         : std::min(deviation, mark.edgeDeviation);
        return QPointF(map.x(m_chart->instantOf(ms)), map.y(beyond));
    };
    painter.setPen(QPen(colours().excursion, 1.0)); // so that a short one is seen at all
    painter.setBrush(colours().excursionFill);
    const int columns = std::max(2, static_cast<int>(columnOf(map, *m_chart, {from, to}).width()));
    for (std::size_t i = 0; i < m_chart->deviation.size(); ++i) {
        for (const Polyline& line :
             decimate(m_chart->deviation[i], from, to, columns, &m_chart->deviationPyramids[i])) {
            QPolygonF area{place(from, mark.edgeDeviation)};
            for (const DrawnPoint& point : line) {
                if (point.ms >= from && point.ms <= to)
                    area << place(point.ms, point.value);
            }
            area << place(to, mark.edgeDeviation);
            painter.drawPolygon(area);
        }
    }
}

} // namespace holdband::ui
