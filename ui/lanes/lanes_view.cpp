#include "ui/lanes/lanes_view.h"

#include "ui/lanes/lanes_accessible.h"
#include "ui/lanes/lanes_text.h"
#include "ui/theme/card.h"
#include "ui/theme/type_scale.h"
#include "ui/words/words.h"

#include <QCoreApplication>
#include <QEvent>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

LanesView::LanesView(QWidget* parent) : QWidget(parent)
{
    makeLanesAccessible();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleName(Words::tr("Lanes"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void LanesView::setReview(results::LanesReview review, const Zone& zone)
{
    const QString before = current();
    const Span shownBefore = m_window.shown();
    const bool wholeBefore = m_window.showsAll();
    m_review = std::move(review);
    m_zone = zone;
    m_window = TimeWindow(lanesSpan(m_review));
    if (!wholeBefore && !shownBefore.empty())
        m_window.show(shownBefore);
    updateLayout();
    m_current = indexOf(before).value_or(
        std::min(m_current, m_layout.bars.empty() ? 0 : m_layout.bars.size() - 1));
    updateGeometry();
    QCoreApplication::postEvent(this, new QEvent(QEvent::LayoutRequest));
    announceBarsChanged(*this);
    Q_EMIT rowsChanged();
}

void LanesView::setNow(Instant now)
{
    if (now <= m_review.now || m_review.lanes.empty())
        return;
    const bool whole = m_window.showsAll();
    const Span before = m_window.shown();
    m_review.now = now;
    for (results::Lane& lane : m_review.lanes) {
        for (results::LaneBar& bar : lane.bars) {
            if (!bar.open)
                continue;
            bar.span.end = std::max(bar.span.end, now);
            m_review.shown.end = std::max(m_review.shown.end, bar.span.end);
        }
    }
    m_window = TimeWindow(lanesSpan(m_review));
    if (!whole)
        m_window.show(before);
    updateLayout();
}

void LanesView::clear()
{
    m_window = {};
    m_current = 0;
    m_scrolled = 0.0;
    m_chosen.clear();
    setReview({}, Zone::utc());
}

void LanesView::setChosen(const QStringList& batches)
{
    if (batches == m_chosen)
        return;
    m_chosen = batches;
    if (const auto index = batches.isEmpty() ? std::nullopt : indexOf(batches.last())) {
        m_current = *index;
        scrollToRow(*index);
    }
    update();
}

std::optional<std::size_t> LanesView::indexOf(const QString& batch) const
{
    for (std::size_t i = 0; i < m_layout.bars.size(); ++i) {
        if (shown(m_layout.bars[i].batch) == batch)
            return i;
    }
    return std::nullopt;
}

std::optional<QPoint> LanesView::placeOf(const QString& batch) const
{
    const auto index = indexOf(batch);
    return index ? std::optional(m_layout.bars[*index].box.center().toPoint()) : std::nullopt;
}

QString LanesView::current() const
{
    return m_layout.bars.empty() ? QString() : shown(m_layout.bars[m_current].batch);
}

LanesMetrics LanesView::metrics() const
{
    LanesMetrics metrics;
    const QFontMetrics small(smallFont(font()));
    metrics.width = width();
    metrics.rowHeight = fontMetrics().height() + 11.0;
    metrics.roundsHeight = fontMetrics().height() + 2.0;
    metrics.labelsHeight = small.height();
    metrics.labelWidth = [small](const std::string& text) {
        return static_cast<double>(small.horizontalAdvance(shown(text)));
    };
    metrics.nowWidth = small.horizontalAdvance(Words::tr("now"));
    int widest = std::max(
        fontMetrics().horizontalAdvance(Words::tr("Readings", "of the rounds, beneath the lanes")),
        small.horizontalAdvance(Words::tr("Show all")));
    for (const results::Lane& lane : m_review.lanes)
        widest = std::max(widest, fontMetrics().horizontalAdvance(shown(lane.setup)));
    metrics.nameWidth = std::min(widest, width() / 6) + 30.0;
    metrics.scrolled = m_scrolled;
    return metrics;
}

double LanesView::heightWithoutRows() const
{
    const LanesMetrics own = metrics();
    return own.top + own.roundsHeight + own.labelsHeight + 11.0;
}

void LanesView::updateLayout()
{
    LanesMetrics own = metrics();
    own.rowsHeight = std::max(own.rowHeight, height() - heightWithoutRows());
    m_layout = layOut(m_review, m_window.shown(), m_zone, own);
    const double most = std::max(0.0, m_layout.rowsHeight - m_layout.plot.height());
    if (m_scrolled > most) {
        m_scrolled = own.scrolled = most;
        m_layout = layOut(m_review, m_window.shown(), m_zone, own);
    }
    update();
}

void LanesView::scrollTo(double pixels)
{
    const double most = std::max(0.0, m_layout.rowsHeight - m_layout.plot.height());
    const double wanted = std::clamp(pixels, 0.0, most);
    if (wanted == m_scrolled)
        return;
    m_scrolled = wanted;
    updateLayout();
    Q_EMIT rowsChanged();
}

QSize LanesView::sizeHint() const
{
    const double rows = metrics().rowHeight;
    double height = heightWithoutRows();
    for (const results::Lane& lane : m_review.lanes)
        height += rows * lane.rows;
    return {600, static_cast<int>(std::ceil(height))};
}

QSize LanesView::minimumSizeHint() const
{
    return {300, static_cast<int>(heightWithoutRows() + metrics().rowHeight)};
}

void LanesView::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    updateLayout();
    Q_EMIT rowsChanged();
}

void LanesView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        updateLayout();
        updateGeometry();
    }
}

Instant LanesView::instantAt(double x) const
{
    const Span seen = m_window.shown();
    const double share = (x - m_layout.plot.left()) / m_layout.plot.width();
    return seen.start + std::chrono::round<Milliseconds>((seen.end - seen.start) * share);
}

const results::LaneBar* LanesView::barOf(std::size_t index) const
{
    for (const results::Lane& lane : m_review.lanes) {
        if (index < lane.bars.size())
            return &lane.bars[index];
        index -= lane.bars.size();
    }
    return nullptr;
}

QString LanesView::setupOf(std::size_t index) const
{
    const auto lane = static_cast<std::size_t>(m_layout.bars[index].setup);
    return shown(m_review.lanes[lane].setup);
}

void LanesView::setCurrent(std::size_t index)
{
    m_current = index;
    if (const results::LaneBar* bar = barOf(index)) {
        setAccessibleDescription(shown(bar->batch) + QStringLiteral(": ") + shown(bar->headline));
        bringIntoView(index);
        if (hasFocus())
            announceFocus(*this, index);
    }
    update();
}

/// Centres its start if that was not visible.
void LanesView::bringIntoView(std::size_t index)
{
    const QRectF box = m_layout.bars[index].box;
    if (box.right() < m_layout.plot.left() + 4.0 || box.left() > m_layout.plot.right() - 4.0) {
        const Span seen = m_window.shown();
        const Instant middle = seen.start + (seen.end - seen.start) / 2;
        m_window.moveBy(barOf(index)->span.start - middle);
        updateLayout();
    }
    scrollToRow(index);
}

void LanesView::scrollToRow(std::size_t index)
{
    const QRectF box = m_layout.bars[index].box;
    if (box.top() < m_layout.plot.top())
        scrollTo(m_scrolled + box.top() - m_layout.plot.top() - 3.0);
    else if (box.bottom() > m_layout.plot.bottom())
        scrollTo(m_scrolled + box.bottom() - m_layout.plot.bottom() + 3.0);
}

void LanesView::showOnly(Span span)
{
    m_window.show(span, 0.08);
    updateLayout();
}

void LanesView::showAllOfTime()
{
    m_window.showAll();
    updateLayout();
}

QRectF LanesView::showAllBox() const
{
    if (m_window.showsAll())
        return {};
    const QFontMetrics small(smallFont(font()));
    return {double(spacing::card), m_layout.labelsY,
            small.horizontalAdvance(Words::tr("Show all")) + 2.0, double(small.height())};
}

} // namespace holdband::ui
