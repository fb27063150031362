#include "ui/charts/gui_thread.h"

#include <QCoreApplication>
#include <QMutex>
#include <QSemaphore>
#include <QThread>
#include <deque>

namespace holdband::ui {

namespace {

struct GuiRequest {
    const std::function<void()>& work;
    QSemaphore done = QSemaphore(0);
};

/// The requests that wait, oldest first. Each belongs to the thread that waits for it.
class GuiRequests {
public:
    void add(GuiRequest& request)
    {
        const QMutexLocker lock(&m_mutex);
        m_waiting.push_back(&request);
    }

    GuiRequest* next()
    {
        const QMutexLocker lock(&m_mutex);
        if (m_waiting.empty())
            return nullptr;
        GuiRequest* first = m_waiting.front();
        m_waiting.pop_front();
        return first;
    }

private:
    QMutex m_mutex;
    std::deque<GuiRequest*> m_waiting;
};

GuiRequests& guiRequests()
{
    static GuiRequests requests;
    return requests;
}

} // namespace

bool onGuiThread()
{
    return QThread::currentThread() == QCoreApplication::instance()->thread();
}

void runOnGuiThread(const std::function<void()>& work)
{
    if (onGuiThread())
        return work();
    GuiRequest request{work};
    guiRequests().add(request);
    QMetaObject::invokeMethod(QCoreApplication::instance(), &serveGuiWork, Qt::QueuedConnection);
    request.done.acquire();
}

void serveGuiWork()
{
    while (GuiRequest* request = guiRequests().next()) {
        request->work();
        request->done.release();
    }
}

} // namespace holdband::ui
