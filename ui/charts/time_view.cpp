#include "ui/charts/time_view.h"

#include "ui/theme/motion.h"

#include <QKeyEvent>

namespace holdband::ui {

namespace {

constexpr double keyZoom = 0.7;
constexpr double keyPan = 0.15;
constexpr double pointerStep = 0.01;

} // namespace

TimeView::TimeView(QObject* parent) : QObject(parent)
{
    m_easing.setStartValue(0.0);
    m_easing.setEndValue(1.0);
    m_easing.setEasingCurve(QEasingCurve::OutCubic);
    connect(&m_easing, &QVariantAnimation::valueChanged, this,
            [this](const QVariant& share) { showEased(share.toDouble()); });
}

void TimeView::reset(Span all)
{
    m_easing.stop();
    m_window = TimeWindow(all);
    m_pointer.reset();
    m_mark.clear();
    Q_EMIT shownChanged();
    Q_EMIT pointerChanged();
}

void TimeView::extend(Span all)
{
    endEasing();
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
    endEasing();
    m_window.zoomAbout(pivot, factor);
    Q_EMIT shownChanged();
}

/// Ends at the target itself, which is what everybody has asked for.
void TimeView::showEased(double share)
{
    const auto between = [share](Instant from, Instant to) {
        return from + std::chrono::round<Milliseconds>((to - from) * share);
    };
    if (share >= 1.0)
        m_window = m_target;
    else
        m_window.show({between(m_from.start, m_target.shown().start),
                       between(m_from.end, m_target.shown().end)});
    Q_EMIT shownChanged();
}

void TimeView::easeTo(const TimeWindow& target)
{
    m_target = target;
    m_from = shown();
    if (motionMs() == 0 || m_from.empty())
        return showEased(1.0);
    m_easing.setDuration(motionMs());
    m_easing.start();
}

/// Another change begins where an easing would have ended.
void TimeView::endEasing()
{
    if (m_easing.state() != QAbstractAnimation::Running)
        return;
    m_easing.stop();
    m_window = m_target;
}

void TimeView::zoom(double factor)
{
    endEasing();
    const Span now = shown();
    const Instant middle = now.start + (now.end - now.start) / 2;
    const bool inside = m_pointer && *m_pointer >= now.start && *m_pointer <= now.end;
    TimeWindow zoomed = m_window;
    zoomed.zoomAbout(inside ? *m_pointer : middle, factor);
    easeTo(zoomed);
}

void TimeView::moveBy(Milliseconds later)
{
    endEasing();
    m_window.moveBy(later);
    Q_EMIT shownChanged();
}

void TimeView::moveByShare(double share)
{
    endEasing();
    m_window.moveByShare(share);
    Q_EMIT shownChanged();
}

void TimeView::show(Span wanted, double marginShare)
{
    endEasing();
    TimeWindow zoomed = m_window;
    zoomed.show(wanted, marginShare);
    easeTo(zoomed);
}

void TimeView::showAll()
{
    endEasing();
    TimeWindow zoomed = m_window;
    zoomed.showAll();
    easeTo(zoomed);
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
