#include "ui/charts/plot_frame.h"

#include "ui/charts/ticks.h"
#include "ui/words/words.h"

#include <QFontMetrics>
#include <cmath>

namespace holdband::ui {

namespace {

/// The square of a side's colour before its name.
double squareOf(const QFontMetrics& metrics)
{
    return 0.7 * metrics.ascent();
}

/// The width of everything beside a side's name.
double markWidth(const QFontMetrics& metrics)
{
    return squareOf(metrics) + 4.0 * metrics.horizontalAdvance(u' ');
}

} // namespace

PlotFrame::PlotFrame(QPainter& painter, QRectF box, ValueRange range, const PictureLook& look)
    : m_painter(painter), m_box(box), m_range(range), m_look(look)
{
    const double line = QFontMetrics(look.font).height();
    m_plot = box.adjusted(PanelArt::leftMargin, line + 12.0, -6.0, -8.0);
}

void PlotFrame::leaveRight(double width)
{
    m_plot.setRight(m_box.right() - width);
}

void PlotFrame::leaveBelow(int lines)
{
    m_plot.setBottom(m_box.bottom() - 6.0 - lines * QFontMetrics(small()).height());
}

QFont PlotFrame::bold() const
{
    QFont font = m_look.font;
    font.setWeight(QFont::DemiBold);
    return font;
}

double PlotFrame::x(double value) const
{
    return m_plot.left() + (value - m_across.low) / (m_across.high - m_across.low) * m_plot.width();
}

double PlotFrame::y(double value) const
{
    return m_plot.bottom() - (value - m_range.low) / (m_range.high - m_range.low) * m_plot.height();
}

void PlotFrame::paintHeading(const QString& heading, const QString& remark)
{
    const QFontMetrics metrics(bold());
    const double base = m_box.top() + 4.0 + metrics.ascent();
    m_painter.setFont(bold());
    m_painter.setPen(m_look.colours().text);
    m_painter.drawText(QPointF(m_box.left() + 2.0, base), heading);
    const QFontMetrics smaller(small());
    const double width = smaller.horizontalAdvance(remark);
    if (metrics.horizontalAdvance(heading) + width + 20.0 > m_box.width())
        return;
    m_painter.setFont(small());
    m_painter.setPen(m_look.colours().muted);
    m_painter.drawText(QPointF(m_box.right() - 6.0 - width, base), remark);
}

void PlotFrame::paintHeading(const QString& heading, const PairSides& sides, const QString& remark)
{
    const QFontMetrics metrics(small());
    const QString a = QStringLiteral("A ") + sides.a;
    const QString b = QStringLiteral("B ") + sides.b;
    const double marks = 2.0 * markWidth(metrics);
    const double names = metrics.horizontalAdvance(a) + metrics.horizontalAdvance(b) + marks;
    const double room = m_box.width() - QFontMetrics(bold()).horizontalAdvance(heading) - 26.0;
    // The names take precedence over the remark.
    const double remarked = metrics.horizontalAdvance(remark);
    const bool both = names + remarked <= room;
    paintHeading(heading, both ? remark : QString());
    const double wide = std::min(names, room);
    if (wide < 2.0 * marks)
        return;
    const double base = m_box.top() + 4.0 + QFontMetrics(bold()).ascent();
    double x = m_box.right() - 6.0 - wide - (both ? remarked : 0.0);
    const int each = names <= room ? metrics.horizontalAdvance(a) + metrics.horizontalAdvance(b)
                                   : static_cast<int>((wide - marks) / 2.0);
    for (const bool first : {true, false})
        x = paintSide(x, base, first, sides,
                      metrics.elidedText(first ? a : b, Qt::ElideRight, each));
}

/// Returns where the next one begins.
double PlotFrame::paintSide(double x, double base, bool first, const PairSides& sides,
                            const QString& name)
{
    const QFontMetrics metrics(small());
    const double square = squareOf(metrics);
    m_painter.fillRect(QRectF(x, base - square, square, square),
                       sides.colour(first, m_look.colours()));
    m_painter.setFont(small());
    m_painter.setPen(sides.text(first, m_look.colours()));
    m_painter.drawText(QPointF(x + square + metrics.horizontalAdvance(u' '), base), name);
    return x + markWidth(metrics) + metrics.horizontalAdvance(name);
}

void PlotFrame::paintValueAxis()
{
    m_painter.setFont(small());
    const QFontMetrics metrics(small());
    const int most = std::max(3, static_cast<int>(m_plot.height() / (metrics.height() * 1.9)));
    const std::vector<double> ticks = valueTicks(m_range.low, m_range.high, most);
    const int decimals = decimalsOf(ticks);
    for (const double value : ticks) {
        m_painter.setPen(m_look.colours().grid);
        m_painter.drawLine(QPointF(m_plot.left(), y(value)), QPointF(m_plot.right(), y(value)));
        m_painter.setPen(m_look.colours().muted);
        const QRectF box(m_box.left(), y(value) - metrics.height() / 2.0,
                         m_plot.left() - m_box.left() - 7.0, metrics.height());
        m_painter.drawText(box, Qt::AlignRight | Qt::AlignVCenter, numberText(value, decimals));
    }
}

void PlotFrame::paintDays(double hours)
{
    const QFontMetrics metrics(small());
    const double days = hours / 24.0;
    m_painter.setFont(small());
    m_painter.setPen(m_look.colours().muted);
    const int most = std::max(2, static_cast<int>(m_plot.width() / 70.0));
    const std::vector<double> ticks = valueTicks(0.0, days, most);
    for (const double day : ticks) {
        const QString label = Words::tr("day %1").arg(numberText(day, decimalsOf(ticks)));
        const double x = m_plot.left() + day / days * m_plot.width();
        m_painter.drawText(QPointF(x - metrics.horizontalAdvance(label) / 2.0,
                                   m_plot.bottom() + 3.0 + metrics.ascent()),
                           label);
    }
}

void PlotFrame::paintAcross(const QString& words)
{
    const QFontMetricsF metrics(small());
    m_painter.setFont(small());
    const int most = std::max(2, static_cast<int>(m_plot.width() / 80.0));
    const std::vector<double> ticks = valueTicks(m_across.low, m_across.high, most);
    for (const double value : ticks) {
        m_painter.setPen(m_look.colours().grid);
        m_painter.drawLine(QPointF(x(value), m_plot.top()), QPointF(x(value), m_plot.bottom()));
        m_painter.setPen(m_look.colours().muted);
        const QString label = numberText(value, decimalsOf(ticks));
        m_painter.drawText(QPointF(x(value) - metrics.horizontalAdvance(label) / 2.0,
                                   m_plot.bottom() + 3.0 + metrics.ascent()),
                           label);
    }
    m_painter.drawText(QPointF(m_plot.right() - metrics.horizontalAdvance(words),
                               m_plot.bottom() + 3.0 + metrics.height() + metrics.ascent()),
                       words);
}

void separateLabels(double& a, double& b, double least)
{
    const double missing = least - std::abs(a - b);
    if (missing <= 0.0)
        return;
    double& upper = a <= b ? a : b;
    double& lower = a <= b ? b : a;
    upper -= missing / 2.0;
    lower += missing / 2.0;
}

} // namespace holdband::ui
