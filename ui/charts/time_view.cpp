#include "ui/charts/time_view.h"

#include <QKeyEvent>

namespace holdband::ui {

namespace {

constexpr double keyZoom = 0.7;
constexpr double keyPan = 0.15;
constexpr double pointerStep = 0.01;

} // namespace

void TimeView::reset(Span all)
{
    m_window = TimeWindow(all);
    m_pointer.reset();
    m_mark.clear();
    Q_EMIT shownChanged();
    Q_EMIT pointerChanged();
}

void TimeView::extend(Span all)
{
    const Span before = shown();
    const bool whole = m_window.showsAll();
    m_window = TimeWindow(all);
    if (!whole && !before.empty())
        m_window.show(before);
    Q_EMIT shownChanged();
    Q_EMIT pointerChanged();
}

void TimeView::zoomAbout(Instant pivot, double factor)
{
    m_window.zoomAbout(pivot, factor);
    Q_EMIT shownChanged();
}

void TimeView::zoom(double factor)
{
    const Span now = shown();
    const Instant middle = now.start + (now.end - now.start) / 2;
    const bool inside = m_pointer && *m_pointer >= now.start && *m_pointer <= now.end;
    zoomAbout(inside ? *m_pointer : middle, factor);
}

void TimeView::moveBy(Milliseconds later)
{
    m_window.moveBy(later);
    Q_EMIT shownChanged();
}

void TimeView::moveByShare(double share)
{
    m_window.moveByShare(share);
    Q_EMIT shownChanged();
}

void TimeView::show(Span wanted, double marginShare)
{
    m_window.show(wanted, marginShare);
    Q_EMIT shownChanged();
}

void TimeView::showAll()
{
    m_window.showAll();
    Q_EMIT shownChanged();
}

void TimeView::setPointer(std::optional<Instant> at)
{
    if (at == m_pointer)
        return;
    m_pointer = at;
    if (at)
        m_mark.follow(*at);
    Q_EMIT pointerChanged();
}

void TimeView::pointAt(Instant at, Milliseconds within)
{
    const auto reading = m_readings.nearest ? m_readings.nearest(at) : std::nullopt;
    const bool near = reading && std::chrono::abs(*reading - at) <= within;
    setPointer(near ? *reading : at);
}

void TimeView::stepReading(bool after)
{
    const Span now = shown();
    const Instant from = m_pointer.value_or(after ? now.start : now.end);
    const auto to = m_readings.beside ? m_readings.beside(from, after) : std::nullopt;
    if (!to)
        return;
    if (*to < now.start || *to > now.end)
        moveBy(*to - (now.start + (now.end - now.start) / 2));
    setPointer(*to);
}

void TimeView::stepPointer(double share)
{
    const Span now = shown();
    const Milliseconds length = now.end - now.start;
    const Instant from = m_pointer.value_or(now.start + length / 2);
    const Instant to = from + std::chrono::round<Milliseconds>(length * share);
    setPointer(std::clamp(to, now.start, now.end));
}

bool TimeView::takeKey(const QKeyEvent& event)
{
    const bool shift = event.modifiers().testFlag(Qt::ShiftModifier);
    const bool ctrl = event.modifiers().testFlag(Qt::ControlModifier);
    if (ctrl && (event.key() == Qt::Key_Left || event.key() == Qt::Key_Right)) {
        stepReading(event.key() == Qt::Key_Right);
        return true;
    }
    switch (event.key()) {
    case Qt::Key_Left:
        shift ? stepPointer(-pointerStep) : moveByShare(-keyPan);
        return true;
    case Qt::Key_Right:
        shift ? stepPointer(pointerStep) : moveByShare(keyPan);
        return true;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoom(keyZoom);
        return true;
    case Qt::Key_Minus:
        zoom(1.0 / keyZoom);
        return true;
    case Qt::Key_0:
    case Qt::Key_Home:
        showAll();
        return true;
    default:
        return takeMarkKey(event.key());
    }
}

bool TimeView::takeMarkKey(int key)
{
    const bool ends = m_mark.isOpen() && (key == Qt::Key_Return || key == Qt::Key_Enter);
    if (key == Qt::Key_M || ends) {
        if (!m_pointer)
            stepPointer(0.0);
        m_mark.isOpen() ? m_mark.finish() : m_mark.begin(*m_pointer);
        return true;
    }
    const bool any = m_mark.span() || m_mark.isWanted();
    if (key == Qt::Key_Escape && any)
        m_mark.clear();
    return key == Qt::Key_Escape && any;
}

} // namespace holdband::ui
