#include "ui/charts/pair_spread.h"

#include "core/text/quantities.h"
#include "ui/charts/panel_art.h"
#include "ui/charts/plot_frame.h"
#include "ui/charts/ticks.h"
#include "ui/words/words.h"

#include <QFontMetricsF>
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

double PairSpreadPicture::x(QRectF box, double kelvins) const
{
    return box.left() + (kelvins - m_low) / (m_high - m_low) * box.width();
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

void PairSpreadPicture::paintTolerance(QPainter& painter, QRectF box, double tolerance,
                                       const PictureLook& look) const
{
    painter.fillRect(
        QRectF(QPointF(x(box, -tolerance), box.top()), QPointF(x(box, tolerance), box.bottom())),
        look.colours().band);
    painter.setPen(QPen(look.colours().target, 1.0, Qt::DashLine));
    for (const double at : {-tolerance, 0.0, tolerance})
        painter.drawLine(QPointF(x(box, at), box.top()), QPointF(x(box, at), box.bottom()));
}

void PairSpreadPicture::paintSide(QPainter& painter, QRectF box, bool first,
                                  const PictureLook& look) const
{
    const auto& all = first ? m_a : m_b;
    paintTolerance(painter, box, first ? m_toleranceA : m_toleranceB, look);
    const double most = mostShare();
    for (std::size_t bin = 0; all && bin < all->binMs.size(); ++bin) {
        const double height = all->share(bin) / most * box.height();
        const QRectF bar(QPointF(x(box, all->edges[bin]) + 0.5, box.bottom() - height),
                         QPointF(x(box, all->edges[bin + 1]) - 0.5, box.bottom()));
        if (height > 0.0)
            painter.fillRect(bar.intersected(box), m_sides.colour(first, look.colours()));
    }
    painter.setPen(look.colours().fieldEdge);
    painter.drawLine(box.bottomLeft(), box.bottomRight());
    QFont bold = look.font;
    bold.setWeight(QFont::DemiBold);
    painter.setFont(bold);
    painter.setPen(m_sides.text(first, look.colours()));
    painter.drawText(QRectF(0.0, box.top(), box.left() - 8.0, box.height()),
                     Qt::AlignRight | Qt::AlignVCenter,
                     first ? QStringLiteral("A") : QStringLiteral("B"));
}

void PairSpreadPicture::paintAxis(QPainter& painter, QRectF box, const PictureLook& look) const
{
    const auto inUnit = [this](double kelvins) {
        return valueIn(TemperatureDifference::kelvins(kelvins), m_unit);
    };
    painter.setFont(smallFont(look.font));
    painter.setPen(look.colours().muted);
    const QFontMetricsF metrics(painter.font());
    auto ticks = valueTicks(inUnit(m_low), inUnit(m_high),
                            std::max(3, static_cast<int>(box.width() / 70.0)));
    const double edge = inUnit(std::max(m_toleranceA, m_toleranceB));
    int decimals = decimalsOf(ticks);
    if (ticks.size() < 5) { // too few to show where the band ends
        ticks = {-edge, 0.0, edge};
        decimals = edge == std::round(edge) ? 0 : 1;
    }
    for (const double tick : ticks) {
        const double at =
            box.left() + (tick - inUnit(m_low)) / (inUnit(m_high) - inUnit(m_low)) * box.width();
        const QString label = tick == 0.0 ? Words::tr("target") : signedText(tick, decimals);
        painter.drawText(QPointF(at - metrics.horizontalAdvance(label) / 2.0,
                                 box.bottom() + 3.0 + metrics.ascent()),
                         label);
    }
}

void PairSpreadPicture::paint(QPainter& painter, QSizeF size, const PictureLook& look) const
{
    PlotFrame frame(painter, QRectF({}, size), {0.0, 1.0}, look);
    frame.leaveBelow(1);
    frame.paintHeading(Words::tr("Time spent at each deviation, %1").arg(shown(unitText(m_unit))),
                       m_sides, Words::tr("green: the band"));
    const QRectF plot = frame.plot();
    const double half = (plot.height() - 8.0) / 2.0;
    paintSide(painter, {plot.left(), plot.top(), plot.width(), half}, true, look);
    const QRectF lower(plot.left(), plot.top() + half + 8.0, plot.width(), half);
    paintSide(painter, lower, false, look);
    paintAxis(painter, lower, look);
}

} // namespace holdband::ui
