#include "ui/charts/chart_scene.h"

#include "ui/charts/clipping.h"
#include "ui/charts/gui_thread.h"
#include "ui/charts/plot.h"

#include <QAreaSeries>
#include <QChart>
#include <QGraphicsScene>
#include <QLegend>
#include <QLineSeries>
#include <QPicture>
#include <QScatterSeries>
#include <QValueAxis>
#include <algorithm>
#include <iterator>

namespace holdband::ui {

namespace {

/// The chart clips at its edges. So that it doesn't cut dots and pens on the plot's edge, its area
/// is larger than the plot by this much; lines and areas are clipped at the plot's edge before.
constexpr double edge = 8.0;

ValueRange widened(ValueRange range, double by)
{
    return {range.low - by, range.high + by};
}

QValueAxis* hiddenAxis(ValueRange range)
{
    auto* axis = new QValueAxis;
    axis->setRange(range.low, range.high);
    axis->setVisible(false);
    return axis;
}

/// The number of points up to which a line is drawn as one path. On the screen a longer one is
/// drawn in pieces, because the cost of an antialiased path grows faster than its length.
constexpr qsizetype mostOfPath = 200;

/// Qt Charts draws a solid line piece by piece. A pattern whose first dash is longer than any line
/// makes it one path: joined smoothly, and in SVG a ninth of the size.
QPen drawnAsPath(QPen pen)
{
    pen.setCapStyle(Qt::FlatCap);
    pen.setJoinStyle(Qt::RoundJoin);
    if (pen.style() == Qt::SolidLine)
        pen.setDashPattern({1e6, 1.0});
    return pen;
}

/// Pieces that end where the next begins: longer ones would overlap, and darken the line's edges.
QPen drawnInPieces(QPen pen)
{
    pen.setCapStyle(Qt::FlatCap);
    return pen;
}

/// The visible parts of a line.
std::vector<QPolygonF> partsInside(const QPolygonF& points, const QRectF& inside)
{
    std::vector<QPolygonF> parts;
    QPolygonF unbroken;
    const auto take = [&] {
        std::ranges::move(lineInside(unbroken, inside), std::back_inserter(parts));
        unbroken.clear();
    };
    for (const QPointF& point : points) {
        if (qIsNaN(point.y()))
            take();
        else
            unbroken << point;
    }
    take();
    return parts;
}

/// As one series: hundreds of them would take longer than all their points. Drawn piece by piece, a
/// line has a gap where a value is missing; a path would not.
QPolygonF joinedByGaps(const std::vector<QPolygonF>& parts)
{
    QPolygonF points;
    for (const QPolygonF& part : parts)
        points << part << lineGap();
    return points;
}

QScatterSeries::MarkerShape markerOf(DotShape shape)
{
    switch (shape) {
    case DotShape::disc:
        return QScatterSeries::MarkerShapeCircle;
    case DotShape::square:
        return QScatterSeries::MarkerShapeRectangle;
    case DotShape::diamond:
        return QScatterSeries::MarkerShapeRotatedRectangle;
    case DotShape::triangle:
        return QScatterSeries::MarkerShapeTriangle;
    case DotShape::star:
        return QScatterSeries::MarkerShapeStar;
    case DotShape::pentagon:
        break;
    }
    return QScatterSeries::MarkerShapePentagon;
}

/// One chart, made for one drawing. Belongs to the window's thread.
class ChartScene {
public:
    explicit ChartScene(const Plot& plot)
        : m_plot(plot),
          m_inside(plot.across().low, plot.up().low, plot.across().high - plot.across().low,
                   plot.up().high - plot.up().low)
    {
        addChart();
    }

    void render(QPainter& painter)
    {
        painter.save();
        painter.setRenderHint(QPainter::Antialiasing, !m_plot.look().moving);
        painter.setBrush(Qt::NoBrush); // a line drawn as a path would be filled with the caller's
        m_scene.render(&painter, m_plot.box(), m_plot.box());
        painter.restore();
    }

private:
    void addChart()
    {
        m_chart = new QChart;
        m_scene.addItem(m_chart);
        m_chart->setBackgroundVisible(false);
        m_chart->legend()->hide();
        m_chart->resize(m_plot.box().right(), m_plot.box().bottom());
        m_across = hiddenAxis(widened(m_plot.across(), m_plot.acrossOf(edge)));
        m_up = hiddenAxis(widened(m_plot.up(), m_plot.upOf(edge)));
        m_chart->addAxis(m_across, Qt::AlignBottom);
        m_chart->addAxis(m_up, Qt::AlignLeft);
        m_chart->setPlotArea(m_plot.area().adjusted(-edge, -edge, edge, edge));
        for (const PlotSeries& series : m_plot.series())
            std::visit([this](const auto& each) { take(each); }, series);
    }

    /// Pens of lines and areas come after this, because the chart sets its own; their points last,
    /// because each of these steps would compute the outlines of all of them again.
    void add(QAbstractSeries* series)
    {
        m_chart->addSeries(series);
        series->attachAxis(m_across);
        series->attachAxis(m_up);
    }

    /// A series of an area fills between an upper and a lower line. With the outline as the upper,
    /// and its two ends as the lower one, it fills any outline.
    void take(const PlotArea& area)
    {
        const QPolygonF outline = areaInside(area.outline, m_inside);
        if (outline.size() < 3)
            return;
        auto* upper = new QLineSeries;
        auto* lower = new QLineSeries;
        auto* series = new QAreaSeries(upper, lower);
        upper->setParent(series);
        lower->setParent(series);
        add(series);
        series->setPen(Qt::NoPen);
        series->setBrush(area.fill);
        lower->replace(QList<QPointF>{outline.front(), outline.back()});
        upper->replace(outline);
    }

    void take(const PlotLine& line)
    {
        const std::vector<QPolygonF> parts = partsInside(line.points, m_inside);
        if (!m_plot.look().vectors && line.pen.style() == Qt::SolidLine &&
            line.points.size() > mostOfPath)
            return addLine(joinedByGaps(parts), drawnInPieces(line.pen));
        for (const QPolygonF& part : parts)
            addLine(part, drawnAsPath(line.pen));
    }

    void addLine(const QPolygonF& points, const QPen& pen)
    {
        auto* series = new QLineSeries;
        add(series);
        series->setPen(pen);
        series->replace(points);
    }

    /// One area for all: along the foot from bar to bar.
    void take(const PlotBars& bars)
    {
        const double foot = m_plot.up().low;
        QPolygonF outline;
        for (const PlotBar& bar : bars.bars)
            outline << QPointF(bar.left, foot) << QPointF(bar.left, bar.value)
                    << QPointF(bar.right, bar.value) << QPointF(bar.right, foot);
        take(PlotArea{std::move(outline), bars.fill});
    }

    /// A scatter series takes half the width of the pen off the place of a dot, of the pen that it
    /// has when it is added; so the pen comes first, and the places make up for it.
    void take(const PlotDots& dots)
    {
        constexpr double slack = 1e-6; // for rounding
        const QRectF inside = m_plot.area().adjusted(-slack, -slack, slack, slack);
        const double half = dots.edge.style() == Qt::NoPen ? 0.0 : dots.edge.widthF() / 2.0;
        const QPointF back(m_plot.acrossOf(half), -m_plot.upOf(half));
        auto* series = new QScatterSeries;
        for (const QPointF& point : dots.points) {
            if (inside.contains(m_plot.x(point.x()), m_plot.y(point.y())))
                series->append(point + back); // there are few, and it isn't shown yet
        }
        series->setMarkerShape(markerOf(dots.shape));
        series->setMarkerSize(dots.size);
        series->setPen(dots.edge);
        series->setBrush(dots.fill);
        add(series);
    }

    const Plot& m_plot;
    QRectF m_inside; ///< the axes' ranges; its top is the lowest value
    QGraphicsScene m_scene;
    QChart* m_chart = nullptr; ///< of the scene, like its axes
    QValueAxis* m_across = nullptr;
    QValueAxis* m_up = nullptr;
};

QPicture recorded(const Plot& plot)
{
    QPicture picture;
    runOnGuiThread([&] {
        QPainter painter(&picture);
        ChartScene(plot).render(painter);
    });
    return picture;
}

} // namespace

void drawSeries(QPainter& painter, const Plot& plot)
{
    if (onGuiThread())
        ChartScene(plot).render(painter);
    else
        painter.drawPicture(QPointF(), recorded(plot));
}

} // namespace holdband::ui
