// Reminds of a due round: in the status line each minute, and, if the user turned that on, once per
// round as a desktop notification.
#pragma once

#include "core/results/rounds/rounds_sheet.h"

#include <QObject>
#include <functional>
#include <optional>

namespace holdband::ui {

class Session;

/// The round to announce now: one whose window is open while a batch runs, none of whose meters has
/// been read since the window opened, and which has not been announced. Pure.
std::optional<Instant> roundToAnnounce(const results::RoundsSheet& sheet,
                                       const std::optional<Instant>& announced);

class Reminder : public QObject {
    Q_OBJECT
public:
    using Notify = std::function<void(const QString& title, const QString& words)>;

    /// `notify`: shows the notification.
    Reminder(Session& session, Notify notify, QObject* parent = nullptr);

    bool isOn() const { return m_on; }
    void setOn(bool on);
    /// Checks now instead of at the next minute.
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

/// Sends the notification over the desktop's message bus; does nothing if there is none.
void notifyDesktop(const QString& title, const QString& words);

} // namespace holdband::ui
