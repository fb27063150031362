// The longest time for which the window's event loop is blocked while a log is previewed and
// imported. Usage: import_stall LOGBOOK LOG RESULT RESULT gets both as milliseconds.
#include "ui/imports/imports_page.h"
#include "ui/theme/theme.h"
#include "ui/window/main_window.h"
#include "ui/window/pages.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QTimer>
#include <algorithm>
#include <cstdio>
#include <fstream>

namespace {

/// Ticks each millisecond; the delay of a tick is the time that a user would have waited.
class Pulse {
public:
    Pulse()
    {
        m_timer.setTimerType(Qt::PreciseTimer);
        QObject::connect(&m_timer, &QTimer::timeout, &m_timer, [this] { tick(); });
        m_clock.start();
        m_timer.start(1);
    }
    void restart()
    {
        m_longest = 0;
        m_clock.restart();
    }
    double longestMs() const { return static_cast<double>(m_longest) / 1e6; }

private:
    void tick()
    {
        m_longest = std::max(m_longest, m_clock.nsecsElapsed());
        m_clock.restart();
    }
    QTimer m_timer;
    QElapsedTimer m_clock;
    qint64 m_longest = 0;
};

template <typename Condition>
bool waitFor(Condition condition)
{
    QElapsedTimer waited;
    waited.start();
    while (!condition() && waited.elapsed() < 300'000)
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
    return condition();
}

} // namespace

int main(int argc, char** argv)
{
    if (argc < 4) {
        std::fprintf(stderr, "usage: import_stall LOGBOOK LOG RESULT\n");
        return 2;
    }
    QApplication application(argc, argv);
    holdband::ui::dress(application, holdband::ui::Scheme::light);
    holdband::ui::MainWindow window(holdband::store::systemNow, {});
    window.openLogbook(QString::fromLocal8Bit(argv[1]));
    window.show();
    waitFor([&] { return window.session().idle(); });
    Pulse pulse;
    window.importFile(QString::fromLocal8Bit(argv[2]));
    holdband::ui::ImportsPage& page = *window.pages()->imports();
    if (!waitFor([&] { return page.canImport(); })) {
        std::fprintf(stderr, "%s\n", qPrintable(page.message()));
        return 1;
    }
    const double looking = pulse.longestMs();
    pulse.restart();
    page.save();
    const auto stored = [&] { return page.message().startsWith(QStringLiteral("Saved")); };
    if (!waitFor(stored) || !waitFor([&] { return window.session().idle(); }))
        return 1;
    std::ofstream(argv[3]) << looking << ' ' << pulse.longestMs() << '\n';
    return 0;
}
