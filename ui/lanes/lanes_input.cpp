// Mouse, wheel and keyboard input of the lanes, with tooltips and the menu of a bar.
#include "ui/lanes/lanes_text.h"
#include "ui/lanes/lanes_view.h"
#include "ui/words/words.h"

#include <QContextMenuEvent>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double pagePan = 0.75;

/// A name for a menu, in which an unescaped "&" would underline the next letter.
QString inMenu(QString name)
{
    return name.replace(QLatin1Char('&'), QStringLiteral("&&"));
}

/// Short lines are not wrapped, a long sentence is.
QString asTooltip(const QString& words)
{
    QString text;
    for (const QString& line : words.split(QLatin1Char('\n')))
        text += QStringLiteral("<p style='margin:0; white-space:%1'>%2</p>")
                    .arg(line.size() <= 60 ? QStringLiteral("pre") : QStringLiteral("pre-wrap"),
                         line.toHtmlEscaped());
    return text;
}

} // namespace

void LanesView::step(Direction direction)
{
    if (!m_layout.bars.empty())
        setCurrent(neighbour(m_layout, m_current, direction));
}

void LanesView::open(std::size_t index)
{
    act(index, false);
}

void LanesView::act(std::size_t index, bool second)
{
    if (index >= m_layout.bars.size())
        return;
    setCurrent(index);
    if (second)
        Q_EMIT secondChosen(current());
    else
        Q_EMIT batchOpened(current());
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
    const QPointF at = event->position();
    if (m_dragging && (m_dragged || std::abs(at.x() - m_pressX) > 4.0)) {
        m_dragged = true;
        setCursor(Qt::ClosedHandCursor);
        m_window.moveBy(instantAt(m_dragX) - instantAt(at.x()));
        m_dragX = at.x();
        updateLayout();
        return;
    }
    const bool acts = m_layout.barAt(at) || m_layout.groupAt(at) || showAllBox().contains(at);
    setCursor(acts ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

void LanesView::press(QPointF at, bool second)
{
    if (const auto bar = m_layout.barAt(at))
        act(*bar, second);
    else if (const auto group = m_layout.groupAt(at))
        showOnly(m_layout.groups[*group].span);
    else if (showAllBox().contains(at))
        showAllOfTime();
}

void LanesView::mouseReleaseEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton)
        return;
    const bool clicked = m_dragging && !m_dragged;
    m_dragging = false;
    setCursor(Qt::ArrowCursor);
    if (clicked)
        press(event->position(), event->modifiers().testFlag(Qt::ControlModifier));
}

void LanesView::mouseDoubleClickEvent(QMouseEvent* event)
{
    if (!m_layout.barAt(event->position()) && !m_layout.groupAt(event->position()))
        showAllOfTime();
}

void LanesView::wheelEvent(QWheelEvent* event)
{
    const QPoint delta = event->angleDelta();
    const QPointF at = event->position();
    event->accept();
    if (at.x() < m_layout.plot.left() && m_layout.rowsHeight > m_layout.plot.height())
        return scrollTo(m_scrolled - delta.y() / 4.0);
    if (event->modifiers().testFlag(Qt::ShiftModifier) || (delta.y() == 0 && delta.x() != 0))
        m_window.moveByShare(-(delta.y() + delta.x()) / 120.0 * 0.1);
    else
        m_window.zoomAbout(
            instantAt(std::clamp(at.x(), m_layout.plot.left(), m_layout.plot.right())),
            std::pow(0.8, delta.y() / 120.0));
    updateLayout();
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
    else if (key == Qt::Key_PageUp)
        m_window.moveByShare(-pagePan);
    else if (key == Qt::Key_PageDown)
        m_window.moveByShare(pagePan);
    else
        return false;
    updateLayout();
    return true;
}

bool LanesView::stepKey(int key)
{
    switch (key) {
    case Qt::Key_Left:
        step(Direction::left);
        return true;
    case Qt::Key_Right:
        step(Direction::right);
        return true;
    case Qt::Key_Up:
        step(Direction::up);
        return true;
    case Qt::Key_Down:
        step(Direction::down);
        return true;
    default:
        return false;
    }
}

void LanesView::keyPressEvent(QKeyEvent* event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && !m_layout.bars.empty())
        act(m_current, event->modifiers().testFlag(Qt::ControlModifier));
    else if (!stepKey(event->key()) && !zoomKey(event->key()))
        QWidget::keyPressEvent(event);
}

std::unique_ptr<QMenu> LanesView::menuFor(const QString& batch)
{
    auto menu = std::make_unique<QMenu>(this);
    const auto add = [&](const QString& text, bool enabled, auto act) {
        QAction* action = menu->addAction(text);
        action->setEnabled(enabled);
        connect(action, &QAction::triggered, this, act);
    };
    const auto index = indexOf(batch);
    const QString beside = m_chosen.isEmpty() ? QString() : m_chosen.first();
    const bool other = !beside.isEmpty() && beside != batch;
    add(Words::tr("&Open the run of %1").arg(inMenu(batch)), true,
        [this, batch] { Q_EMIT batchOpened(batch); });
    add(other ? Words::tr("Set &side by side with %1").arg(inMenu(beside))
              : Words::tr("Set &side by side"),
        other, [this, batch] { Q_EMIT secondChosen(batch); });
    menu->addSeparator();
    add(Words::tr("&Change this batch…"), m_mayChange,
        [this, batch] { Q_EMIT changeWanted(batch); });
    add(Words::tr("Add a journal &note…"), m_mayChange,
        [this, batch] { Q_EMIT noteWanted(batch); });
    menu->addSeparator();
    add(Words::tr("Show only its &time"), index.has_value(), [this, batch] {
        if (const auto found = indexOf(batch))
            showOnly(barOf(*found)->span);
    });
    add(Words::tr("Show &all"), !m_window.showsAll(), [this] { showAllOfTime(); });
    return menu;
}

void LanesView::contextMenuEvent(QContextMenuEvent* event)
{
    if (m_layout.bars.empty())
        return;
    const bool byMouse = event->reason() == QContextMenuEvent::Mouse;
    if (byMouse) {
        const auto bar = m_layout.barAt(event->pos());
        if (!bar)
            return;
        setCurrent(*bar);
    } else {
        bringIntoView(m_current);
    }
    const QRectF seen = m_layout.drawnBox(m_current).intersected(m_layout.plot);
    QMenu* menu = menuFor(current()).release();
    menu->setAttribute(Qt::WA_DeleteOnClose);
    menu->popup(byMouse ? event->globalPos() : mapToGlobal(seen.bottomLeft().toPoint()));
}

void LanesView::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    if (!m_layout.bars.empty())
        setCurrent(m_current);
}

void LanesView::focusOutEvent(QFocusEvent* event)
{
    QWidget::focusOutEvent(event);
    update();
}

QString LanesView::helpAt(QPointF at) const
{
    if (const auto bar = m_layout.barAt(at))
        return barText(*barOf(*bar), m_zone);
    if (const auto group = m_layout.groupAt(at)) {
        std::vector<const results::LaneBar*> bars;
        for (const std::size_t bar : m_layout.groups[*group].bars)
            bars.push_back(barOf(bar));
        return groupText(bars, m_zone);
    }
    if (const auto round = m_layout.roundAt(at))
        return roundsText(m_layout.rounds[*round], m_zone);
    if (showAllBox().contains(at))
        return Words::tr("Show all of the time (0, or a double-click beside the bars)");
    for (const PlacedLane& lane : m_layout.lanes) {
        if (at.x() < m_layout.plot.left() && at.y() < m_layout.plot.bottom() &&
            lane.box.contains(at))
            return shown(lane.setup);
    }
    return {};
}

bool LanesView::event(QEvent* event)
{
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const QString words = helpAt(help->pos());
    if (words.isEmpty())
        QToolTip::hideText();
    else
        QToolTip::showText(help->globalPos(), asTooltip(words), this);
    return true;
}

} // namespace holdband::ui
