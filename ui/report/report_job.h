// Makes one report in the background, with its own thread and reading connection. Belongs to the
// window's thread.
#pragma once

#include "ui/report/report.h"

#include <QFutureWatcher>
#include <QObject>
#include <atomic>
#include <memory>

namespace holdband::ui {

class ReportJob : public QObject {
    Q_OBJECT
public:
    explicit ReportJob(QObject* parent = nullptr);
    /// Stops the work and waits for it.
    ~ReportJob() override;

    void start(const QString& logbook, report::ReportRequest request);
    /// The work ends soon, with a Problem, and nothing is written.
    void stop() { *m_stop = true; }
    bool running() const { return m_watcher.isRunning(); }

Q_SIGNALS:
    /// "reading", "drawing", "writing"
    void stepped(const QString& step);
    /// `problem`: empty if it was written.
    void ended(const QString& problem);

private:
    QFutureWatcher<QString> m_watcher;
    std::shared_ptr<std::atomic<bool>> m_stop = std::make_shared<std::atomic<bool>>(false);
};

} // namespace holdband::ui
