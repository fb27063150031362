// The one time axis that several panels share: what is shown, and where the pointer stands.
// Belongs to the window's thread.
#pragma once

#include "ui/charts/time_window.h"

#include <QObject>
#include <optional>

class QKeyEvent;

namespace holdband::ui {

class TimeView : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

    const TimeWindow& window() const { return m_window; }
    Span shown() const { return m_window.shown(); }
    std::optional<Instant> pointer() const { return m_pointer; }

    void reset(Span all);
    void zoomAbout(Instant pivot, double factor);
    /// About the pointer where it stands inside, else the middle.
    void zoom(double factor);
    void moveBy(Milliseconds later);
    void moveByShare(double share);
    void show(Span wanted, double marginShare);
    void showAll();
    void setPointer(std::optional<Instant> at);
    /// Moves the pointer by a share of what is shown; from the middle where there is none.
    void stepPointer(double share);
    /// Arrows pan, Shift+arrows move the pointer, + and − zoom, 0 or Home shows all. True: taken.
    bool takeKey(const QKeyEvent& event);

Q_SIGNALS:
    void shownChanged();
    void pointerChanged();

private:
    TimeWindow m_window;
    std::optional<Instant> m_pointer;
};

} // namespace holdband::ui
