#include "ui/charts/batch_energies.h"

#include "ui/words/words.h"

#include <algorithm>

namespace holdband::ui {

BatchEnergiesPicture::BatchEnergiesPicture(Curves a, Curves b, PairSides sides)
    : m_a(std::move(a)), m_b(std::move(b)), m_sides(std::move(sides))
{
}

/// The end of each line is marked, so that a short batch is not hidden by a long one.
void BatchEnergiesPicture::addSide(Plot& plot, bool first) const
{
    const QColor colour = m_sides.colour(first, plot.colours());
    PlotDots ends{{}, colour, first ? DotShape::disc : DotShape::square, 6.0};
    for (const results::EnergyCurve& curve : first ? m_a : m_b) {
        QPolygonF line;
        for (const analysis::EnergyPoint& point : curve.points)
            line << QPointF(point.elapsedHours, point.kwh);
        ends.points << line.back();
        plot.addLine(std::move(line), QPen(colour, 1.3, penStyle(first)));
    }
    if (!ends.points.isEmpty())
        plot.addDots(std::move(ends));
}

std::vector<Plot> BatchEnergiesPicture::plots(QSizeF size, const PictureLook& look) const
{
    double hours = 0.0;
    double kwh = 0.0;
    for (const Curves* side : {&m_a, &m_b}) {
        for (const results::EnergyCurve& curve : *side) {
            hours = std::max(hours, curve.points.back().elapsedHours);
            kwh = std::max(kwh, curve.points.back().kwh);
        }
    }
    Plot plot(QRectF({}, size), look);
    plot.leaveBelow(1);
    plot.setRanges({0.0, hours > 0.0 ? hours : 1.0}, {0.0, kwh > 0.0 ? 1.06 * kwh : 1.0});
    plot.setHeading(Words::tr("Energy since pitching, kWh"), m_sides,
                    Words::tr("B dashed · each line a batch"));
    plot.addUpAxis();
    plot.addDays();
    addSide(plot, true);
    addSide(plot, false);
    return {plot};
}

} // namespace holdband::ui
