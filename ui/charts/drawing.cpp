#include "ui/charts/drawing.h"

#include "ui/charts/clipping.h"
#include "ui/charts/decimate.h"

#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

/// The cost of antialiasing grows faster than the length of a line, so it is drawn in pieces.
constexpr qsizetype pieceLength = 16;

QPolygonF placed(const Polyline& line, const PlotMap& map, const RunChart& chart)
{
    const double from = chart.msOf(map.shown.start);
    const double scale = map.plot.width() / (chart.msOf(map.shown.end) - from);
    QPolygonF points;
    points.reserve(static_cast<qsizetype>(line.size()));
    for (const DrawnPoint& point : line)
        points << QPointF(map.plot.left() + (point.ms - from) * scale, map.y(point.value));
    return points;
}

void drawInPieces(QPainter& painter, const QPolygonF& points)
{
    for (qsizetype first = 0; first + 1 < points.size(); first += pieceLength) {
        const qsizetype count = std::min(pieceLength + 1, points.size() - first);
        painter.drawPolyline(points.constData() + first, static_cast<int>(count));
    }
}

/// Whether the strokes up and down within the columns fill them.
bool isDense(const QPolygonF& points, double columnWidth)
{
    constexpr double pointsAColumn = 2.5;
    if (points.isEmpty())
        return false;
    const double columns = (points.back().x() - points.front().x()) / columnWidth;
    return static_cast<double>(points.size()) > pointsAColumn * std::max(columns, 1.0);
}

/// A dense line drawn as the area between the highest and the lowest point of each column, as thick
/// as the pen: looks the same, and is much cheaper than antialiasing every stroke.
QPolygonF filledColumns(const QPolygonF& points, double columnWidth, double thickness)
{
    QPolygonF above, below;
    for (auto at = points.begin(); at != points.end();) {
        const double column = std::floor(at->x() / columnWidth);
        double top = at->y(), bottom = at->y();
        for (; at != points.end() && std::floor(at->x() / columnWidth) == column; ++at) {
            top = std::min(top, at->y());
            bottom = std::max(bottom, at->y());
        }
        const double x = (column + 0.5) * columnWidth;
        above << QPointF(x, top - thickness / 2.0);
        below << QPointF(x, bottom + thickness / 2.0);
    }
    std::reverse(below.begin(), below.end());
    return above + below;
}

void drawDense(PanelCanvas& canvas, const QPolygonF& points, double columnWidth, const QPen& pen)
{
    canvas.painter.setPen(Qt::NoPen);
    canvas.painter.setBrush(pen.color());
    drawArea(canvas, filledColumns(points, columnWidth, pen.widthF()));
}

} // namespace

void drawOpenLine(PanelCanvas& canvas, const QPolygonF& line)
{
    if (!canvas.look.vectors)
        return drawInPieces(canvas.painter, line);
    for (const QPolygonF& part : lineInside(line, canvas.map.plot))
        canvas.painter.drawPolyline(part);
}

void drawArea(PanelCanvas& canvas, const QPolygonF& area)
{
    canvas.painter.drawPolygon(canvas.look.vectors ? areaInside(area, canvas.map.plot) : area,
                               Qt::WindingFill);
}

void drawTrack(PanelCanvas& canvas, const RunChart& chart, const analysis::Track& track,
               const TrackPyramid& pyramid, const QPen& pen)
{
    QPainter& painter = canvas.painter;
    const PlotMap& map = canvas.map;
    const int columns = std::max(1, static_cast<int>(map.plot.width() * canvas.look.columns));
    const auto lines =
        decimate(track, chart.msOf(map.shown.start), chart.msOf(map.shown.end), columns, &pyramid);
    QPen used = pen;
    if (canvas.look.moving) {
        used.setWidth(1);
        used.setCosmetic(true);
    }
    if (canvas.look.vectors)
        used.setJoinStyle(Qt::RoundJoin);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, !canvas.look.moving);
    const double columnWidth = map.plot.width() / columns;
    for (const Polyline& line : lines) {
        const QPolygonF points = placed(line, map, chart);
        if (!canvas.look.moving && isDense(points, columnWidth)) {
            drawDense(canvas, points, columnWidth, used);
            continue;
        }
        painter.setBrush(Qt::NoBrush);
        painter.setPen(used);
        drawOpenLine(canvas, points);
    }
    painter.restore();
}

QRectF columnOf(const PlotMap& map, const RunChart& chart, const Stretch& stretch)
{
    const double left = map.x(chart.instantOf(stretch.fromMs));
    const double right = map.x(chart.instantOf(stretch.toMs));
    return {left, map.plot.top(), std::max(right - left, 1.0), map.plot.height()};
}

namespace {

void drawHatch(PanelCanvas& canvas, const QRectF& column)
{
    constexpr double step = 7.0;
    const QRectF seen = column & canvas.map.plot;
    if (seen.width() < 2.5) // a few dots would look like dirt
        return;
    canvas.painter.setRenderHint(QPainter::Antialiasing);
    canvas.painter.setPen(QPen(canvas.colours().hatch, 1.0, Qt::SolidLine, Qt::FlatCap));
    // The lines are on one grid for the entire plot, so that neighbouring pieces meet.
    const double first = std::floor((seen.left() + seen.top()) / step) * step;
    for (double sum = first; sum <= seen.right() + seen.bottom(); sum += step) {
        const QPointF upper(sum - seen.top(), seen.top());
        const QPointF lower(sum - seen.bottom(), seen.bottom());
        for (const QPolygonF& part : lineInside({{upper, lower}}, seen))
            canvas.painter.drawLine(part[0], part[1]);
    }
}

/// Vertical lines, which nothing else uses, on the background of a gap.
void drawLeftOut(PanelCanvas& canvas, const QRectF& column)
{
    constexpr double step = 4.0;
    const QRectF seen = column & canvas.map.plot;
    canvas.painter.fillRect(seen, canvas.colours().gap);
    canvas.painter.setPen(QPen(canvas.colours().muted, 1.0, Qt::SolidLine, Qt::FlatCap));
    for (double x = seen.left() + 0.5; x <= seen.right(); x += step)
        canvas.painter.drawLine(QPointF(x, seen.top()), QPointF(x, seen.bottom()));
}

} // namespace

void drawStretches(PanelCanvas& canvas, const RunChart& chart)
{
    for (const Stretch& stretch : chart.settling)
        drawHatch(canvas, columnOf(canvas.map, chart, stretch));
    for (const Stretch& gap : chart.gaps)
        canvas.painter.fillRect(columnOf(canvas.map, chart, gap) & canvas.map.plot,
                                canvas.colours().gap);
    for (const LeftOutStretch& each : chart.leftOut)
        drawLeftOut(canvas, columnOf(canvas.map, chart, each.time));
}

void nameStretches(PanelCanvas& canvas, const RunChart& chart,
                   const std::vector<Stretch>& stretches, const QString& words)
{
    canvas.painter.setFont(smallFont(canvas.look.font));
    const QFontMetrics metrics(canvas.painter.font());
    canvas.painter.setPen(canvas.colours().muted);
    for (const Stretch& stretch : stretches) {
        const QRectF column = columnOf(canvas.map, chart, stretch) & canvas.map.plot;
        if (column.width() >= metrics.horizontalAdvance(words) + 4.0)
            canvas.painter.drawText(column, Qt::AlignHCenter | Qt::AlignBottom, words);
    }
}

} // namespace holdband::ui
