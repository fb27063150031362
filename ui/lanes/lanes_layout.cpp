#include "ui/lanes/lanes_layout.h"

#include <QDate>
#include <QLocale>
#include <algorithm>
#include <cmath>
#include <limits>

namespace holdband::ui {

namespace {

constexpr double barInset = 3.0;

double place(Instant at, Span shown, const QRectF& plot)
{
    const double all = static_cast<double>((shown.end - shown.start).count());
    const double since = static_cast<double>((at - shown.start).count());
    return plot.left() + (all > 0.0 ? since / all : 0.0) * plot.width();
}

void placeLanes(const review::LanesReview& review, Span shown, const LanesMetrics& metrics,
                LanesLayout& layout)
{
    double y = metrics.top;
    for (std::size_t i = 0; i < review.lanes.size(); ++i) {
        const review::Lane& lane = review.lanes[i];
        const double height = metrics.rowHeight * lane.rows;
        layout.lanes.push_back({lane.setup, QRectF(0.0, y, metrics.width, height)});
        for (const review::LaneBar& bar : lane.bars) {
            const double left = place(bar.span.start, shown, layout.plot);
            const double right = place(bar.span.end, shown, layout.plot);
            layout.bars.push_back(
                {bar.batch, static_cast<int>(i),
                 QRectF(left, y + bar.row * metrics.rowHeight + barInset,
                        std::max(right - left, 3.0), metrics.rowHeight - 2 * barInset)});
        }
        y += height;
    }
    layout.plot.setBottom(y);
}

void placeMonths(Span shown, const Zone& zone, LanesLayout& layout)
{
    using namespace std::chrono;
    const Date first = zone.localDate(shown.start);
    year_month month = first.year() / first.month();
    double lastX = -1e9;
    for (; zone.startOfDay(month / 1) <= shown.end; month += months{1}) {
        const double x = place(zone.startOfDay(month / 1), shown, layout.plot);
        const double seen = std::max(x, layout.plot.left());
        if (seen - lastX < 64.0)
            continue;
        const bool january = month.month() == January;
        QString label = QLocale().standaloneMonthName(static_cast<int>(unsigned(month.month())),
                                                      QLocale::LongFormat);
        if (january || layout.months.empty())
            label += QStringLiteral(" %1").arg(static_cast<int>(month.year()));
        layout.months.push_back({seen, label.toStdString()});
        lastX = seen;
    }
}

} // namespace

std::optional<std::size_t> LanesLayout::barAt(QPointF point) const
{
    for (std::size_t i = 0; i < bars.size(); ++i) {
        if (bars[i].box.adjusted(0, -barInset, 0, barInset).contains(point))
            return i;
    }
    return std::nullopt;
}

LanesLayout layOut(const review::LanesReview& review, Span shown, const Zone& zone,
                   const LanesMetrics& metrics)
{
    LanesLayout layout;
    layout.plot =
        QRectF(metrics.labelWidth, metrics.top,
               std::max(10.0, metrics.width - metrics.labelWidth - metrics.rightMargin), 0.0);
    placeLanes(review, shown, metrics, layout);
    layout.roundsY = layout.plot.bottom() + metrics.roundsHeight / 2.0 + 2.0;
    for (const review::RoundTick& tick : review.rounds) {
        const double x = place(tick.at, shown, layout.plot);
        if (x >= layout.plot.left() && x <= layout.plot.right())
            layout.rounds.push_back({x, tick.missed});
    }
    layout.monthsY = layout.plot.bottom() + metrics.roundsHeight + 4.0;
    placeMonths(shown, zone, layout);
    if (review.now >= shown.start && review.now <= shown.end)
        layout.nowX = place(review.now, shown, layout.plot);
    layout.height = layout.monthsY + metrics.monthsHeight + 5.0;
    return layout;
}

Span lanesSpan(const review::LanesReview& review)
{
    Span span = review.shown;
    if (span.empty())
        return {review.now - std::chrono::days{30}, review.now + std::chrono::days{3}};
    const Milliseconds length = span.end - span.start;
    if (review.now > span.end && review.now - span.end < length / 5)
        span.end = review.now;
    return {span.start - length / 50, span.end + length / 33};
}

std::size_t neighbour(const LanesLayout& layout, std::size_t from, Direction direction)
{
    const QPointF here = layout.bars[from].box.center();
    std::size_t best = from;
    double nearest = std::numeric_limits<double>::infinity();
    const bool across = direction == Direction::left || direction == Direction::right;
    const double sign = direction == Direction::left || direction == Direction::up ? -1.0 : 1.0;
    for (std::size_t i = 0; i < layout.bars.size(); ++i) {
        const QPointF away = layout.bars[i].box.center() - here;
        const double along = sign * (across ? away.x() : away.y());
        const double aside = std::abs(across ? away.y() : away.x());
        if (along <= 0.5)
            continue;
        // Left and right stay in the row where they can; up and down take the nearest in time.
        const double distance = across ? along + 1000.0 * (aside > 1.0) : 1000.0 * along + aside;
        if (distance < nearest) {
            nearest = distance;
            best = i;
        }
    }
    return best;
}

} // namespace holdband::ui
