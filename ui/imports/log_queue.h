// The logs on the page, looked at and kept one after another on the session's workers. Lives in the
// window's thread and never blocks it.
#pragma once

#include "ui/imports/log_state.h"

#include <QObject>
#include <QStringList>
#include <atomic>
#include <deque>
#include <vector>

namespace holdband::ui {

class Session;

class LogQueue : public QObject {
    Q_OBJECT
public:
    explicit LogQueue(Session& session, QObject* parent = nullptr);

    /// Looks at each; keeps nothing.
    void add(const QStringList& paths);
    void addText(const QByteArray& text, const QString& name);
    const std::vector<LogState>& logs() const { return m_logs; }
    const LogState& at(int index) const { return m_logs[static_cast<std::size_t>(index)]; }
    int size() const { return static_cast<int>(m_logs.size()); }

    /// Other choices: it is looked at again, and so are logs of the same shape that wait for one.
    void choose(int index, const intake::ColumnMap& map);
    void chooseRegisterDrop(int index, MeterEvent event);
    /// Guesses anew, without what is remembered for its shape.
    void forgetMap(int index);
    void keep(int index);
    /// Keeps all that are ready.
    void keepReady();
    int readyCount() const;
    bool isBusy() const { return m_running; }
    /// Stops what runs and forgets what waits. What is not kept yet is not kept; a log that is
    /// being kept says itself, a little later, whether that came in time.
    void cancel();
    /// Empties the list.
    void clear();

Q_SIGNALS:
    /// The log at that index changed; −1: the list did.
    void changed(int index);
    void progressed(double share);
    /// `index` was looked at, kept or refused.
    void settled(int index);
    void kept(int index);

private:
    enum class Work {
        preview,
        relayOut, ///< as `preview`, with the wished layout and what else was chosen for the file
        guess,    ///< without what is remembered
        again,    ///< the file changed after it was looked at
        look,
        keep,
    };
    struct Task {
        int index;
        Work work;
    };

    void enqueue(int index, Work work);
    void next();
    void preview(int index, Work work);
    void run(int index, bool dryRun);
    void takeReport(int index, Result<intake::ImportReport> report, bool dryRun);
    void settle(int index);
    /// What has to be done with the choices that the log has now.
    Work workAfter(int index);
    void chooseForAlike(int index);
    LogState& log(int index) { return m_logs[static_cast<std::size_t>(index)]; }

    Session* m_session;
    std::vector<LogState> m_logs;
    std::deque<Task> m_tasks;
    bool m_running = false;
    bool m_cancelling = false; ///< what is being kept was told to stop, and has not answered
    int m_generation = 0;      ///< answers to what was cancelled are dropped
    std::shared_ptr<std::atomic<bool>> m_cancelled;
};

} // namespace holdband::ui
