#include "ui/lanes/lanes_view.h"

#include "core/text/times.h"
#include "ui/charts/panel.h"
#include "ui/words/words.h"

#include <QCoreApplication>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

LanesView::LanesView(QWidget* parent) : QWidget(parent)
{
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleName(QStringLiteral("Lanes"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void LanesView::setReview(review::LanesReview review, const Zone& zone)
{
    const Span before = m_window.shown();
    const bool wholeBefore = m_window.showsAll();
    m_review = std::move(review);
    m_zone = zone;
    m_window = TimeWindow(lanesSpan(m_review));
    if (!wholeBefore && !before.empty())
        m_window.show(before);
    layOutAnew();
    m_current = std::min(m_current, m_layout.bars.empty() ? 0 : m_layout.bars.size() - 1);
    updateGeometry();
    QCoreApplication::postEvent(this, new QEvent(QEvent::LayoutRequest));
}

void LanesView::clear()
{
    setReview({}, Zone::utc());
    m_chosen.clear();
}

void LanesView::setChosen(const QStringList& batches)
{
    m_chosen = batches;
    for (std::size_t i = 0; i < m_layout.bars.size() && !batches.isEmpty(); ++i) {
        if (shown(m_layout.bars[i].batch) == batches.first())
            m_current = i;
    }
    update();
}

std::optional<QPoint> LanesView::placeOf(const QString& batch) const
{
    for (const PlacedBar& bar : m_layout.bars) {
        if (shown(bar.batch) == batch)
            return bar.box.center().toPoint();
    }
    return std::nullopt;
}

QString LanesView::current() const
{
    return m_layout.bars.empty() ? QString() : shown(m_layout.bars[m_current].batch);
}

LanesMetrics LanesView::metrics() const
{
    LanesMetrics metrics;
    metrics.width = width();
    metrics.rowHeight = fontMetrics().height() + 11.0;
    metrics.roundsHeight = fontMetrics().height() + 2.0;
    metrics.monthsHeight = QFontMetrics(smallFont(*this)).height();
    int widest = fontMetrics().horizontalAdvance(QStringLiteral("Readings"));
    for (const review::Lane& lane : m_review.lanes)
        widest = std::max(widest, fontMetrics().horizontalAdvance(shown(lane.setup)));
    metrics.labelWidth = std::min(widest, width() / 6) + 30.0;
    return metrics;
}

void LanesView::layOutAnew()
{
    m_layout = layOut(m_review, m_window.shown(), m_zone, metrics());
    update();
}

QSize LanesView::sizeHint() const
{
    return {600, static_cast<int>(layOut(m_review, m_window.shown(), m_zone, metrics()).height)};
}

QSize LanesView::minimumSizeHint() const
{
    return {300, sizeHint().height()};
}

void LanesView::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    layOutAnew();
}

void LanesView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        layOutAnew();
}

Instant LanesView::instantAt(double x) const
{
    const Span seen = m_window.shown();
    const double share = (x - m_layout.plot.left()) / m_layout.plot.width();
    return seen.start + std::chrono::round<Milliseconds>((seen.end - seen.start) * share);
}

const review::LaneBar* LanesView::barOf(std::size_t index) const
{
    for (const review::Lane& lane : m_review.lanes) {
        if (index < lane.bars.size())
            return &lane.bars[index];
        index -= lane.bars.size();
    }
    return nullptr;
}

void LanesView::setCurrent(std::size_t index)
{
    m_current = index;
    if (const review::LaneBar* bar = barOf(index)) {
        setAccessibleDescription(shown(bar->batch) + QStringLiteral(": ") + shown(bar->headline));
        const QRectF box = m_layout.bars[index].box;
        if (box.right() < m_layout.plot.left() || box.left() > m_layout.plot.right()) {
            m_window.moveBy(bar->span.start - m_window.shown().start);
            layOutAnew();
        }
    }
    update();
}

void LanesView::step(Direction direction)
{
    if (!m_layout.bars.empty())
        setCurrent(neighbour(m_layout, m_current, direction));
}

void LanesView::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton)
        return;
    m_dragging = true;
    m_dragged = false;
    m_pressX = m_dragX = event->position().x();
}

void LanesView::mouseMoveEvent(QMouseEvent* event)
{
    const double x = event->position().x();
    if (m_dragging && (m_dragged || std::abs(x - m_pressX) > 4.0)) {
        m_dragged = true;
        m_window.moveBy(instantAt(m_dragX) - instantAt(x));
        m_dragX = x;
        layOutAnew();
        return;
    }
    setCursor(m_layout.barAt(event->position()) ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

void LanesView::mouseReleaseEvent(QMouseEvent* event)
{
    const bool clicked = m_dragging && !m_dragged;
    m_dragging = false;
    const auto bar = m_layout.barAt(event->position());
    if (!clicked || !bar)
        return;
    setCurrent(*bar);
    if (event->modifiers().testFlag(Qt::ControlModifier))
        Q_EMIT secondChosen(current());
    else
        Q_EMIT batchOpened(current());
}

void LanesView::mouseDoubleClickEvent(QMouseEvent* event)
{
    if (m_layout.barAt(event->position()))
        return;
    m_window.showAll();
    layOutAnew();
}

void LanesView::wheelEvent(QWheelEvent* event)
{
    const QPoint delta = event->angleDelta();
    if (event->modifiers().testFlag(Qt::ShiftModifier) || (delta.y() == 0 && delta.x() != 0))
        m_window.moveByShare(-(delta.y() + delta.x()) / 120.0 * 0.1);
    else
        m_window.zoomAbout(instantAt(event->position().x()), std::pow(0.8, delta.y() / 120.0));
    layOutAnew();
    event->accept();
}

bool LanesView::zoomKey(int key)
{
    const Span seen = m_window.shown();
    const Instant middle = seen.start + (seen.end - seen.start) / 2;
    if (key == Qt::Key_Plus || key == Qt::Key_Equal)
        m_window.zoomAbout(middle, 0.7);
    else if (key == Qt::Key_Minus)
        m_window.zoomAbout(middle, 1.0 / 0.7);
    else if (key == Qt::Key_0 || key == Qt::Key_Home)
        m_window.showAll();
    else
        return false;
    layOutAnew();
    return true;
}

void LanesView::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Left:
        return step(Direction::left);
    case Qt::Key_Right:
        return step(Direction::right);
    case Qt::Key_Up:
        return step(Direction::up);
    case Qt::Key_Down:
        return step(Direction::down);
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_layout.bars.empty())
            return;
        if (event->modifiers().testFlag(Qt::ControlModifier))
            Q_EMIT secondChosen(current());
        else
            Q_EMIT batchOpened(current());
        return;
    default:
        if (!zoomKey(event->key()))
            QWidget::keyPressEvent(event);
    }
}

void LanesView::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    if (!m_layout.bars.empty())
        setCurrent(m_current);
}

void LanesView::showHelp(QPoint at, QPoint global)
{
    const auto index = m_layout.barAt(at);
    const review::LaneBar* bar = index ? barOf(*index) : nullptr;
    if (!bar) {
        QToolTip::hideText();
        return;
    }
    const QString ended =
        bar->open ? QStringLiteral("still open") : shown(localShortText(bar->span.end, m_zone));
    QToolTip::showText(global,
                       QStringLiteral("%1 · %2 – %3\n%4")
                           .arg(shown(bar->batch), shown(localShortText(bar->span.start, m_zone)),
                                ended, shown(bar->headline)),
                       this);
}

bool LanesView::event(QEvent* event)
{
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    showHelp(help->pos(), help->globalPos());
    return true;
}

} // namespace holdband::ui
