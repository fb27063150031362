// Draws the lanes; lanes_view.cpp has their behaviour.
#include "ui/lanes/lanes_view.h"
#include "ui/theme/card.h"
#include "ui/theme/type_scale.h"
#include "ui/words/words.h"

#include <QPainter>
#include <array>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double corner = 3.0;
constexpr double accent = 4.0; ///< the strongly coloured edge at a bar's left

QFont heavier(QFont font)
{
    font.setWeight(QFont::DemiBold);
    return font;
}

} // namespace

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

void LanesView::paintTimeLines(QPainter& painter)
{
    painter.setPen(coloursOf(*this).grid);
    for (const PlacedLabel& label : m_layout.labels) {
        const double x = std::round(label.x) + 0.5;
        if (!label.atEdge && x <= m_layout.plot.right())
            painter.drawLine(QPointF(x, m_layout.plot.top()), QPointF(x, m_layout.labelsY));
    }
}

namespace {

bool speaksAgainst(analysis::Verdict verdict)
{
    return verdict == analysis::Verdict::left || verdict == analysis::Verdict::missed;
}

} // namespace

/// The mark at the right, and the name in the remaining space.
void LanesView::paintBarWords(QPainter& painter, const QRectF& seen, const results::LaneBar& bar)
{
    if (seen.width() < 10.0)
        return; // no text fits
    const Colours& colours = coloursOf(*this);
    const QString mark = shown(bar.mark);
    const QFont bold = heavier(font());
    const double markWidth = QFontMetrics(bold).horizontalAdvance(mark);
    QRectF inside = seen.adjusted(9, 0, -7, 0);
    if (inside.width() < markWidth)
        inside = seen.adjusted(accent + 1.0, 0, -1.0, 0);
    if (inside.width() < markWidth)
        return;
    painter.setFont(bold);
    painter.setPen(speaksAgainst(bar.verdict) ? colours.warn : colours.text);
    painter.drawText(inside, Qt::AlignRight | Qt::AlignVCenter, mark);
    painter.setPen(colours.text);
    const auto room = static_cast<int>(inside.width() - markWidth - 8.0);
    if (room < 12)
        return;
    painter.setFont(font());
    const QString name = fontMetrics().elidedText(shown(bar.batch), Qt::ElideRight, room);
    if (name.size() > 1 || name == shown(bar.batch))
        painter.drawText(inside, Qt::AlignLeft | Qt::AlignVCenter, name);
}

void LanesView::paintBar(QPainter& painter, std::size_t index)
{
    const Colours& colours = coloursOf(*this);
    const PlacedBar& bar = m_layout.bars[index];
    const QRectF seen = bar.box.intersected(m_layout.plot.adjusted(-1, -100, 1, 100));
    if (seen.isEmpty())
        return;
    const bool chosen = m_chosen.contains(shown(bar.batch));
    painter.setPen(chosen ? QPen(setupColour(bar.setup), 1.4) : QPen(Qt::NoPen));
    painter.setBrush(setupFill(bar.setup, colours, chosen));
    painter.drawRoundedRect(seen, corner, corner);
    if (bar.box.left() >= m_layout.plot.left())
        painter.fillRect(
            QRectF(seen.left(), seen.top(), std::min(accent, seen.width()), seen.height()),
            setupColour(bar.setup));
    paintBarWords(painter, seen, *barOf(index));
}

/// Batches too thin to be drawn separately: a bar with two edges and their number.
void LanesView::paintGroup(QPainter& painter, const PlacedGroup& group)
{
    const Colours& colours = coloursOf(*this);
    const QRectF seen = group.box.intersected(m_layout.plot.adjusted(-1, -100, 1, 100));
    if (seen.isEmpty())
        return;
    bool chosen = false;
    for (const std::size_t bar : group.bars)
        chosen = chosen || m_chosen.contains(shown(m_layout.bars[bar].batch));
    painter.setPen(chosen ? QPen(setupColour(group.setup), 1.4) : QPen(Qt::NoPen));
    painter.setBrush(setupFill(group.setup, colours, true));
    painter.drawRoundedRect(seen, corner, corner);
    const double edge = std::min(accent, seen.width() / 3.0);
    const QColor colour = setupColour(group.setup);
    painter.fillRect(QRectF(seen.left(), seen.top(), edge, seen.height()), colour);
    painter.fillRect(QRectF(seen.right() - edge, seen.top(), edge, seen.height()), colour);
    const QRectF inside = seen.adjusted(edge + 1.0, 0, -edge - 1.0, 0);
    const QString number = QString::number(group.bars.size());
    const QFontMetrics small(smallFont(font()));
    for (const QString& words : {Words::tr("%1 batches").arg(number), number}) {
        if (small.horizontalAdvance(words) > inside.width())
            continue;
        painter.setPen(colours.text);
        painter.setFont(smallFont(font()));
        painter.drawText(inside, Qt::AlignCenter, words);
        return;
    }
}

void LanesView::paintFocus(QPainter& painter)
{
    if (!hasFocus() || m_layout.bars.empty())
        return;
    const QRectF seen =
        m_layout.drawnBox(m_current).intersected(m_layout.plot.adjusted(-1, 0, 1, 0));
    if (seen.isEmpty())
        return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(coloursOf(*this).focus, 2.0));
    painter.drawRoundedRect(seen.adjusted(-2, -2, 2, 2), 4, 4);
}

void LanesView::paintBars(QPainter& painter)
{
    painter.save();
    painter.setClipRect(
        QRectF(0.0, m_layout.plot.top() - 3.0, width(), m_layout.plot.height() + 3.0));
    painter.setRenderHint(QPainter::Antialiasing, false);
    paintLanes(painter);
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < m_layout.bars.size(); ++i) {
        if (!m_layout.bars[i].group)
            paintBar(painter, i);
    }
    for (const PlacedGroup& group : m_layout.groups)
        paintGroup(painter, group);
    paintFocus(painter);
    painter.restore();
}

/// A tick for rounds that were read, a circle for a missed round, a filled one if most were missed.
void LanesView::paintRounds(QPainter& painter)
{
    const Colours& colours = coloursOf(*this);
    const double y = m_layout.roundsY;
    painter.setPen(colours.muted);
    painter.drawText(QRectF(spacing::card, y - 12.0, m_layout.plot.left(), 24.0),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     Words::tr("Readings", "of the rounds, beneath the lanes"));
    for (const PlacedTick& tick : m_layout.rounds) {
        if (tick.missed > 0) {
            painter.setPen(QPen(colours.excursion, 1.5));
            painter.setBrush(tick.mostMissed() && tick.rounds > 1 ? colours.excursion
                                                                  : colours.card);
            painter.drawEllipse(QPointF(tick.x, y), 2.8, 2.8);
        } else {
            painter.setPen(QPen(colours.muted, 1.0));
            const double x = std::round(tick.x) + 0.5;
            painter.drawLine(QPointF(x, y - 3.5), QPointF(x, y + 3.5));
        }
    }
}

void LanesView::paintLabels(QPainter& painter)
{
    painter.setPen(coloursOf(*this).muted);
    painter.setFont(smallFont(font()));
    const QFontMetrics metrics(painter.font());
    for (const PlacedLabel& label : m_layout.labels)
        painter.drawText(
            QPointF(label.x + (label.atEdge ? 0.0 : 3.0), m_layout.labelsY + metrics.ascent()),
            shown(label.label));
}

/// While only a part of the time is shown: its position in the total, and the button to show all.
void LanesView::paintWhere(QPainter& painter)
{
    if (m_window.showsAll())
        return;
    const Colours& colours = coloursOf(*this);
    QFont link = smallFont(font());
    link.setUnderline(true);
    painter.setFont(link);
    painter.setPen(colours.text);
    painter.drawText(showAllBox(), Qt::AlignLeft | Qt::AlignVCenter, Words::tr("Show all"));
    const Span all = m_window.all();
    const double length = static_cast<double>((all.end - all.start).count());
    const auto placed = [&](Instant at) {
        return m_layout.plot.left() +
               static_cast<double>((at - all.start).count()) / length * m_layout.plot.width();
    };
    const double left = placed(m_window.shown().start);
    const double right = std::max(placed(m_window.shown().end), left + 6.0);
    const double y = height() - 4.0;
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours.cardEdge);
    painter.drawRoundedRect(QRectF(m_layout.plot.left(), y, m_layout.plot.width(), 2.5), 1, 1);
    painter.setBrush(colours.fieldEdge);
    painter.drawRoundedRect(QRectF(left, y, right - left, 2.5), 1, 1);
}

void LanesView::paintNow(QPainter& painter)
{
    if (!m_layout.nowX || m_review.lanes.empty())
        return;
    const Colours& colours = coloursOf(*this);
    const double x = std::round(*m_layout.nowX) + 0.5;
    painter.setPen(QPen(colours.text, 1.4, Qt::DotLine));
    painter.drawLine(QPointF(x, 5), QPointF(x, m_layout.labelsY - 1.0));
    if (!m_layout.nowWordX)
        return;
    painter.setPen(colours.muted);
    painter.setFont(smallFont(font()));
    const QFontMetrics metrics(painter.font());
    painter.drawText(QPointF(*m_layout.nowWordX,
                             m_layout.roundsY + (metrics.ascent() - metrics.descent()) / 2.0),
                     Words::tr("now"));
}

void LanesView::paintNothing(QPainter& painter)
{
    if (!m_layout.bars.empty() || m_layout.lanes.empty())
        return;
    painter.setPen(coloursOf(*this).muted);
    painter.drawText(m_layout.plot, Qt::AlignCenter, Words::tr("No batch yet: Ctrl+B begins one."));
}

void LanesView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setFont(font());
    paintCard(painter, *this);
    painter.setRenderHint(QPainter::Antialiasing, false);
    paintTimeLines(painter);
    paintBars(painter);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font());
    paintNothing(painter);
    paintRounds(painter);
    paintLabels(painter);
    paintWhere(painter);
    paintNow(painter);
}

} // namespace holdband::ui
