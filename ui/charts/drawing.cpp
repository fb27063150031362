#include "ui/charts/drawing.h"

#include "ui/charts/decimate.h"

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

} // namespace

void drawTrack(QPainter& painter, const PlotMap& map, const RunChart& chart,
               const analysis::Track& track, const TrackPyramid& pyramid, const QPen& pen,
               bool moving)
{
    const int columns = static_cast<int>(map.plot.width() * painter.device()->devicePixelRatioF());
    const auto lines =
        decimate(track, chart.msOf(map.shown.start), chart.msOf(map.shown.end), columns, &pyramid);
    QPen used = pen;
    if (moving) {
        used.setWidth(1);
        used.setCosmetic(true);
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, !moving);
    painter.setPen(used);
    for (const Polyline& line : lines)
        drawInPieces(painter, placed(line, map, chart));
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
