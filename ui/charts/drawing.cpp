#include "ui/charts/drawing.h"

#include "ui/charts/decimate.h"

#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

/// Smoothing costs more than in proportion to the length of a line, so it is drawn in pieces.
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

/// Whether the strokes up and down within the pixel columns fill them.
bool isDense(const QPolygonF& points, double columnWidth)
{
    constexpr double pointsAColumn = 2.5;
    const double columns = (points.back().x() - points.front().x()) / columnWidth;
    return static_cast<double>(points.size()) > pointsAColumn * std::max(columns, 1.0);
}

/// A dense line as the area between the highest and the lowest point of each pixel column, as thick
/// as the pen: looks the same, and costs a fraction of smoothing every stroke.
void fillColumns(QPainter& painter, const QPolygonF& points, double columnWidth, const QPen& pen)
{
    const double half = pen.widthF() / 2.0;
    QPolygonF above, below;
    for (auto at = points.begin(); at != points.end();) {
        const double column = std::floor(at->x() / columnWidth);
        double top = at->y(), bottom = at->y();
        for (; at != points.end() && std::floor(at->x() / columnWidth) == column; ++at) {
            top = std::min(top, at->y());
            bottom = std::max(bottom, at->y());
        }
        const double x = (column + 0.5) * columnWidth;
        above << QPointF(x, top - half);
        below << QPointF(x, bottom + half);
    }
    std::reverse(below.begin(), below.end());
    painter.setPen(Qt::NoPen);
    painter.setBrush(pen.color());
    painter.drawPolygon(above + below, Qt::WindingFill);
}

} // namespace

void drawTrack(QPainter& painter, const PlotMap& map, const RunChart& chart,
               const analysis::Track& track, const TrackPyramid& pyramid, const QPen& pen,
               bool moving)
{
    const double columnWidth = 1.0 / painter.device()->devicePixelRatioF();
    const int columns = static_cast<int>(map.plot.width() / columnWidth);
    const auto lines =
        decimate(track, chart.msOf(map.shown.start), chart.msOf(map.shown.end), columns, &pyramid);
    QPen used = pen;
    if (moving) {
        used.setWidth(1);
        used.setCosmetic(true);
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, !moving);
    for (const Polyline& line : lines) {
        const QPolygonF points = placed(line, map, chart);
        if (!moving && !points.isEmpty() && isDense(points, columnWidth)) {
            fillColumns(painter, points, columnWidth, used);
        } else {
            painter.setPen(used);
            drawInPieces(painter, points);
        }
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

void drawHatch(QPainter& painter, const QRectF& column, const QColor& colour)
{
    constexpr double step = 7.0;
    painter.save();
    painter.setClipRect(column, Qt::IntersectClip);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, 1.0));
    const QRectF seen = column & painter.clipBoundingRect();
    // The lines lie on one lattice for the whole plot, so that neighbouring pieces meet.
    const double first = std::floor((seen.left() + seen.top()) / step) * step;
    for (double sum = first; sum <= seen.right() + seen.bottom(); sum += step)
        painter.drawLine(QPointF(sum - seen.top(), seen.top()),
                         QPointF(sum - seen.bottom(), seen.bottom()));
    painter.restore();
}

} // namespace

void drawStretches(QPainter& painter, const PlotMap& map, const RunChart& chart,
                   const Colours& colours)
{
    for (const Stretch& stretch : chart.settling)
        drawHatch(painter, columnOf(map, chart, stretch), colours.hatch);
    for (const Stretch& gap : chart.gaps)
        painter.fillRect(columnOf(map, chart, gap), colours.gap);
}

void nameStretches(QPainter& painter, const PlotMap& map, const RunChart& chart,
                   const std::vector<Stretch>& stretches, const QString& words,
                   const Colours& colours)
{
    const QFontMetrics metrics(painter.font());
    painter.setPen(colours.muted);
    for (const Stretch& stretch : stretches) {
        const QRectF column = columnOf(map, chart, stretch) & map.plot;
        if (column.width() >= metrics.horizontalAdvance(words) + 4.0)
            painter.drawText(column, Qt::AlignHCenter | Qt::AlignBottom, words);
    }
}

} // namespace holdband::ui
