#include "ui/charts/pair_spread.h"

#include "core/text/quantities.h"
#include "ui/charts/ticks.h"
#include "ui/words/words.h"

#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double leastShown = 0.001; ///< of the time: narrower tails are cut off

/// Widens the range to the bins, from the first to the last, with a relevant share of the time.
void widen(const analysis::Distribution& all, double& low, double& high)
{
    for (std::size_t bin = 0; bin < all.binMs.size(); ++bin) {
        if (all.share(bin) < leastShown)
            continue;
        low = std::min(low, all.edges[bin]);
        high = std::max(high, all.edges[bin + 1]);
    }
}

} // namespace

PairSpreadPicture::PairSpreadPicture(const results::DeviationCharts& charts, TemperatureUnit unit,
                                     PairSides sides)
    : m_a(charts.spreadA), m_b(charts.spreadB), m_toleranceA(charts.toleranceA),
      m_toleranceB(charts.toleranceB), m_unit(unit), m_sides(std::move(sides))
{
    m_high = 1.15 * std::max({m_toleranceA, m_toleranceB, 1e-6});
    m_low = -m_high;
    for (const auto* each : {&m_a, &m_b}) {
        if (*each)
            widen(**each, m_low, m_high);
    }
}

double PairSpreadPicture::inUnit(double kelvins) const
{
    return valueIn(TemperatureDifference::kelvins(kelvins), m_unit);
}

double PairSpreadPicture::mostShare() const
{
    double most = 0.0;
    for (const auto* each : {&m_a, &m_b}) {
        for (std::size_t bin = 0; *each && bin < (*each)->binMs.size(); ++bin)
            most = std::max(most, (*each)->share(bin));
    }
    return most > 0.0 ? 1.06 * most : 1.0;
}

void PairSpreadPicture::addTolerance(Plot& plot, double tolerance) const
{
    plot.addArea(QRectF(QPointF(-tolerance, plot.up().low), QPointF(tolerance, plot.up().high)),
                 plot.colours().band);
    for (const double edge : {-tolerance, 0.0, tolerance})
        plot.addUpright(edge, QPen(plot.colours().target, 1.0, Qt::DashLine));
}

void PairSpreadPicture::addSide(Plot& plot, bool first) const
{
    const auto& all = first ? m_a : m_b;
    addTolerance(plot, inUnit(first ? m_toleranceA : m_toleranceB));
    PlotBars bars{{}, m_sides.colour(first, plot.colours())};
    const double gap = plot.acrossOf(0.5);
    for (std::size_t bin = 0; all && bin < all->binMs.size(); ++bin) {
        if (all->binMs[bin] > 0.0)
            bars.bars.push_back({inUnit(all->edges[bin]) + gap, inUnit(all->edges[bin + 1]) - gap,
                                 all->share(bin)});
    }
    plot.addBars(std::move(bars));
    plot.addLevel(0.0, QPen(plot.colours().fieldEdge, 1.0));
    plot.addRowLabel((plot.up().low + plot.up().high) / 2.0,
                     first ? QStringLiteral("A") : QStringLiteral("B"),
                     m_sides.text(first, plot.colours()));
}

void PairSpreadPicture::addAxis(Plot& plot) const
{
    auto values = valueTicks(plot.across().low, plot.across().high,
                             std::max(3, static_cast<int>(plot.area().width() / 70.0)));
    const double edge = inUnit(std::max(m_toleranceA, m_toleranceB));
    int decimals = decimalsOf(values);
    if (values.size() < 5) { // too few to show where the band ends
        values = {-edge, 0.0, edge};
        decimals = edge == std::round(edge) ? 0 : 1;
    }
    std::vector<PlotTick> ticks;
    for (const double value : values)
        ticks.push_back({value, value == 0.0 ? Words::tr("target") : signedText(value, decimals)});
    plot.addAcrossTicks(std::move(ticks));
}

std::vector<Plot> PairSpreadPicture::plots(QSizeF size, const PictureLook& look) const
{
    constexpr double between = 8.0;
    Plot upper(QRectF({}, size), look);
    upper.leaveBelow(1);
    const QRectF whole = upper.area();
    const double half = (whole.height() - between) / 2.0;
    upper.setArea({whole.left(), whole.top(), whole.width(), half});
    upper.setRanges({inUnit(m_low), inUnit(m_high)}, {0.0, mostShare()});
    Plot lower = upper;
    lower.setArea(upper.area().translated(0.0, half + between));
    upper.setHeading(Words::tr("Time spent at each deviation, %1").arg(shown(unitText(m_unit))),
                     m_sides, Words::tr("green: the band"));
    addSide(upper, true);
    addSide(lower, false);
    addAxis(lower);
    return {upper, lower};
}

} // namespace holdband::ui
