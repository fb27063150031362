// The logs on the page, previewed and imported one after another on the session's workers. Lives in
// the window's thread and never blocks it.
#pragma once

#include "core/intake/log/remembered.h"
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

    /// Previews each file; stores nothing.
    void add(const QStringList& paths);
    void addText(const QByteArray& text, const QString& name);
    const std::vector<LogState>& logs() const { return m_logs; }
    const LogState& at(int index) const { return m_logs[static_cast<std::size_t>(index)]; }
    int size() const { return static_cast<int>(m_logs.size()); }

    /// New choices: the log is read again, and so are logs of the same shape that wait for a
    /// choice.
    void choose(int index, const intake::ColumnMap& map);
    /// Previews another sheet of the workbook, also after one was stored.
    void chooseSheet(int index, const QString& sheet);
    void chooseRegisterDrop(int index, MeterEvent event);
    /// Detects again, ignoring the remembered choices for its shape.
    void forgetMap(int index);
    void save(int index);
    /// Stores all logs that are ready.
    void importReady();
    int readyCount() const;
    bool isBusy() const { return m_running; }
    /// Stops the running work and drops what waits. Nothing further is stored; a log that is being
    /// stored reports a little later whether that was in time.
    void cancel();
    /// Empties the list.
    void clear();

Q_SIGNALS:
    /// The log at that index changed; −1: the list changed.
    void changed(int index);
    void progressed(double share);
    /// The log at `index` was previewed, stored or refused.
    void settled(int index);
    void saved(int index);

private:
    enum class Work {
        preview,
        relayOut, ///< as `preview`, with the requested layout and the other choices for the file
        guess,    ///< without the remembered choices
        again,    ///< the file changed after its preview
        look,
        save,
    };
    struct Task {
        int index;
        Work work;
    };

    void enqueue(int index, Work work);
    void next();
    void preview(int index, Work work);
    void takePreview(int index, Work work, intake::PreviewedLog looked);
    void run(int index, bool dryRun);
    void takeReport(int index, Result<intake::ImportReport> report, bool dryRun);
    void settle(int index);
    /// The next work for the log's current choices.
    Work workAfter(int index);
    void chooseForAlike(int index);
    LogState& log(int index) { return m_logs[static_cast<std::size_t>(index)]; }

    Session* m_session;
    std::vector<LogState> m_logs;
    std::deque<Task> m_tasks;
    bool m_running = false;
    bool m_cancelling = false; ///< storing was asked to stop, and has not answered yet
    int m_generation = 0;      ///< answers to cancelled work are dropped
    std::shared_ptr<std::atomic<bool>> m_cancelled;
};

} // namespace holdband::ui
