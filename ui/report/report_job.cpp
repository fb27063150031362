#include "ui/report/report_job.h"

#include "ui/charts/gui_thread.h"
#include "ui/words/words.h"

#include <QThread>
#include <QtConcurrent/QtConcurrentRun>

namespace holdband::ui {

namespace {

/// Empty, or why the report could not be made.
QString made(const std::string& path, const report::ReportRequest& request,
             const report::Progress& progress)
{
    const auto logbook = store::LogbookFile::open(path, store::Access::read);
    if (!logbook)
        return sentence(logbook.error());
    const Done done = report::make(**logbook, request, progress);
    return done ? QString() : sentence(done.error());
}

} // namespace

ReportJob::ReportJob(QObject* parent) : QObject(parent)
{
    connect(&m_watcher, &QFutureWatcherBase::finished, this,
            [this] { Q_EMIT ended(m_watcher.result()); });
}

ReportJob::~ReportJob()
{
    stop();
    m_watcher.disconnect(this);
    while (!m_watcher.isFinished()) {
        serveGuiWork(); // its charts are drawn here
        QThread::msleep(1);
    }
}

void ReportJob::start(const QString& logbook, report::ReportRequest request)
{
    m_stop = std::make_shared<std::atomic<bool>>(false);
    report::Progress progress;
    progress.stopped = [stop = m_stop] { return stop->load(); };
    progress.at = [this](const QString& step) {
        QMetaObject::invokeMethod(
            this, [this, step] { Q_EMIT stepped(step); }, Qt::QueuedConnection);
    };
    m_watcher.setFuture(QtConcurrent::run([path = core(logbook), request = std::move(request),
                                           progress] { return made(path, request, progress); }));
}

} // namespace holdband::ui
