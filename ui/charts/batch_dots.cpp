#include "ui/charts/batch_dots.h"

#include "ui/charts/panel_art.h"
#include "ui/charts/plot_frame.h"
#include "ui/charts/ticks.h"
#include "ui/words/words.h"

#include <QFontMetricsF>
#include <algorithm>

namespace holdband::ui {

using results::SetupFigures;

BatchDotsPicture::BatchDotsPicture(QString title, results::MeasureBatches figures, double scale,
                                   PairSides sides)
    : m_title(std::move(title)), m_figures(std::move(figures)), m_scale(scale),
      m_sides(std::move(sides))
{
}

BatchDotsPicture::Range BatchDotsPicture::range() const
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

double BatchDotsPicture::x(QRectF row, double value) const
{
    const Range shown = range();
    return row.left() +
           std::clamp((value * m_scale - shown.low) / (shown.high - shown.low), 0.0, 1.0) *
               row.width();
}

void BatchDotsPicture::paintSide(QPainter& painter, QRectF row, bool first,
                                 const PictureLook& look) const
{
    const SetupFigures& figures = first ? m_figures.a : m_figures.b;
    const double middle = row.center().y();
    painter.setPen(QPen(look.colours().grid, 1.0));
    painter.drawLine(QPointF(row.left(), middle), QPointF(row.right(), middle));
    if (figures.low && figures.high) {
        QColor pale = m_sides.colour(first, look.colours());
        pale.setAlpha(60);
        painter.fillRect(QRectF(QPointF(x(row, *figures.low), middle - 9.0),
                                QPointF(x(row, *figures.high), middle + 9.0)),
                         pale);
    }
    if (figures.mean) {
        painter.setPen(QPen(look.colours().text, 2.0));
        const double at = x(row, *figures.mean);
        painter.drawLine(QPointF(at, middle - 10.0), QPointF(at, middle + 10.0));
    }
    painter.setPen(QPen(look.colours().card, 1.0));
    painter.setBrush(m_sides.colour(first, look.colours()));
    for (const results::BatchFigure& batch : figures.batches)
        painter.drawEllipse(QPointF(x(row, batch.value), middle), 5.0, 5.0);
    QFont bold = look.font;
    bold.setWeight(QFont::DemiBold);
    painter.setFont(bold);
    painter.setPen(m_sides.text(first, look.colours()));
    painter.drawText(QRectF(0.0, row.top(), row.left() - 8.0, row.height()),
                     Qt::AlignRight | Qt::AlignVCenter,
                     first ? QStringLiteral("A") : QStringLiteral("B"));
}

void BatchDotsPicture::paint(QPainter& painter, QSizeF size, const PictureLook& look) const
{
    PlotFrame frame(painter, QRectF({}, size), {0.0, 1.0}, look);
    const Range shown = range();
    frame.setAcross({shown.low, shown.high});
    frame.leaveBelow(1);
    const bool interval = m_figures.a.low || m_figures.b.low;
    frame.paintHeading(Words::tr("Every batch: %1").arg(m_title),
                       interval ? Words::tr("line: mean · pale: 95 % interval")
                                : Words::tr("line: the mean"));
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF plot = frame.plot();
    frame.paintAcross();
    paintSide(painter, {plot.left(), plot.top(), plot.width(), plot.height() / 2.0}, true, look);
    paintSide(painter, {plot.left(), plot.center().y(), plot.width(), plot.height() / 2.0}, false,
              look);
}

} // namespace holdband::ui
