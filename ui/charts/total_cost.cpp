#include "ui/charts/total_cost.h"

#include "ui/charts/clipping.h"
#include "ui/charts/plot_frame.h"
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

void TotalCostPicture::paintSide(QPainter& painter, const PlotFrame& frame, bool first,
                                 const PictureLook& look) const
{
    const analysis::SideCost& cost = first ? m_scenario.a : m_scenario.b;
    if (cost.perBatch.bounded() && std::isfinite(*cost.perBatch.high)) {
        const auto at = [&](double perBatch) {
            return QPointF(frame.x(m_last), frame.y(cost.parts + perBatch * m_last));
        };
        QColor pale = m_sides.colour(first, look.colours());
        pale.setAlpha(50);
        painter.setPen(Qt::NoPen);
        painter.setBrush(pale);
        painter.drawPolygon(areaInside({{QPointF(frame.x(0.0), frame.y(cost.parts)),
                                         at(*cost.perBatch.high), at(*cost.perBatch.low)}},
                                       frame.plot()));
    }
    painter.setPen(QPen(m_sides.colour(first, look.colours()), 2.0, penStyle(first)));
    painter.drawLine(QPointF(frame.x(0.0), frame.y(cost.after(0.0))),
                     QPointF(frame.x(m_last), frame.y(cost.after(m_last))));
    QFont bold = frame.bold();
    painter.setFont(bold);
}

void TotalCostPicture::paintCrossing(QPainter& painter, const PlotFrame& frame,
                                     const PictureLook& look) const
{
    const analysis::Crossing& crossing = m_scenario.crossing;
    if (crossing.kind != analysis::CrossingKind::crosses || crossing.batches > m_last)
        return;
    const QPointF at(frame.x(crossing.batches), frame.y(m_scenario.a.after(crossing.batches)));
    painter.setPen(QPen(look.colours().text, 1.6));
    painter.setBrush(look.colours().card);
    painter.drawEllipse(at, 4.5, 4.5);
    painter.setFont(frame.small());
    const QString words =
        Words::tr("equal after %1 batches").arg(numberText(std::ceil(crossing.batches), 0));
    const double width = QFontMetricsF(frame.small()).horizontalAdvance(words);
    const bool left = at.x() + width + 10.0 > frame.plot().right();
    const QRectF box(left ? at.x() - width - 10.0 : at.x() + 6.0, at.y() + 5.0, width + 4.0,
                     QFontMetricsF(frame.small()).height());
    QColor back = look.colours().card;
    back.setAlphaF(0.8F);
    painter.fillRect(box, back);
    painter.drawText(box, Qt::AlignCenter, words);
}

void TotalCostPicture::paint(QPainter& painter, QSizeF size, const PictureLook& look) const
{
    const double ends[] = {m_scenario.a.after(0), m_scenario.b.after(0), m_scenario.a.after(m_last),
                           m_scenario.b.after(m_last)};
    const double low = *std::min_element(std::begin(ends), std::end(ends));
    const double high = *std::max_element(std::begin(ends), std::end(ends));
    const double margin = 0.08 * std::max(high - low, 1.0);
    PlotFrame frame(painter, QRectF({}, size), {std::max(0.0, low - margin), high + margin}, look);
    frame.setAcross({0.0, static_cast<double>(m_last)});
    const QFontMetricsF metrics(frame.bold());
    frame.leaveRight(metrics.horizontalAdvance(QStringLiteral("B")) + 14.0);
    frame.leaveBelow(2);
    frame.paintHeading(m_currency.isEmpty() ? Words::tr("Total cost")
                                            : Words::tr("Total cost, %1").arg(m_currency),
                       m_name);
    frame.paintValueAxis();
    frame.paintAcross(Words::tr("batches"));
    painter.setRenderHint(QPainter::Antialiasing);
    paintSide(painter, frame, true, look);
    paintSide(painter, frame, false, look);
    paintCrossing(painter, frame, look);
    painter.setFont(frame.bold());
    double yA = frame.y(m_scenario.a.after(m_last)) + metrics.ascent() / 2.0 - 1.0;
    double yB = frame.y(m_scenario.b.after(m_last)) + metrics.ascent() / 2.0 - 1.0;
    separateLabels(yA, yB, metrics.height());
    for (const bool first : {true, false}) {
        painter.setPen(m_sides.text(first, look.colours()));
        painter.drawText(QPointF(frame.plot().right() + 6.0, first ? yA : yB),
                         first ? QStringLiteral("A") : QStringLiteral("B"));
    }
}

} // namespace holdband::ui
