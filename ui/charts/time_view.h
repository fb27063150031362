// The one time axis that several panels share: what is shown, and where the pointer stands.
// Belongs to the window's thread.
#pragma once

#include "ui/charts/time_window.h"

#include <QObject>
#include <functional>
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
    /// The same thing with more known of it: what is looked at stays where it is. Where all was
    /// shown, all is.
    void extend(Span all);
    /// Where the pointer may stand on a reading: the nearest to an instant, and the one before or
    /// after it.
    struct Readings {
        std::function<std::optional<Instant>(Instant)> nearest;
        std::function<std::optional<Instant>(Instant, bool after)> beside;
    };
    void setReadings(Readings readings) { m_readings = std::move(readings); }
    void zoomAbout(Instant pivot, double factor);
    /// About the pointer where it stands inside, else the middle.
    void zoom(double factor);
    void moveBy(Milliseconds later);
    void moveByShare(double share);
    void show(Span wanted, double marginShare);
    void showAll();
    void setPointer(std::optional<Instant> at);
    /// On the nearest reading where one is `within` reach.
    void pointAt(Instant at, Milliseconds within);
    /// To the reading before or after; scrolls along where it is out of sight.
    void stepReading(bool after);
    /// Moves the pointer by a share of what is shown; from the middle where there is none.
    void stepPointer(double share);
    /// Arrows pan, Shift+arrows move the pointer, Ctrl+arrows lead it from reading to reading, +
    /// and − zoom, 0 or Home shows all. True: taken.
    bool takeKey(const QKeyEvent& event);

Q_SIGNALS:
    void shownChanged();
    void pointerChanged();

private:
    TimeWindow m_window;
    std::optional<Instant> m_pointer;
    Readings m_readings;
};

} // namespace holdband::ui
