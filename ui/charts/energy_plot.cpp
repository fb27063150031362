#include "ui/charts/energy_plot.h"

#include "ui/charts/track_series.h"
#include "ui/words/words.h"

#include <algorithm>
#include <limits>

namespace holdband::ui {

EnergyPlot::EnergyPlot() : RunPlot(Words::tr("Energy since pitching, kWh"))
{
    setTimeLabels(true);
}

void EnergyPlot::setChart(const RunChart* chart)
{
    RunPlot::setChart(chart);
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
ValueRange EnergyPlot::range(const PanelPlace& place) const
{
    if (place.shown == place.all)
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

QString EnergyPlot::emptyText() const
{
    return !chart() || !chart()->energy.empty()
               ? QString()
               : Words::tr("No meter was read twice during this batch. Rounds (Alt+1) take its "
                           "readings.");
}

std::vector<PlotKey> EnergyPlot::key(const PanelPlace&, const PictureLook&) const
{
    const QString words = chart()->energyUnbounded
                              ? Words::tr("no ribbon: the maximum is unknown")
                              : Words::tr("dots: readings · ribbon: minimum – maximum");
    const bool resets = std::any_of(chart()->energy.begin(), chart()->energy.end(),
                                    [](const EnergyDot& dot) { return dot.reset; });
    return {{resets ? Words::tr("%1 · square: reset to 0").arg(words) : words, std::nullopt}};
}

void EnergyPlot::addMarks(Plot& plot, const PanelPlace&) const
{
    for (const Stretch& stretch : chart()->unmetered)
        plot.marks().stretches.push_back(
            {stretch.fromMs, stretch.toMs, Shading::plain, Words::tr("not metered")});
}

/// The bounds as areas, one for each stretch of time without a break.
void EnergyPlot::addRibbons(Plot& plot) const
{
    std::vector<QPolygonF> ribbons;
    QPolygonF upper, lower;
    const auto finish = [&] {
        if (upper.size() > 1) {
            QPolygonF ribbon = thinned(plot, upper);
            const QPolygonF below = thinned(plot, lower);
            std::copy(below.rbegin(), below.rend(), std::back_inserter(ribbon));
            ribbons.push_back(std::move(ribbon));
        }
        upper.clear();
        lower.clear();
    };
    for (const EnergyBounds& bounds : chart()->energyBounds) {
        if (!bounds.joined)
            finish();
        upper << QPointF(bounds.ms, bounds.high);
        lower << QPointF(bounds.ms, bounds.low);
    }
    finish();
    if (!ribbons.empty())
        plot.addArea(joinedAreas(ribbons), energyFill(plot));
}

QColor EnergyPlot::energyColour(const Plot& plot) const
{
    return setupLine(chart()->setup, plot.colours());
}

QColor EnergyPlot::energyFill(const Plot& plot) const
{
    constexpr int alpha = 80;
    QColor pale = energyColour(plot);
    pale.setAlpha(alpha);
    return pale;
}

/// The estimate, interrupted where no meter covers the time.
void EnergyPlot::addEstimate(Plot& plot) const
{
    QPolygonF line, part;
    const auto finish = [&] {
        line << thinned(plot, part) << lineGap();
        part.clear();
    };
    for (const EnergyDot& dot : chart()->energy) {
        if (!dot.joined && !part.empty())
            finish();
        part << QPointF(dot.ms, dot.kwh);
    }
    finish();
    plot.addLine(std::move(line), QPen(energyColour(plot), plot.look().moving ? 1.0 : 1.6));
}

void EnergyPlot::addReadings(Plot& plot) const
{
    constexpr double dotColumn = 2.0; // closer dots can't be told apart
    QPolygonF read, resets;
    for (const EnergyDot& dot : chart()->energy) {
        if (dot.reset)
            resets << QPointF(dot.ms, dot.kwh);
        else if (dot.read)
            read << QPointF(dot.ms, dot.kwh);
    }
    plot.addDots({thinned(plot, read, dotColumn), energyColour(plot), DotShape::disc, 5.2});
    // An open square: the register was reset to 0 before this reading.
    if (!resets.empty())
        plot.addDots(
            {resets, plot.colours().card, DotShape::square, 7.0, QPen(energyColour(plot), 1.6)});
}

void EnergyPlot::addData(Plot& plot) const
{
    addRibbons(plot);
    addEstimate(plot);
    addReadings(plot);
}

} // namespace holdband::ui
