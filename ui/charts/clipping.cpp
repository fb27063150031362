#include "ui/charts/clipping.h"

#include <optional>
#include <utility>

namespace holdband::ui {

namespace {

/// The share of a piece, from 0 to 1, that is inside all four edges.
std::optional<std::pair<double, double>> shareInside(QPointF from, QPointF to, const QRectF& inside)
{
    const double dx = to.x() - from.x();
    const double dy = to.y() - from.y();
    double enter = 0.0;
    double leave = 1.0;
    const auto cut = [&](double along, double room) {
        if (along == 0.0)
            return room >= 0.0;
        const double at = room / along;
        if (along < 0.0)
            enter = std::max(enter, at);
        else
            leave = std::min(leave, at);
        return enter <= leave;
    };
    const bool seen = cut(-dx, from.x() - inside.left()) && cut(dx, inside.right() - from.x()) &&
                      cut(-dy, from.y() - inside.top()) && cut(dy, inside.bottom() - from.y());
    return seen ? std::optional(std::pair{enter, leave}) : std::nullopt;
}

/// One edge of the rectangle: how far a point is inside it.
template <typename Depth>
QPolygonF cutAt(const QPolygonF& area, Depth depth)
{
    QPolygonF stored;
    for (qsizetype i = 0; i < area.size(); ++i) {
        const QPointF from = area[i == 0 ? area.size() - 1 : i - 1];
        const QPointF to = area[i];
        const double a = depth(from);
        const double b = depth(to);
        if ((a < 0.0) != (b < 0.0))
            stored << from + (to - from) * (a / (a - b));
        if (b >= 0.0)
            stored << to;
    }
    return stored;
}

} // namespace

std::vector<QPolygonF> lineInside(const QPolygonF& line, const QRectF& inside)
{
    std::vector<QPolygonF> parts;
    bool joined = false;
    for (qsizetype i = 1; i < line.size(); ++i) {
        const QPointF from = line[i - 1];
        const QPointF way = line[i] - from;
        const auto share = shareInside(from, line[i], inside);
        if (!share) {
            joined = false;
            continue;
        }
        if (!joined || share->first > 0.0)
            parts.push_back({from + way * share->first});
        parts.back() << from + way * share->second;
        joined = share->second >= 1.0;
    }
    return parts;
}

QPolygonF areaInside(const QPolygonF& area, const QRectF& inside)
{
    QPolygonF stored = cutAt(area, [&](QPointF p) { return p.x() - inside.left(); });
    stored = cutAt(stored, [&](QPointF p) { return inside.right() - p.x(); });
    stored = cutAt(stored, [&](QPointF p) { return p.y() - inside.top(); });
    return cutAt(stored, [&](QPointF p) { return inside.bottom() - p.y(); });
}

} // namespace holdband::ui
