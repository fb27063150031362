#include "ui/report/render/page_flow.h"

#include <QFontMetricsF>
#include <QTextLayout>

namespace holdband::report {

PageFlow::PageFlow(const QPaintDevice& device, QSizeF page)
    : m_device(device), m_page(page), m_scale(device.logicalDpiX() / 72.0)
{
}

void PageFlow::newPage()
{
    m_pages.emplace_back();
    m_y = 0.0;
}

void PageFlow::need(double height)
{
    if (height > left() && !atTop())
        newPage();
}

void PageFlow::space(double height)
{
    if (!atTop())
        m_y += height;
}

double PageFlow::widthOf(const QString& text, const QFont& font) const
{
    return QFontMetricsF(font, &m_device).horizontalAdvance(text) / m_scale;
}

PageFlow::Lines PageFlow::wrapped(const QString& text, const QFont& font, double width,
                                  double leading) const
{
    Lines lines;
    lines.lineHeight = font.pointSizeF() * leading;
    QTextLayout layout(text, font, &m_device);
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width * m_scale);
        lines.text.push_back(text.mid(line.textStart(), line.textLength()).trimmed());
    }
    layout.endLayout();
    return lines;
}

void PageFlow::putLine(const QString& text, const QFont& font, const QColor& colour, QRectF box,
                       Qt::Alignment alignment)
{
    const QRectF inner(box.topLeft() * m_scale, box.size() * m_scale);
    put([=](QPainter& painter) {
        painter.setFont(font);
        painter.setPen(colour);
        // Slightly wider to the right, so that rounding never clips the last letter.
        painter.drawText(
            inner, alignment | Qt::AlignVCenter | Qt::TextDontClip | Qt::TextSingleLine, text);
    });
}

void PageFlow::flow(const Words& words)
{
    const double width = m_page.width() - words.indent;
    const Lines lines = wrapped(words.text, words.font, width, words.leading);
    for (const QString& line : lines.text) {
        need(lines.lineHeight);
        putLine(line, words.font, words.colour, {words.indent, m_y, width, lines.lineHeight},
                Qt::AlignLeft);
        advance(lines.lineHeight);
    }
}

} // namespace holdband::report
