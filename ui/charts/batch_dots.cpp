#include "ui/charts/batch_dots.h"

#include "ui/words/words.h"

#include <algorithm>

namespace holdband::ui {

using results::SetupFigures;

BatchDotsPicture::BatchDotsPicture(QString title, results::MeasureBatches figures, double scale,
                                   PairSides sides)
    : m_title(std::move(title)), m_figures(std::move(figures)), m_scale(scale),
      m_sides(std::move(sides))
{
}

ValueRange BatchDotsPicture::range() const
{
    double low = 0.0;
    double high = 0.0;
    double most = 0.0;
    const auto take = [&](double value) {
        low = std::min(low, value * m_scale);
        high = std::max(high, value * m_scale);
    };
    for (const SetupFigures* side : {&m_figures.a, &m_figures.b}) {
        for (const results::BatchFigure& batch : side->batches)
            take(batch.value);
    }
    most = std::max(high, -low);
    for (const SetupFigures* side : {&m_figures.a, &m_figures.b}) {
        // A wide interval must not squeeze the dots together.
        if (side->low && side->high) {
            low = std::min(low, std::max(*side->low * m_scale, low < 0.0 ? -1.6 * most : 0.0));
            high = std::max(high, std::min(*side->high * m_scale, 1.6 * most));
        }
    }
    const double margin = 0.06 * std::max(high - low, 1e-9);
    return {low < 0.0 ? low - margin : low, high + margin};
}

/// One row for each side, A above B.
void BatchDotsPicture::addSide(Plot& plot, bool first) const
{
    const SetupFigures& figures = first ? m_figures.a : m_figures.b;
    const QColor colour = m_sides.colour(first, plot.colours());
    const double row = first ? 1.0 : 0.0;
    const auto inside = [&](double value) {
        return std::clamp(value * m_scale, plot.across().low, plot.across().high);
    };
    plot.addLevel(row, QPen(plot.colours().grid, 1.0));
    const double half = plot.upOf(9.0);
    if (figures.low && figures.high)
        plot.addArea(QRectF(QPointF(inside(*figures.low), row - half),
                            QPointF(inside(*figures.high), row + half)),
                     paleOf(colour, 60));
    const double mark = plot.upOf(10.0);
    if (figures.mean)
        plot.addLine({{QPointF(inside(*figures.mean), row - mark),
                       QPointF(inside(*figures.mean), row + mark)}},
                     QPen(plot.colours().text, 2.0));
    PlotDots dots{{}, colour, DotShape::disc, 10.0, QPen(plot.colours().card, 1.0)};
    for (const results::BatchFigure& batch : figures.batches)
        dots.points << QPointF(inside(batch.value), row);
    plot.addDots(std::move(dots));
    plot.addRowLabel(row, first ? QStringLiteral("A") : QStringLiteral("B"),
                     m_sides.text(first, plot.colours()));
}

std::vector<Plot> BatchDotsPicture::plots(QSizeF size, const PictureLook& look) const
{
    Plot plot(QRectF({}, size), look);
    plot.leaveBelow(1);
    plot.setRanges(range(), {-0.5, 1.5});
    const bool interval = m_figures.a.low || m_figures.b.low;
    plot.setHeading(Words::tr("Every batch: %1").arg(m_title),
                    interval ? Words::tr("line: mean · pale: 95 % interval")
                             : Words::tr("line: the mean"));
    plot.addAcrossAxis();
    addSide(plot, true);
    addSide(plot, false);
    return {plot};
}

} // namespace holdband::ui
