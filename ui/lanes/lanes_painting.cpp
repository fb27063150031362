// How the lanes are drawn; what they do is in lanes_view.cpp.
#include "ui/charts/panel.h"
#include "ui/lanes/lanes_view.h"
#include "ui/theme/card.h"
#include "ui/words/words.h"

#include <QPainter>
#include <cmath>

namespace holdband::ui {

void LanesView::paintLanes(QPainter& painter)
{
    const Colours& colours = coloursOf(*this);
    for (const PlacedLane& lane : m_layout.lanes) {
        painter.setPen(colours.text);
        const QRectF label(spacing::card, lane.box.top(),
                           m_layout.plot.left() - spacing::card - 8.0, lane.box.height());
        const QString name = fontMetrics().elidedText(shown(lane.setup), Qt::ElideRight,
                                                      static_cast<int>(label.width()));
        painter.drawText(label, Qt::AlignLeft | Qt::AlignVCenter, name);
        painter.setPen(colours.grid);
        const double y = std::round(lane.box.bottom()) - 0.5;
        painter.drawLine(QPointF(m_layout.plot.left(), y), QPointF(m_layout.plot.right(), y));
    }
}

void LanesView::paintBar(QPainter& painter, std::size_t index)
{
    const Colours& colours = coloursOf(*this);
    const PlacedBar& bar = m_layout.bars[index];
    const QRectF seen = bar.box.intersected(m_layout.plot.adjusted(0, -2, 0, 2));
    if (seen.isEmpty())
        return;
    const bool chosen = m_chosen.contains(shown(bar.batch));
    painter.setPen(chosen ? QPen(setupColour(bar.setup), 1.2) : QPen(Qt::NoPen));
    painter.setBrush(setupFill(bar.setup, colours, chosen));
    painter.drawRoundedRect(seen, 3, 3);
    if (bar.box.left() >= m_layout.plot.left())
        painter.fillRect(QRectF(seen.left(), seen.top(), 4.0, seen.height()),
                         setupColour(bar.setup));
    const QString mark = shown(barOf(index)->mark);
    QFont bold = font();
    bold.setWeight(QFont::DemiBold);
    const double markWidth = QFontMetrics(bold).horizontalAdvance(mark);
    const QRectF inside = seen.adjusted(9, 0, -7, 0);
    painter.setPen(colours.text);
    painter.setFont(bold);
    if (inside.width() >= markWidth)
        painter.drawText(inside, Qt::AlignRight | Qt::AlignVCenter, mark);
    painter.setFont(font());
    const auto room = static_cast<int>(inside.width() - markWidth - 8.0);
    const QString name = fontMetrics().elidedText(shown(bar.batch), Qt::ElideRight, room);
    if (name.size() > 1 || name == shown(bar.batch))
        painter.drawText(inside, Qt::AlignLeft | Qt::AlignVCenter, name);
    if (!hasFocus() || index != m_current)
        return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours.focus, 2.0));
    painter.drawRoundedRect(seen.adjusted(-1, -1, 1, 1), 4, 4);
}

void LanesView::paintRounds(QPainter& painter)
{
    const Colours& colours = coloursOf(*this);
    const double y = m_layout.roundsY;
    painter.setPen(colours.muted);
    painter.drawText(QRectF(spacing::card, y - 12.0, m_layout.plot.left(), 24.0),
                     Qt::AlignLeft | Qt::AlignVCenter, QStringLiteral("Readings"));
    const bool tight = 4.0 * static_cast<double>(m_layout.rounds.size()) > m_layout.plot.width();
    painter.setPen(QPen(colours.muted, 1.0));
    for (const PlacedTick& tick : m_layout.rounds) {
        const double x = std::round(tick.x) + 0.5;
        if (!tick.missed && !tight)
            painter.drawLine(QPointF(x, y - 3.5), QPointF(x, y + 3.5));
    }
    if (tight && !m_layout.rounds.empty())
        painter.drawLine(QPointF(m_layout.rounds.front().x, y),
                         QPointF(m_layout.rounds.back().x, y));
    painter.setPen(QPen(colours.excursion, 1.5));
    painter.setBrush(colours.card);
    for (const PlacedTick& tick : m_layout.rounds) {
        if (tick.missed)
            painter.drawEllipse(QPointF(tick.x, y), 3.0, 3.0);
    }
    painter.setPen(colours.muted);
    painter.setFont(smallFont(*this));
    const QFontMetrics metrics(painter.font());
    for (const PlacedMonth& month : m_layout.months)
        painter.drawText(QPointF(month.x, m_layout.monthsY + metrics.ascent()), shown(month.label));
}

void LanesView::paintNow(QPainter& painter)
{
    if (!m_layout.nowX)
        return;
    const Colours& colours = coloursOf(*this);
    const double x = std::round(*m_layout.nowX) + 0.5;
    painter.setPen(QPen(colours.text, 1.4, Qt::DotLine));
    painter.drawLine(QPointF(x, 5), QPointF(x, m_layout.monthsY - 2.0));
    painter.setPen(colours.muted);
    painter.setFont(smallFont(*this));
    const QFontMetrics metrics(painter.font());
    const QString word = QStringLiteral("now");
    const double half = metrics.horizontalAdvance(word) / 2.0;
    const double left = std::min(x - half, width() - 2.0 * half - 6.0);
    painter.fillRect(QRectF(left - 3, m_layout.monthsY, 2 * half + 6, metrics.height()),
                     colours.card);
    painter.drawText(QPointF(left, m_layout.monthsY + metrics.ascent()), word);
}

void LanesView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setFont(font());
    paintCard(painter, *this);
    painter.setRenderHint(QPainter::Antialiasing, false);
    paintLanes(painter);
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < m_layout.bars.size(); ++i)
        paintBar(painter, i);
    painter.setFont(font());
    paintRounds(painter);
    paintNow(painter);
}

} // namespace holdband::ui
