#include "ui/window/open_window.h"

#include "ui/run/run_page.h"
#include "ui/session/session.h"
#include "ui/theme/type_face.h"
#include "ui/window/appearance.h"
#include "ui/window/language_choice.h"
#include "ui/window/main_window.h"
#include "ui/window/motion_choice.h"
#include "ui/window/pages.h"
#include "ui/window/text_size.h"
#include "ui/words/words.h"

#include <QApplication>
#include <QIcon>
#include <QTimer>
#include <csignal>
#include <memory>
#include <string_view>
#include <unistd.h>

namespace holdband::ui {

namespace {

std::optional<PageId> pageNamed(const std::string& name)
{
    for (int i = 0; i < pageCount; ++i) {
        const auto page = static_cast<PageId>(i);
        if (pageTitle(page).compare(shown(name), Qt::CaseInsensitive) == 0)
            return page;
    }
    return std::nullopt;
}

QIcon ownIcon()
{
    QIcon icon(QStringLiteral(":/icons/holdband-128.png"));
    icon.addFile(QStringLiteral(":/icons/holdband-48.png"));
    return icon;
}

/// Qt ends the program if it finds no display. While this object lives, the program then ends with
/// a sentence instead of a crash.
class DisplayWanted {
public:
    DisplayWanted()
    {
        qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
        std::signal(SIGABRT, sayThereIsNone);
    }
    ~DisplayWanted()
    {
        std::signal(SIGABRT, SIG_DFL);
        qInstallMessageHandler(nullptr);
    }
    DisplayWanted(const DisplayWanted&) = delete;
    DisplayWanted& operator=(const DisplayWanted&) = delete;

private:
    static void sayThereIsNone(int)
    {
        constexpr std::string_view text = "holdband: there is no display to open the window on; "
                                          "start it on a desktop, or use the "
                                          "commands that `holdband --help` lists.\n";
        [[maybe_unused]] const auto written = ::write(STDERR_FILENO, text.data(), text.size());
        ::_exit(noDisplay);
    }

    static constexpr int noDisplay = 2; ///< exit status: the call can't work here
};

std::unique_ptr<QApplication> startApplication(int& argc, char** argv)
{
    const DisplayWanted display;
    return std::make_unique<QApplication>(argc, argv);
}

/// What a window shows, for another one in its place.
struct WindowContents {
    QString logbook; ///< empty: none
    QString batch;
    std::optional<PageId> page;
};

/// Shows a window until it is closed. Absent: it wants to be made again, and `what` is what it
/// showed.
std::optional<int> runWindow(const WindowOptions& options, WindowContents& what)
{
    bool again = false;
    MainWindow window(store::systemNow, shown(options.sample.value_or(std::string())));
    window.setSampleDescription(shown(options.sampleDescription.value_or(std::string())));
    window.setFirstBatch(what.batch);
    if (!what.logbook.isEmpty())
        window.openLogbook(what.logbook);
    if (what.page)
        window.setPage(*what.page);
    QObject::connect(&window, &MainWindow::madeAgainWanted, &window, [&] {
        again = true;
        what = {window.session().isOpen() ? window.session().path() : QString(),
                window.pages()->run()->batch(), window.pages()->page()};
        window.close();
    });
    window.show();
    const int status = QApplication::exec();
    return again ? std::nullopt : std::optional(status);
}

} // namespace

int openWindow(int& argc, char** argv, const WindowOptions& options)
{
    const std::unique_ptr<QApplication> started = startApplication(argc, argv);
    QApplication& application = *started;
    QApplication::setApplicationName(QStringLiteral("holdband"));
    QApplication::setApplicationDisplayName(QStringLiteral("Holdband"));
    QApplication::setDesktopFileName(QStringLiteral("holdband"));
    QApplication::setWindowIcon(ownIcon());
    useOwnTypeFace(application);
    applyStoredAppearance(application);
    QTimer::singleShot(0, &application, applyStoredMotion); // the desktop answers in its own time
    WindowContents what{shown(options.logbook.value_or(std::string())), {}, {}};
    for (;;) {
        useChosenLanguage();
        applyStoredTextSize(application);
        if (options.page && !what.page) // its name is in the language
            what.page = pageNamed(*options.page);
        if (const auto status = runWindow(options, what))
            return *status;
    }
}

} // namespace holdband::ui
