// The time axis that several panels share: the shown part, and the position of the pointer. Belongs
// to the window's thread.
#pragma once

#include "ui/charts/span_mark.h"
#include "ui/charts/time_window.h"

#include <QObject>
#include <QVariantAnimation>
#include <functional>
#include <optional>

class QKeyEvent;

namespace holdband::ui {

class TimeView : public QObject {
    Q_OBJECT
public:
    explicit TimeView(QObject* parent = nullptr);

    /// What the user marks on the axis.
    SpanMark& mark() { return m_mark; }
    const SpanMark& mark() const { return m_mark; }
    const TimeWindow& window() const { return m_window; }
    Span shown() const { return m_window.shown(); }
    std::optional<Instant> pointer() const { return m_pointer; }

    void reset(Span all);
    /// More data of the same run: the shown part does not change, unless everything was shown.
    void extend(Span all);
    /// The readings to which the pointer may snap: the nearest to an instant, and the one before or
    /// after it.
    struct Readings {
        std::function<std::optional<Instant>(Instant)> nearest;
        std::function<std::optional<Instant>(Instant, bool after)> beside;
    };
    void setReadings(Readings readings) { m_readings = std::move(readings); }
    void zoomAbout(Instant pivot, double factor);
    /// Around the pointer if it is inside, else around the middle.
    void zoom(double factor);
    void moveBy(Milliseconds later);
    void moveByShare(double share);
    void show(Span wanted, double marginShare);
    void showAll();
    void setPointer(std::optional<Instant> at);
    /// Snaps to the nearest reading if it is `within` reach.
    void pointAt(Instant at, Milliseconds within);
    /// Moves to the reading before or after; scrolls if it is not visible.
    void stepReading(bool after);
    /// Moves the pointer by a share of the shown part; starts in the middle if there is no pointer.
    void stepPointer(double share);
    /// Arrows pan, Shift+arrows move the pointer, Ctrl+arrows move it from reading to reading, +
    /// and − zoom, 0 or Home shows all; M sets the ends of a mark at the pointer, Escape clears it.
    /// True: the key was handled.
    bool takeKey(const QKeyEvent& event);

Q_SIGNALS:
    void shownChanged();
    void pointerChanged();

private:
    bool takeMarkKey(int key);
    void easeTo(const TimeWindow& target);
    void showEased(double share);
    void endEasing();

    TimeWindow m_window;
    TimeWindow m_target; ///< where an easing ends
    Span m_from;         ///< where it began
    QVariantAnimation m_easing;
    SpanMark m_mark;
    std::optional<Instant> m_pointer;
    Readings m_readings;
};

} // namespace holdband::ui
