#include "ui/lanes/lanes_layout.h"

#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double barInset = 3.0;
constexpr double thinnest = 5.0;  ///< minimum width of a bar
constexpr double roundRoom = 7.0; ///< for a tick or circle

double place(Instant at, Span shown, const QRectF& plot)
{
    const double all = static_cast<double>((shown.end - shown.start).count());
    const double since = static_cast<double>((at - shown.start).count());
    return plot.left() + (all > 0.0 ? since / all : 0.0) * plot.width();
}

void placeLanes(const results::LanesReview& review, Span shown, const LanesMetrics& metrics,
                LanesLayout& layout)
{
    double y = metrics.top - metrics.scrolled;
    for (std::size_t i = 0; i < review.lanes.size(); ++i) {
        const results::Lane& lane = review.lanes[i];
        const double height = metrics.rowHeight * lane.rows;
        layout.lanes.push_back({lane.setup, QRectF(0.0, y, metrics.width, height)});
        for (const results::LaneBar& bar : lane.bars) {
            const double left = place(bar.span.start, shown, layout.plot);
            const double right = place(bar.span.end, shown, layout.plot);
            layout.bars.push_back(
                {bar.batch, static_cast<int>(i), bar.row,
                 QRectF(left, y + bar.row * metrics.rowHeight + barInset,
                        std::max(right - left, thinnest), metrics.rowHeight - 2 * barInset)});
        }
        y += height;
    }
    layout.rowsHeight = y + metrics.scrolled - metrics.top;
    layout.plot.setHeight(std::min(layout.rowsHeight, metrics.rowsHeight));
}

/// Groups bars that would cover one another, row by row.
class Grouping {
public:
    explicit Grouping(LanesLayout& layout) : m_layout(&layout) {}

    /// Takes the bars of one row in order of time, one after another.
    void add(std::size_t index)
    {
        const QRectF& box = m_layout->bars[index].box;
        if (!m_bars.empty() && box.left() < m_right - 0.5) {
            m_bars.push_back(index);
            m_right = std::max(m_right, box.right());
            return;
        }
        close();
        m_bars = {index};
        m_right = box.right();
    }

    void close()
    {
        if (m_bars.size() > 1) {
            const PlacedBar& first = m_layout->bars[m_bars.front()];
            QRectF box = first.box;
            box.setRight(m_right);
            for (const std::size_t bar : m_bars)
                m_layout->bars[bar].group = m_layout->groups.size();
            m_layout->groups.push_back({first.setup, box, {}, m_bars});
        }
        m_bars.clear();
    }

private:
    LanesLayout* m_layout;
    std::vector<std::size_t> m_bars;
    double m_right = 0.0;
};

void groupBars(const results::LanesReview& review, LanesLayout& layout)
{
    std::size_t first = 0;
    for (const results::Lane& lane : review.lanes) {
        for (int row = 0; row < lane.rows; ++row) {
            Grouping grouping(layout);
            for (std::size_t i = 0; i < lane.bars.size(); ++i) {
                if (lane.bars[i].row == row)
                    grouping.add(first + i);
            }
            grouping.close();
        }
        for (PlacedGroup& group : layout.groups) {
            if (group.bars.front() >= first)
                group.span = {lane.bars[group.bars.front() - first].span.start,
                              lane.bars[group.bars.back() - first].span.end};
        }
        first += lane.bars.size();
    }
}

/// The number of the stretch, of `length` milliseconds since 1970, that contains the instant: it
/// doesn't change while the lanes are moved.
std::int64_t stretchOf(Instant at, double length)
{
    return static_cast<std::int64_t>(std::floor(static_cast<double>(toMs(at)) / length));
}

/// The rounds inside the span, grouped by stretch; their positions are not set yet.
std::vector<PlacedTick> gatherRounds(const std::vector<results::RoundTick>& rounds, Span shown,
                                     double length)
{
    std::vector<PlacedTick> ticks;
    std::int64_t last = 0;
    for (const results::RoundTick& round : rounds) {
        if (round.at < shown.start || round.at > shown.end)
            continue;
        const std::int64_t stretch = stretchOf(round.at, length);
        if (ticks.empty() || stretch != last)
            ticks.push_back({0.0, 0, 0, {round.at, round.at}});
        last = stretch;
        ticks.back().rounds += 1;
        ticks.back().missed += round.missed ? 1 : 0;
        ticks.back().span.end = round.at;
    }
    return ticks;
}

/// Positions of rounds: exact if single; evenly spaced if several are grouped.
std::vector<PlacedTick> placeRounds(const std::vector<results::RoundTick>& rounds, Span shown,
                                    const QRectF& plot)
{
    const double all = static_cast<double>((shown.end - shown.start).count());
    const double length = std::max(1.0, roundRoom * all / plot.width());
    std::vector<PlacedTick> ticks = gatherRounds(rounds, shown, length);
    const bool dense = std::any_of(ticks.begin(), ticks.end(),
                                   [](const PlacedTick& tick) { return tick.rounds > 1; });
    for (PlacedTick& tick : ticks) {
        const double middle =
            (static_cast<double>(stretchOf(tick.span.start, length)) + 0.5) * length;
        tick.x = place(dense ? instantFromMs(std::llround(middle)) : tick.span.start, shown, plot);
    }
    std::erase_if(ticks, [&](const PlacedTick& tick) {
        return tick.x < plot.left() || tick.x > plot.right();
    });
    return ticks;
}

void placeNow(Instant now, Span shown, const LanesMetrics& metrics, LanesLayout& layout)
{
    if (now < shown.start || now > shown.end)
        return;
    const double x = place(now, shown, layout.plot);
    layout.nowX = x;
    // No round has happened to its right yet.
    if (x + 4.0 + metrics.nowWidth <= metrics.width - 4.0)
        layout.nowWordX = x + 4.0;
}

template <typename Placed>
std::optional<std::size_t> indexAt(const std::vector<Placed>& all, QPointF point)
{
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (all[i].box.adjusted(0, -barInset, 0, barInset).contains(point))
            return i;
    }
    return std::nullopt;
}

} // namespace

std::optional<std::size_t> LanesLayout::barAt(QPointF point) const
{
    if (!plot.contains(point))
        return std::nullopt;
    const auto found = indexAt(bars, point);
    return found && !bars[*found].group ? found : std::nullopt;
}

std::optional<std::size_t> LanesLayout::groupAt(QPointF point) const
{
    return plot.contains(point) ? indexAt(groups, point) : std::nullopt;
}

std::optional<std::size_t> LanesLayout::roundAt(QPointF point) const
{
    if (std::abs(point.y() - roundsY) > 8.0)
        return std::nullopt;
    std::optional<std::size_t> nearest;
    for (std::size_t i = 0; i < rounds.size(); ++i) {
        const double away = std::abs(rounds[i].x - point.x());
        if (away <= roundRoom / 2.0 + 1.0 &&
            (!nearest || away < std::abs(rounds[*nearest].x - point.x())))
            nearest = i;
    }
    return nearest;
}

QRectF LanesLayout::drawnBox(std::size_t bar) const
{
    return bars[bar].group ? groups[*bars[bar].group].box : bars[bar].box;
}

LanesLayout layOut(const results::LanesReview& review, Span shown, const Zone& zone,
                   const LanesMetrics& metrics)
{
    LanesLayout layout;
    layout.plot =
        QRectF(metrics.nameWidth, metrics.top,
               std::max(10.0, metrics.width - metrics.nameWidth - metrics.rightMargin), 0.0);
    placeLanes(review, shown, metrics, layout);
    groupBars(review, layout);
    layout.roundsY = layout.plot.bottom() + metrics.roundsHeight / 2.0 + 2.0;
    layout.rounds = placeRounds(review.rounds, shown, layout.plot);
    layout.labelsY = layout.plot.bottom() + metrics.roundsHeight + 4.0;
    layout.labels = timeLabels(shown, zone, layout.plot.left(),
                               layout.plot.right() + metrics.rightMargin - 6.0, metrics.labelWidth);
    placeNow(review.now, shown, metrics, layout);
    layout.height = layout.labelsY + metrics.labelsHeight + 7.0;
    return layout;
}

Span lanesSpan(const results::LanesReview& review)
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
    const QRectF here = layout.bars[from].box;
    std::size_t best = from;
    double nearest = std::numeric_limits<double>::infinity();
    const bool across = direction == Direction::left || direction == Direction::right;
    const double sign = direction == Direction::left || direction == Direction::up ? -1.0 : 1.0;
    for (std::size_t i = 0; i < layout.bars.size(); ++i) {
        const QRectF& box = layout.bars[i].box;
        // Compares the starts, because bars that are drawn wider than they are have no meaningful
        // middle.
        const double x = box.left() - here.left();
        const double y = box.center().y() - here.center().y();
        const double along = sign * (across ? x : y);
        if (along <= 1e-6)
            continue;
        // Left and right stay in the row if possible; up and down choose the nearest in time.
        const double sideways = std::abs(across ? y : box.center().x() - here.center().x());
        const double distance = across ? along + 1e6 * (sideways > 1.0) : 1000.0 * along + sideways;
        if (distance < nearest) {
            nearest = distance;
            best = i;
        }
    }
    return best;
}

} // namespace holdband::ui
