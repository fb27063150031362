#include "ui/charts/time_window.h"

#include <algorithm>

namespace holdband::ui {

namespace {

Milliseconds scaled(Milliseconds length, double factor)
{
    return std::chrono::round<Milliseconds>(length * factor);
}

} // namespace

void TimeWindow::zoomAbout(Instant pivot, double factor)
{
    const Milliseconds length = m_shown.end - m_shown.start;
    if (length <= Milliseconds{0})
        return;
    const Milliseconds longest = m_all.end - m_all.start;
    const Milliseconds wanted =
        std::clamp(scaled(length, factor), std::min(shortest, longest), longest);
    const double real = static_cast<double>(wanted.count()) / static_cast<double>(length.count());
    const Instant start = pivot - scaled(pivot - m_shown.start, real);
    m_shown = {start, start + wanted};
    clamp();
}

void TimeWindow::moveBy(Milliseconds later)
{
    m_shown = {m_shown.start + later, m_shown.end + later};
    clamp();
}

void TimeWindow::moveByShare(double share)
{
    moveBy(scaled(m_shown.end - m_shown.start, share));
}

void TimeWindow::show(Span wanted, double marginShare)
{
    Milliseconds margin = scaled(wanted.end - wanted.start, marginShare);
    const Milliseconds length = wanted.end - wanted.start + 2 * margin;
    if (length < shortest)
        margin += (shortest - length) / 2;
    m_shown = {wanted.start - margin, wanted.end + margin};
    clamp();
}

void TimeWindow::clamp()
{
    const Milliseconds length = std::min(m_shown.end - m_shown.start, m_all.end - m_all.start);
    const Instant start = std::clamp(m_shown.start, m_all.start, m_all.end - length);
    m_shown = {start, start + length};
}

} // namespace holdband::ui
