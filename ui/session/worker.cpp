#include "ui/session/worker.h"

namespace holdband::ui {

Worker::Worker(std::unique_ptr<store::LogbookFile> file)
    : m_place(new QObject), m_file(std::move(file))
{
    m_place->moveToThread(&m_thread);
    QObject::connect(&m_thread, &QThread::finished, m_place, &QObject::deleteLater);
    // Without a context: in the thread that ends.
    QObject::connect(&m_thread, &QThread::finished, [this] { m_file.reset(); });
    m_thread.start();
    post([](const store::LogbookFile& own) { own.takeIntoThread(); });
}

Worker::~Worker()
{
    m_thread.quit();
    m_thread.wait();
}

void Worker::post(Job job)
{
    QMetaObject::invokeMethod(
        m_place, [this, job = std::move(job)] { job(*m_file); }, Qt::QueuedConnection);
}

void Worker::finish(QObject* context, std::function<void()> finished)
{
    QObject::connect(&m_thread, &QThread::finished, context, std::move(finished),
                     Qt::QueuedConnection);
    m_thread.quit();
}

} // namespace holdband::ui
