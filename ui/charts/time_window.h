// Which part of a span is shown, and how zooming and panning move it. No Gui.
#pragma once

#include "core/quantity/instant.h"

namespace holdband::ui {

class TimeWindow {
public:
    TimeWindow() = default;
    explicit TimeWindow(Span all) : m_all(all), m_shown(all) {}

    Span all() const { return m_all; }
    Span shown() const { return m_shown; }
    bool showsAll() const { return m_shown == m_all; }

    /// Shows `factor` times the length; the pivot does not move on the screen.
    void zoomAbout(Instant pivot, double factor);
    void moveBy(Milliseconds later);
    /// Moves by a share of the shown part.
    void moveByShare(double share);
    /// Shows the span with a margin around it, limited to the available time.
    void show(Span wanted, double marginShare = 0.0);
    void showAll() { m_shown = m_all; }

    static constexpr Milliseconds shortest = std::chrono::minutes{10};

private:
    void clamp();
    Span m_all;
    Span m_shown;
};

} // namespace holdband::ui
