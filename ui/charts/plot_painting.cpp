// How a plot is drawn: axes behind its series, heading and labels over them.
#include "ui/charts/chart_scene.h"
#include "ui/charts/plot.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

/// In the middle of a pixel, so that a thin line is crisp.
double crisp(double at)
{
    return std::round(at) + 0.5;
}

} // namespace

void Plot::draw(QPainter& painter) const
{
    painter.save();
    if (!m_emptyText.isEmpty())
        paintEmpty(painter);
    else
        paintBehind(painter);
    painter.restore();
    if (!m_series.empty())
        drawSeries(painter, *this);
    painter.save();
    paintOver(painter);
    painter.restore();
}

void Plot::paintEmpty(QPainter& painter) const
{
    painter.setFont(m_look.font);
    painter.setPen(colours().muted);
    painter.drawText(m_box.adjusted(m_inset, 0, -m_inset, 0), Qt::AlignCenter | Qt::TextWordWrap,
                     m_emptyText);
}

void Plot::paintBehind(QPainter& painter) const
{
    paintMarksBehind(painter, *this);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setFont(small());
    paintUpAxis(painter);
    paintAcrossAxis(painter);
    paintElapsed(painter);
}

/// A label too close to the one below it is left out.
void Plot::paintUpAxis(QPainter& painter) const
{
    const QFontMetrics metrics(small());
    double last = m_area.bottom() + 2.0 * metrics.height();
    for (const PlotTick& tick : m_upTicks) {
        const double at = crisp(y(tick.value));
        painter.setPen(colours().grid);
        painter.drawLine(QPointF(m_area.left(), at), QPointF(m_area.right(), at));
        if (last - at < 0.8 * metrics.height())
            continue;
        last = at;
        painter.setPen(colours().muted);
        const QRectF place(m_box.left(), at - metrics.height() / 2.0,
                           m_area.left() - m_box.left() - 7.0, metrics.height());
        painter.drawText(place, Qt::AlignRight | Qt::AlignVCenter, tick.label);
    }
}

void Plot::paintAcrossAxis(QPainter& painter) const
{
    const QFontMetricsF metrics(small());
    for (const PlotTick& tick : m_acrossTicks) {
        const double at = crisp(x(tick.value));
        painter.setPen(tick.strong ? mixed(colours().muted, colours().card, 0.22) : colours().grid);
        if (m_acrossLines)
            painter.drawLine(QPointF(at, m_area.top()), QPointF(at, m_area.bottom()));
        painter.setPen(tick.strong ? colours().text : colours().muted);
        paintTickLabel(painter, at, m_area.bottom() + 3.0 + metrics.ascent(), tick.label);
    }
}

void Plot::paintElapsed(QPainter& painter) const
{
    const QFontMetricsF metrics(small());
    painter.setPen(colours().muted);
    for (const PlotTick& tick : m_elapsedTicks) {
        const double at = x(tick.value);
        painter.drawLine(QPointF(at, m_area.bottom()), QPointF(at, m_area.bottom() + 3.0));
        paintTickLabel(painter, at, m_area.bottom() + 4.0 + metrics.height() + metrics.ascent(),
                       tick.label);
    }
}

/// In the middle below its tick, but inside the box.
void Plot::paintTickLabel(QPainter& painter, double x, double base, const QString& label) const
{
    const double width = QFontMetricsF(painter.font()).horizontalAdvance(label);
    const double most = std::max(m_box.left() + 2.0, m_box.right() - width - 4.0);
    painter.drawText(QPointF(std::clamp(x - width / 2.0, m_box.left() + 2.0, most), base), label);
}

void Plot::paintOver(QPainter& painter) const
{
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_emptyText.isEmpty())
        paintMarksOver(painter, *this);
    for (const Square& square : m_squares)
        painter.fillRect(square.box, square.fill);
    for (const Sample& sample : m_samples) {
        painter.setPen(sample.pen);
        painter.drawLine(sample.line);
    }
    for (const PlotLabel& label : m_labels)
        paintLabel(painter, label);
}

void Plot::paintLabel(QPainter& painter, const PlotLabel& label) const
{
    const QFont font = label.font == LabelFont::bold    ? bold()
                       : label.font == LabelFont::plain ? m_look.font
                                                        : small();
    if (label.veiled) {
        const QFontMetricsF metrics(font);
        QColor back = colours().card;
        back.setAlphaF(0.8F);
        painter.fillRect(QRectF(label.at.x() - 2.0, label.at.y() - metrics.ascent(),
                                metrics.horizontalAdvance(label.text) + 4.0, metrics.height()),
                         back);
    }
    painter.setFont(font);
    painter.setPen(label.colour);
    painter.drawText(label.at, label.text);
}

} // namespace holdband::ui
