#include "ui/charts/track_series.h"

#include "ui/charts/decimate.h"

#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

/// Whether the strokes up and down within the columns fill them.
bool isDense(const Polyline& line, double columnMs)
{
    constexpr double pointsAColumn = 2.5;
    if (line.empty())
        return false;
    const double columns = (line.back().ms - line.front().ms) / columnMs;
    return static_cast<double>(line.size()) > pointsAColumn * std::max(columns, 1.0);
}

/// The highest and the lowest value in a column of the plot, counted from its left edge.
struct FilledColumn {
    int column = 0;
    double top = 0.0;
    double bottom = 0.0;
};

std::vector<FilledColumn> filledColumns(const Polyline& line, ValueRange across, double columnMs)
{
    std::vector<FilledColumn> columns;
    for (const DrawnPoint& point : line) {
        const double ms = std::clamp(point.ms, across.low, across.high);
        const int column = static_cast<int>((ms - across.low) / columnMs);
        if (columns.empty() || columns.back().column != column)
            columns.push_back({column, point.value, point.value});
        columns.back().top = std::max(columns.back().top, point.value);
        columns.back().bottom = std::min(columns.back().bottom, point.value);
    }
    return columns;
}

/// Dense lines. Each looks like the area between the highest and the lowest point of each column,
/// as thick as the pen, and that is much cheaper to draw than every stroke up and down.
class DenseLines {
public:
    DenseLines(const Plot& plot, const QPen& pen)
        : m_across(plot.across()),
          m_columnMs((plot.across().high - plot.across().low) / columnsOf(plot)),
          m_half(plot.upOf(pen.widthF()) / 2.0)
    {
    }

    void add(const Polyline& line)
    {
        const std::vector<FilledColumn> columns = filledColumns(line, m_across, m_columnMs);
        for (std::size_t first = 0; first < columns.size(); first += mostTogether)
            addPiece(columns, first, std::min(first + mostTogether, columns.size()));
    }

    /// Drawing time grows with the square of an outline's length, so there are several.
    std::vector<QPolygonF> areas()
    {
        finishArea();
        return std::move(m_areas);
    }

    /// One stroke for each column instead, without thickness: faster still.
    void addStrokes(const Polyline& line, QPolygonF& strokes) const
    {
        bool up = true;
        for (const FilledColumn& column : filledColumns(line, m_across, m_columnMs)) {
            const double x = middle(column);
            strokes << QPointF(x, up ? column.bottom : column.top)
                    << QPointF(x, up ? column.top : column.bottom);
            up = !up;
        }
        strokes << lineGap();
    }

private:
    static constexpr std::size_t mostTogether = 24; // columns

    double edge(const FilledColumn& column) const
    {
        return m_across.low + column.column * m_columnMs;
    }
    double middle(const FilledColumn& column) const { return edge(column) + 0.5 * m_columnMs; }

    /// Pieces meet at the edge of a column, where both are as high.
    void addPiece(const std::vector<FilledColumn>& columns, std::size_t first, std::size_t last)
    {
        QPolygonF above, below;
        const auto add = [&](double x, double top, double bottom) {
            above << QPointF(x, top + m_half);
            below << QPointF(x, bottom - m_half);
        };
        const auto addEdge = [&](std::size_t right) {
            const FilledColumn& a = columns[right - 1];
            const FilledColumn& b = columns[right];
            add(edge(b), (a.top + b.top) / 2.0, (a.bottom + b.bottom) / 2.0);
        };
        if (first > 0)
            addEdge(first);
        for (std::size_t i = first; i < last; ++i)
            add(middle(columns[i]), columns[i].top, columns[i].bottom);
        if (last < columns.size())
            addEdge(last);
        std::reverse(below.begin(), below.end());
        m_pieces.push_back(above + below);
        m_columns += last - first;
        if (m_columns >= mostTogether)
            finishArea();
    }

    void finishArea()
    {
        if (!m_pieces.empty())
            m_areas.push_back(joinedAreas(m_pieces));
        m_pieces.clear();
        m_columns = 0;
    }

    ValueRange m_across;
    double m_columnMs;
    double m_half; ///< of the pen's width, in the values' unit
    std::vector<QPolygonF> m_areas;
    std::vector<QPolygonF> m_pieces; ///< of the next area
    std::size_t m_columns = 0;       ///< of these
};

} // namespace

int columnsOf(const Plot& plot)
{
    const double columns = plot.look().moving ? 1.0 : plot.look().columns;
    return std::max(1, static_cast<int>(plot.area().width() * columns));
}

/// Along the first points of all areas and back, so that nothing is filled between them.
QPolygonF joinedAreas(const std::vector<QPolygonF>& areas)
{
    QPolygonF joined;
    for (const QPolygonF& area : areas)
        joined << area << area.front();
    for (auto area = areas.rbegin(); area != areas.rend(); ++area)
        joined << area->front();
    return joined;
}

void addTrack(Plot& plot, const analysis::Track& track, const TrackPyramid& pyramid, QPen pen)
{
    if (plot.look().moving)
        pen.setWidthF(1.0);
    const ValueRange across = plot.across();
    const int columns = columnsOf(plot);
    const double columnMs = (across.high - across.low) / columns;
    DenseLines dense(plot, pen);
    QPolygonF line;
    for (const Polyline& part : decimate(track, across.low, across.high, columns, &pyramid)) {
        if (!isDense(part, columnMs)) {
            for (const DrawnPoint& point : part)
                line << QPointF(point.ms, point.value);
            line << lineGap();
        } else if (plot.look().moving)
            dense.addStrokes(part, line);
        else
            dense.add(part);
    }
    for (QPolygonF& area : dense.areas())
        plot.addArea(std::move(area), pen.color());
    if (!line.empty())
        plot.addLine(std::move(line), pen);
}

QPolygonF thinned(const Plot& plot, const QPolygonF& points, double columnWidth)
{
    const ValueRange across = plot.across();
    const double column = plot.acrossOf(columnWidth);
    const auto columnOf = [&](const QPointF& point) {
        return std::floor(
            (std::clamp(point.x(), across.low - column, across.high + column) - across.low) /
            column);
    };
    QPolygonF chosen;
    for (qsizetype i = 0; i < points.size(); ++i) {
        const bool first = i == 0 || columnOf(points[i - 1]) != columnOf(points[i]);
        const bool last = i + 1 == points.size() || columnOf(points[i + 1]) != columnOf(points[i]);
        if (first || last)
            chosen << points[i];
    }
    return chosen;
}

} // namespace holdband::ui
