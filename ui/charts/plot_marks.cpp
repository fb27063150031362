#include "ui/charts/plot_marks.h"

#include "ui/charts/clipping.h"
#include "ui/charts/plot.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double ringRadius = 9.0;

/// At least one unit wide, so that a short stretch is visible.
QRectF columnOf(const Plot& plot, double from, double to)
{
    const double left = plot.x(from);
    const QRectF column(left, plot.area().top(), std::max(plot.x(to) - left, 1.0),
                        plot.area().height());
    return column & plot.area();
}

void paintSlanted(QPainter& painter, const Plot& plot, const QRectF& column)
{
    constexpr double step = 7.0;
    if (column.width() < 2.5) // a few dots would look like dirt
        return;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(plot.colours().hatch, 1.0, Qt::SolidLine, Qt::FlatCap));
    // The lines are on one grid for the entire plot, so that neighbouring pieces meet.
    const double first = std::floor((column.left() + column.top()) / step) * step;
    for (double sum = first; sum <= column.right() + column.bottom(); sum += step) {
        const QPointF upper(sum - column.top(), column.top());
        const QPointF lower(sum - column.bottom(), column.bottom());
        for (const QPolygonF& part : lineInside({{upper, lower}}, column))
            painter.drawLine(part[0], part[1]);
    }
}

void paintUpright(QPainter& painter, const Plot& plot, const QRectF& column)
{
    constexpr double step = 4.0;
    painter.fillRect(column, plot.colours().gap);
    painter.setPen(QPen(plot.colours().muted, 1.0, Qt::SolidLine, Qt::FlatCap));
    for (double x = column.left() + 0.5; x <= column.right(); x += step)
        painter.drawLine(QPointF(x, column.top()), QPointF(x, column.bottom()));
}

void paintStretch(QPainter& painter, const Plot& plot, const PlotStretch& stretch)
{
    const QRectF column = columnOf(plot, stretch.from, stretch.to);
    if (column.isEmpty())
        return;
    switch (stretch.shading) {
    case Shading::plain:
        return painter.fillRect(column, plot.colours().gap);
    case Shading::slanted:
        return paintSlanted(painter, plot, column);
    case Shading::upright:
        return paintUpright(painter, plot, column);
    }
}

void paintFill(QPainter& painter, const Plot& plot, const PlotFill& fill)
{
    QPolygonF outline;
    for (const QPointF& point : fill.outline)
        outline << QPointF(plot.x(point.x()), plot.y(point.y()));
    painter.setPen(fill.edge);
    painter.setBrush(fill.fill);
    painter.drawPolygon(areaInside(outline, plot.area()), Qt::WindingFill);
}

void paintNames(QPainter& painter, const Plot& plot)
{
    const QFontMetricsF metrics(painter.font());
    painter.setPen(plot.colours().muted);
    for (const PlotStretch& stretch : plot.marks().stretches) {
        const QRectF column = columnOf(plot, stretch.from, stretch.to);
        if (!stretch.name.isEmpty() &&
            column.width() >= metrics.horizontalAdvance(stretch.name) + 4.0)
            painter.drawText(column, Qt::AlignHCenter | Qt::AlignBottom, stretch.name);
    }
}

void paintStage(QPainter& painter, const Plot& plot, const PlotStage& stage)
{
    const QFontMetricsF metrics(painter.font());
    const double height = metrics.height() + 3.0;
    QRectF box = columnOf(plot, stage.from, stage.to);
    box.setTop(plot.area().top() - height - 3.0);
    box.setHeight(height);
    box.adjust(0.5, 0, -0.5, 0);
    if (box.width() < 1.0)
        return;
    painter.setPen(Qt::NoPen);
    painter.setBrush(plot.colours().button);
    painter.drawRoundedRect(box, 3, 3);
    const QString label = metrics.elidedText(stage.label, Qt::ElideRight, box.width() - 6.0);
    painter.setPen(plot.colours().text);
    if (label.size() > 1 || label == stage.label)
        painter.drawText(box, Qt::AlignCenter, label);
}

void paintNote(QPainter& painter, const Plot& plot, std::size_t note)
{
    const QRectF box = noteBox(plot, note);
    const double x = box.center().x();
    if (x < plot.area().left() || x > plot.area().right())
        return;
    painter.setPen(QPen(plot.colours().careEdge, 1.0));
    painter.drawLine(QPointF(x, plot.area().top()), QPointF(x, box.top()));
    painter.setPen(QPen(plot.colours().careText, 1.0));
    painter.setBrush(plot.colours().careBack);
    painter.drawRoundedRect(box, 2.0, 2.0);
    painter.drawText(box, Qt::AlignCenter, plot.marks().notes[note].label);
}

QPointF centreOf(const Plot& plot, const PlotRing& ring)
{
    return {plot.x(ring.at.x()), plot.y(ring.at.y())};
}

/// Paints the label of a ring; `taken` is the end of the label before.
void paintRingLabel(QPainter& painter, const Plot& plot, const PlotRing& ring, double& taken)
{
    constexpr double gap = 3.0;
    const QRectF& area = plot.area();
    const QFontMetricsF metrics(painter.font());
    const QPointF centre = centreOf(plot, ring);
    const QString text = metrics.elidedText(ring.label, Qt::ElideRight, 16.0 * metrics.height());
    const double width = metrics.horizontalAdvance(text) + 2.0 * gap;
    const bool left = centre.x() + ringRadius + width > area.right();
    const double start = left ? centre.x() - ringRadius - width : centre.x() + ringRadius;
    if (start < taken)
        return;
    QRectF box(start, centre.y() - metrics.height() / 2.0, width, metrics.height());
    box.moveBottom(std::min(box.bottom(), area.bottom()));
    QColor back = plot.colours().card;
    back.setAlphaF(0.8F);
    painter.fillRect(box, back);
    painter.setPen(plot.colours().text);
    painter.drawText(box, Qt::AlignCenter, text);
    taken = box.right();
}

void paintRings(QPainter& painter, const Plot& plot)
{
    const QRectF& area = plot.area();
    double taken = area.left();
    for (const PlotRing& ring : plot.marks().rings) {
        const QPointF centre = centreOf(plot, ring);
        if (centre.x() < area.left() || centre.x() > area.right())
            continue;
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(plot.colours().excursion, 2.0));
        painter.drawEllipse(centre, ringRadius, ringRadius);
        if (!ring.label.isEmpty())
            paintRingLabel(painter, plot, ring, taken);
    }
}

} // namespace

double stageHeight(const QFont& small)
{
    return QFontMetricsF(small).height() + 8.0;
}

QRectF noteBox(const Plot& plot, std::size_t note)
{
    const QFontMetricsF metrics(plot.small());
    const auto& notes = plot.marks().notes;
    const double width = metrics.horizontalAdvance(notes.back().label) + 8.0;
    return {plot.x(notes[note].at) - width / 2.0, plot.area().bottom() - metrics.height() - 2.0,
            width, metrics.height()};
}

int ringAt(const Plot& plot, QPointF place)
{
    const auto& rings = plot.marks().rings;
    const auto found = std::find_if(rings.begin(), rings.end(), [&](const PlotRing& ring) {
        const QPointF away = centreOf(plot, ring) - place;
        return std::hypot(away.x(), away.y()) <= ringRadius + 2.0;
    });
    return found == rings.end() ? -1 : static_cast<int>(found - rings.begin());
}

void paintMarksBehind(QPainter& painter, const Plot& plot)
{
    painter.save();
    painter.setClipRect(plot.area(), Qt::IntersectClip);
    for (const PlotStretch& stretch : plot.marks().stretches)
        paintStretch(painter, plot, stretch);
    painter.setRenderHint(QPainter::Antialiasing);
    for (const PlotFill& fill : plot.marks().fills)
        paintFill(painter, plot, fill);
    painter.restore();
}

void paintMarksOver(QPainter& painter, const Plot& plot)
{
    painter.setFont(plot.small());
    for (const PlotStage& stage : plot.marks().stages)
        paintStage(painter, plot, stage);
    paintNames(painter, plot);
    for (std::size_t note = 0; note < plot.marks().notes.size(); ++note)
        paintNote(painter, plot, note);
    paintRings(painter, plot);
}

} // namespace holdband::ui
