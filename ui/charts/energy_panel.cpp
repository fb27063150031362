#include "ui/charts/energy_panel.h"

#include "ui/charts/drawing.h"

#include <algorithm>
#include <limits>

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

/// Zoomed, the scale follows what is seen: a morning's 0.3 kWh would else be a flat line.
ValueRange EnergyPanel::range() const
{
    if (!m_chart || time().window().showsAll())
        return m_range;
    const Span seen = time().shown();
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    const auto take = [&](double value) {
        low = std::min(low, value);
        high = std::max(high, value);
    };
    const auto takeAt = [&](double ms) {
        if (const auto kwh = energyAt(*m_chart, ms))
            take(*kwh);
        if (const auto bounds = boundsAt(*m_chart, ms)) {
            take(bounds->low);
            take(std::min(bounds->high, m_range.high));
        }
    };
    takeAt(m_chart->msOf(seen.start));
    takeAt(m_chart->msOf(seen.end));
    for (const EnergyDot& dot : m_chart->energy) {
        if (dot.ms >= m_chart->msOf(seen.start) && dot.ms <= m_chart->msOf(seen.end))
            takeAt(dot.ms);
    }
    if (!(low <= high))
        return m_range;
    const double margin = std::max((high - low) * 0.12, 0.02);
    return {std::max(0.0, low - margin), high + margin};
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

QString EnergyPanel::emptyWords() const
{
    return !m_chart || !m_chart->energy.empty()
               ? QString()
               : QStringLiteral("No meter was read during this batch. Rounds (Alt+1) take its "
                                "readings.");
}

void EnergyPanel::paintBehind(QPainter& painter, const PlotMap& map)
{
    if (!m_chart)
        return;
    for (const Stretch& stretch : m_chart->unmetered)
        painter.fillRect(columnOf(map, *m_chart, stretch), colours().gap);
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
        if (dot.read && !dot.reset)
            painter.drawEllipse(place(map, dot.ms, dot.kwh), 2.6, 2.6);
    }
    for (const EnergyDot& dot : dots) {
        if (dot.reset)
            paintReset(painter, place(map, dot.ms, dot.kwh));
    }
}

/// An open square: the register began anew before this reading.
void EnergyPanel::paintReset(QPainter& painter, QPointF at)
{
    painter.setPen(QPen(colours().energy, 1.6));
    painter.setBrush(colours().card);
    painter.drawRect(QRectF(at.x() - 3.5, at.y() - 3.5, 7.0, 7.0));
}

void EnergyPanel::paintOver(QPainter& painter, const PlotMap& map)
{
    if (!m_chart)
        return;
    painter.setFont(smallFont(*this));
    painter.setPen(colours().muted);
    const QString words = m_chart->energyUnbounded
                              ? QStringLiteral("no ribbon: the most it can have been is unknown")
                              : QStringLiteral("dots: readings · ribbon: the least and the most");
    const bool resets = std::any_of(m_chart->energy.begin(), m_chart->energy.end(),
                                    [](const EnergyDot& dot) { return dot.reset; });
    const QString all = resets ? words + QStringLiteral(" · square: began anew") : words;
    const QFontMetrics metrics(painter.font());
    painter.drawText(
        QPointF(map.plot.right() - metrics.horizontalAdvance(all), 7 + fontMetrics().ascent()),
        all);
    nameStretches(painter, map, *m_chart, m_chart->unmetered, QStringLiteral("not metered"),
                  colours());
}

} // namespace holdband::ui
