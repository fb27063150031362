#include "ui/charts/energy_panel.h"

#include "ui/charts/drawing.h"

namespace holdband::ui {

EnergyPanel::EnergyPanel(TimeView& time, QWidget* parent)
    : ChartPanel(time, QStringLiteral("Energy since pitching, kWh"), parent)
{
    setMinimumHeight(88);
    setTimeLabels(true);
}

void EnergyPanel::setChart(const RunChart* chart)
{
    m_chart = chart;
    double high = 0.0;
    if (chart) {
        setZone(chart->zone);
        for (const EnergyDot& dot : chart->energy)
            high = std::max(high, dot.kwh);
        for (const EnergyBounds& bounds : chart->energyBounds)
            high = std::max(high, std::min(bounds.high, 1.5 * chart->energy.back().kwh));
    }
    m_range = {0.0, high > 0.0 ? high * 1.06 : 1.0};
    dataChanged();
}

QPointF EnergyPanel::place(const PlotMap& map, double ms, double kwh) const
{
    return {map.x(m_chart->instantOf(ms)), map.y(kwh)};
}

void EnergyPanel::paintRibbon(QPainter& painter, const PlotMap& map)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours().energyFill);
    const auto& all = m_chart->energyBounds;
    std::size_t first = 0;
    for (std::size_t i = 1; i <= all.size(); ++i) {
        if (i < all.size() && all[i].joined)
            continue;
        QPolygonF ribbon;
        for (std::size_t k = first; k < i; ++k)
            ribbon << place(map, all[k].ms, all[k].high);
        for (std::size_t k = i; k > first; --k)
            ribbon << place(map, all[k - 1].ms, all[k - 1].low);
        painter.drawPolygon(ribbon);
        first = i;
    }
}

void EnergyPanel::paintBehind(QPainter& painter, const PlotMap& map)
{
    if (!m_chart)
        return;
    painter.setRenderHint(QPainter::Antialiasing);
    paintRibbon(painter, map);
}

void EnergyPanel::paintData(QPainter& painter, const PlotMap& map)
{
    if (!m_chart)
        return;
    painter.setPen(QPen(colours().energy, 1.6));
    const auto& dots = m_chart->energy;
    for (std::size_t i = 1; i < dots.size(); ++i) {
        if (dots[i].joined)
            painter.drawLine(place(map, dots[i - 1].ms, dots[i - 1].kwh),
                             place(map, dots[i].ms, dots[i].kwh));
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours().energy);
    for (const EnergyDot& dot : dots) {
        if (dot.read)
            painter.drawEllipse(place(map, dot.ms, dot.kwh), 2.6, 2.6);
    }
}

void EnergyPanel::paintOver(QPainter& painter, const PlotMap& map)
{
    if (!m_chart)
        return;
    painter.setFont(smallFont(*this));
    painter.setPen(colours().muted);
    const QString words = m_chart->energy.empty()
                              ? QStringLiteral("no meter was read during this batch")
                          : m_chart->energyUnbounded
                              ? QStringLiteral("no ribbon: the most it can have been is unknown")
                              : QStringLiteral("dots: readings · ribbon: the least and the most");
    const QFontMetrics metrics(painter.font());
    painter.drawText(
        QPointF(map.plot.right() - metrics.horizontalAdvance(words), 7 + fontMetrics().ascent()),
        words);
}

} // namespace holdband::ui
