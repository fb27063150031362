#include "ui/charts/total_cost.h"

#include "ui/words/words.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

TotalCostPicture::TotalCostPicture(const results::Money& money, std::size_t scenario, QString name,
                                   QString currency, PairSides sides)
    : m_name(std::move(name)), m_currency(std::move(currency)), m_sides(std::move(sides))
{
    if (scenario >= money.scenarios.size())
        return;
    m_scenario = money.scenarios[scenario];
    m_last = money.lastBatch;
}

ValueRange TotalCostPicture::costs() const
{
    const double ends[] = {m_scenario.a.after(0), m_scenario.b.after(0), m_scenario.a.after(m_last),
                           m_scenario.b.after(m_last)};
    const double low = *std::min_element(std::begin(ends), std::end(ends));
    const double high = *std::max_element(std::begin(ends), std::end(ends));
    const double margin = 0.08 * std::max(high - low, 1.0);
    return {std::max(0.0, low - margin), high + margin};
}

void TotalCostPicture::addSide(Plot& plot, bool first) const
{
    const analysis::SideCost& cost = first ? m_scenario.a : m_scenario.b;
    const QColor colour = m_sides.colour(first, plot.colours());
    const QPointF start(0.0, cost.parts);
    const auto end = [&](double perBatch) {
        return QPointF(m_last, cost.parts + perBatch * m_last);
    };
    if (cost.perBatch.bounded() && std::isfinite(*cost.perBatch.high))
        plot.addArea({{start, end(*cost.perBatch.high), end(*cost.perBatch.low)}},
                     paleOf(colour, 50));
    plot.addLine({{start, end(cost.perBatch.value)}}, QPen(colour, 2.0, penStyle(first)));
}

void TotalCostPicture::addCrossing(Plot& plot) const
{
    const analysis::Crossing& crossing = m_scenario.crossing;
    if (crossing.kind != analysis::CrossingKind::crosses || crossing.batches > m_last)
        return;
    const QPointF value(crossing.batches, m_scenario.a.after(crossing.batches));
    plot.addDots(
        {{{value}}, plot.colours().card, DotShape::disc, 9.0, QPen(plot.colours().text, 1.6)});
    const QString text =
        Words::tr("equal after %1 batches").arg(numberText(std::ceil(crossing.batches), 0));
    const QFontMetricsF metrics(plot.small());
    const double width = metrics.horizontalAdvance(text);
    const QPointF at(plot.x(value.x()), plot.y(value.y()));
    const bool left = at.x() + width + 10.0 > plot.area().right();
    plot.addLabel({text,
                   {left ? at.x() - width - 8.0 : at.x() + 8.0, at.y() + 5.0 + metrics.ascent()},
                   plot.colours().text,
                   LabelFont::small,
                   true});
}

/// A and B at the ends of their lines.
void TotalCostPicture::addEnds(Plot& plot) const
{
    const QFontMetricsF metrics(plot.bold());
    double yA = plot.y(m_scenario.a.after(m_last)) + metrics.ascent() / 2.0 - 1.0;
    double yB = plot.y(m_scenario.b.after(m_last)) + metrics.ascent() / 2.0 - 1.0;
    separateLabels(yA, yB, metrics.height());
    for (const bool first : {true, false})
        plot.addLabel({first ? QStringLiteral("A") : QStringLiteral("B"),
                       {plot.area().right() + 6.0, first ? yA : yB},
                       m_sides.text(first, plot.colours()),
                       LabelFont::bold});
}

std::vector<Plot> TotalCostPicture::plots(QSizeF size, const PictureLook& look) const
{
    Plot plot(QRectF({}, size), look);
    plot.leaveRight(QFontMetricsF(plot.bold()).horizontalAdvance(QStringLiteral("B")) + 14.0);
    plot.leaveBelow(2);
    plot.setRanges({0.0, static_cast<double>(m_last)}, costs());
    plot.setHeading(m_currency.isEmpty() ? Words::tr("Total cost")
                                         : Words::tr("Total cost, %1").arg(m_currency),
                    m_name);
    plot.addUpAxis();
    plot.addAcrossAxis(Words::tr("batches"));
    addSide(plot, true);
    addSide(plot, false);
    addCrossing(plot);
    addEnds(plot);
    return {plot};
}

} // namespace holdband::ui
