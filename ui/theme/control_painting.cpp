#include "ui/theme/control_painting.h"

#include <QPainter>
#include <QStyle>
#include <QStyleOption>

namespace holdband::ui {

namespace {

void startLines(QPainter& painter, const QColor& colour, double width)
{
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
}

} // namespace

ControlLook lookOf(const QStyleOption& option, const Colours& colours, const QColor& ground,
                   const QColor& quiet)
{
    if (option.state & QStyle::State_HasFocus)
        return {ground, colours.focus, 2.0, 4.0};
    return {ground, quiet, 1.0, 4.0};
}

void paintBox(QPainter& painter, const QRect& rect, const ControlLook& look)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(look.ground);
    painter.setPen(look.edge.alpha() == 0 ? QPen(Qt::NoPen) : QPen(look.edge, look.edgeWidth));
    const double inset = look.edgeWidth / 2.0;
    painter.drawRoundedRect(QRectF(rect).adjusted(inset, inset, -inset, -inset), look.radius,
                            look.radius);
    painter.restore();
}

void paintTick(QPainter& painter, const QRect& rect, const QColor& colour)
{
    painter.save();
    startLines(painter, colour, 2.0);
    const QRectF box(rect);
    painter.drawPolyline(
        QPolygonF{{box.left() + 0.24 * box.width(), box.top() + 0.52 * box.height()},
                  {box.left() + 0.43 * box.width(), box.top() + 0.71 * box.height()},
                  {box.left() + 0.77 * box.width(), box.top() + 0.3 * box.height()}});
    painter.restore();
}

void paintPartTick(QPainter& painter, const QRect& rect, const QColor& colour)
{
    painter.save();
    startLines(painter, colour, 2.0);
    const QPointF middle = QRectF(rect).center();
    const QPointF half(0.25 * rect.width(), 0.0);
    painter.drawLine(middle - half, middle + half);
    painter.restore();
}

void paintRing(QPainter& painter, const QRect& rect, const ControlLook& look, bool chosen,
               const QColor& dot)
{
    ControlLook ring = look;
    ring.radius = rect.width() / 2.0;
    paintBox(painter, rect, ring);
    if (!chosen)
        return;
    const int inset = rect.width() * 3 / 10;
    const QRect inner = rect.adjusted(inset, inset, -inset, -inset);
    paintBox(painter, inner, {dot, dot, 1.0, inner.width() / 2.0});
}

void paintAngle(QPainter& painter, const QRect& rect, const QColor& colour, bool down)
{
    painter.save();
    startLines(painter, colour, 1.6);
    const QPointF middle = QRectF(rect).center();
    const double side = 3.5;
    const double tip = down ? side / 2.0 : -side / 2.0;
    painter.drawPolyline(QPolygonF{{middle.x() - side, middle.y() - tip},
                                   {middle.x(), middle.y() + tip},
                                   {middle.x() + side, middle.y() - tip}});
    painter.restore();
}

} // namespace holdband::ui
