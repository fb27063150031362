#include "ui/charts/energy_art.h"

#include "ui/charts/drawing.h"
#include "ui/words/words.h"

#include <algorithm>
#include <limits>

namespace holdband::ui {

EnergyArt::EnergyArt() : PanelArt(Words::tr("Energy since pitching, kWh"))
{
    setTimeLabels(true);
}

void EnergyArt::setChart(const RunChart* chart)
{
    PanelArt::setChart(chart);
    double high = 0.0;
    if (chart) {
        for (const EnergyDot& dot : chart->energy)
            high = std::max(high, dot.kwh);
        for (const EnergyBounds& bounds : chart->energyBounds)
            high = std::max(high, std::min(bounds.high, 1.5 * chart->energy.back().kwh));
    }
    m_range = {0.0, high > 0.0 ? high * 1.06 : 1.0};
}

/// When zoomed, the scale fits the visible part: a morning's 0.3 kWh would otherwise be a flat
/// line.
ValueRange EnergyArt::range(const PanelPlace& place) const
{
    if (!chart() || place.shown == place.all)
        return m_range;
    const Span seen = place.shown;
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    const auto take = [&](double value) {
        low = std::min(low, value);
        high = std::max(high, value);
    };
    const auto takeAt = [&](double ms) {
        if (const auto kwh = energyAt(*chart(), ms))
            take(*kwh);
        if (const auto bounds = boundsAt(*chart(), ms)) {
            take(bounds->low);
            take(std::min(bounds->high, m_range.high));
        }
    };
    takeAt(chart()->msOf(seen.start));
    takeAt(chart()->msOf(seen.end));
    for (const EnergyDot& dot : chart()->energy) {
        if (dot.ms >= chart()->msOf(seen.start) && dot.ms <= chart()->msOf(seen.end))
            takeAt(dot.ms);
    }
    if (!(low <= high))
        return m_range;
    const double margin = std::max((high - low) * 0.12, 0.02);
    return {std::max(0.0, low - margin), high + margin};
}

QPointF EnergyArt::place(const PlotMap& map, double ms, double kwh) const
{
    return {map.x(chart()->instantOf(ms)), map.y(kwh)};
}

void EnergyArt::paintRibbon(PanelCanvas& canvas) const
{
    canvas.painter.setPen(Qt::NoPen);
    canvas.painter.setBrush(canvas.colours().energyFill);
    const auto& all = chart()->energyBounds;
    std::size_t first = 0;
    for (std::size_t i = 1; i <= all.size(); ++i) {
        if (i < all.size() && all[i].joined)
            continue;
        QPolygonF ribbon;
        for (std::size_t k = first; k < i; ++k)
            ribbon << place(canvas.map, all[k].ms, all[k].high);
        for (std::size_t k = i; k > first; --k)
            ribbon << place(canvas.map, all[k - 1].ms, all[k - 1].low);
        drawArea(canvas, ribbon);
        first = i;
    }
}

QString EnergyArt::emptyText() const
{
    return !chart() || !chart()->energy.empty()
               ? QString()
               : Words::tr("No meter was read twice during this batch. Rounds (Alt+1) take its "
                           "readings.");
}

std::vector<KeyEntry> EnergyArt::key(const Colours&) const
{
    if (!chart())
        return {};
    const QString words = chart()->energyUnbounded
                              ? Words::tr("no ribbon: the maximum is unknown")
                              : Words::tr("dots: readings · ribbon: minimum – maximum");
    const bool resets = std::any_of(chart()->energy.begin(), chart()->energy.end(),
                                    [](const EnergyDot& dot) { return dot.reset; });
    return {{resets ? Words::tr("%1 · square: reset to 0").arg(words) : words, std::nullopt}};
}

void EnergyArt::paintBehind(PanelCanvas& canvas) const
{
    if (!chart())
        return;
    for (const Stretch& stretch : chart()->unmetered)
        canvas.painter.fillRect(columnOf(canvas.map, *chart(), stretch) & canvas.map.plot,
                                canvas.colours().gap);
    canvas.painter.setRenderHint(QPainter::Antialiasing);
    paintRibbon(canvas);
}

void EnergyArt::paintData(PanelCanvas& canvas) const
{
    if (!chart())
        return;
    QPainter& painter = canvas.painter;
    const auto& dots = chart()->energy;
    const auto at = [&](const EnergyDot& dot) { return place(canvas.map, dot.ms, dot.kwh); };
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(canvas.colours().energy, 1.6));
    for (std::size_t i = 1; i < dots.size(); ++i) {
        if (dots[i].joined)
            drawOpenLine(canvas, {{at(dots[i - 1]), at(dots[i])}});
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(canvas.colours().energy);
    for (const EnergyDot& dot : dots) {
        if (dot.read && !dot.reset)
            painter.drawEllipse(at(dot), 2.6, 2.6);
    }
    for (const EnergyDot& dot : dots) {
        if (dot.reset)
            paintReset(canvas, at(dot));
    }
}

/// An open square: the register was reset to 0 before this reading.
void EnergyArt::paintReset(PanelCanvas& canvas, QPointF at) const
{
    canvas.painter.setPen(QPen(canvas.colours().energy, 1.6));
    canvas.painter.setBrush(canvas.colours().card);
    canvas.painter.drawRect(QRectF(at.x() - 3.5, at.y() - 3.5, 7.0, 7.0));
}

void EnergyArt::paintOver(PanelCanvas& canvas) const
{
    nameStretches(canvas, *chart(), chart()->unmetered, Words::tr("not metered"));
}

} // namespace holdband::ui
