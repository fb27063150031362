// A thread that owns one open logbook and runs jobs on it, one after another. All access to the
// file happens here, never in the window's thread.
#pragma once

#include "core/store/logbook_file.h"

#include <QThread>
#include <functional>
#include <memory>

namespace holdband::ui {

class Worker {
public:
    using Job = std::function<void(const store::LogbookFile&)>;

    /// `file`: the thread that opened it has left it (LogbookFile::leaveThread). It is closed in
    /// this worker's thread.
    explicit Worker(std::unique_ptr<store::LogbookFile> file);
    /// Finishes the running job and drops the waiting ones.
    ~Worker();
    Worker(const Worker&) = delete;
    Worker& operator=(const Worker&) = delete;

    void post(Job job);
    /// Drops the waiting jobs, and calls `finished` in the thread of `context` when the running job
    /// is done; then this can be destroyed without waiting.
    void finish(QObject* context, std::function<void()> finished);

private:
    QThread m_thread;
    QObject* m_place; ///< lives in the thread; jobs are its events
    std::unique_ptr<store::LogbookFile> m_file;
};

} // namespace holdband::ui
