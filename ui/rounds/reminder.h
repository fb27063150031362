// Says when a round is due: to the status line each minute, and, where the person turned it on,
// once for each round as a notification of the desktop.
#pragma once

#include "core/results/rounds/rounds_sheet.h"

#include <QObject>
#include <functional>
#include <optional>

namespace holdband::ui {

class Session;

/// Which round should be announced now: one whose window is open while a batch runs, none of whose
/// meters has been read since the window opened, and which has not been announced. Pure.
std::optional<Instant> roundToAnnounce(const results::RoundsSheet& sheet,
                                       const std::optional<Instant>& announced);

class Reminder : public QObject {
    Q_OBJECT
public:
    using Notify = std::function<void(const QString& title, const QString& words)>;

    /// `notify`: how the desktop is told.
    Reminder(Session& session, Notify notify, QObject* parent = nullptr);

    bool isOn() const { return m_on; }
    void setOn(bool on);
    /// Looks now instead of at the next minute.
    void look();

Q_SIGNALS:
    void sheetRead(const holdband::results::RoundsSheet& sheet);

private:
    void take(const results::RoundsSheet& sheet);

    Session* m_session;
    Notify m_notify;
    bool m_on = false;
    std::optional<Instant> m_announced;
};

/// Tells the desktop over its message bus; does nothing where there is none.
void notifyDesktop(const QString& title, const QString& words);

} // namespace holdband::ui
