// Tells what happens to open batches while a file is watched, as desktop notifications: the beer
// arrived, it is out of its band, its log is silent. Each once.
#pragma once

#include "core/results/run/batch_events.h"

#include <QObject>
#include <QString>
#include <functional>
#include <set>
#include <vector>

namespace holdband::ui {

class Session;

/// Which events were told. What a batch shows when it is first seen is known already.
class ToldEvents {
public:
    /// The events that are to be told now; they count as told from then on.
    std::vector<results::BatchEvent> take(const results::BatchState& state, Instant now);
    void forget();

private:
    std::vector<results::BatchEvent> m_told;
    std::set<std::string> m_batches;
};

class BatchWatch : public QObject {
    Q_OBJECT
public:
    using Notify = std::function<void(const QString& title, const QString& words)>;

    /// `notify`: shows the notification.
    BatchWatch(Session& session, Notify notify, QObject* parent = nullptr);

    bool isOn() const { return m_on; }
    /// What is the case when it is turned on is not told.
    void setOn(bool on);
    /// Reads the open batches again and tells what is new: after each change of the logbook.
    void look();
    /// Whether a log has become silent: each minute. Not at the first look after a suspend, when
    /// the watched files were not read yet.
    void lookAtClock();

private:
    void take(std::vector<results::BatchState> states);
    void tell();

    static constexpr std::chrono::minutes clockEvery{1};
    Session* m_session;
    Notify m_notify;
    bool m_on = false;
    results::LookClock m_clock{clockEvery};
    ToldEvents m_told;
    std::vector<results::BatchState> m_states;
};

} // namespace holdband::ui
