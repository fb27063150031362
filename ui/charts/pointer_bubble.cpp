#include "ui/charts/pointer_bubble.h"

#include "ui/theme/colours.h"

#include <QPainter>

namespace holdband::ui {

namespace {

constexpr int padding = 8;
constexpr int distance = 10;

} // namespace

PointerBubble::PointerBubble(QWidget* parent) : QWidget(parent)
{
    setAttribute(Qt::WA_TransparentForMouseEvents);
    hide();
}

void PointerBubble::say(const QStringList& lines, QPoint point, QSize room)
{
    m_lines = lines;
    int widest = 0;
    for (const QString& line : lines)
        widest = std::max(widest, fontMetrics().horizontalAdvance(line));
    const int rows = static_cast<int>(lines.size());
    resize(widest + 2 * padding, rows * fontMetrics().lineSpacing() + 2 * padding);
    const bool roomRight = point.x() + distance + width() <= room.width();
    const int x = roomRight ? point.x() + distance : point.x() - distance - width();
    move(std::max(0, x), std::clamp(point.y(), 0, std::max(0, room.height() - height())));
    raise();
    show();
    update();
}

void PointerBubble::paintEvent(QPaintEvent*)
{
    const Colours& colours = coloursOf(*this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours.bubble);
    painter.drawRoundedRect(rect(), 5, 5);
    painter.setPen(colours.bubbleText);
    int y = padding + fontMetrics().ascent();
    for (const QString& line : m_lines) {
        painter.drawText(padding, y, line);
        y += fontMetrics().lineSpacing();
    }
}

} // namespace holdband::ui
