#include "ui/window/open_window.h"

#include "ui/theme/type_face.h"
#include "ui/window/appearance.h"
#include "ui/window/language_choice.h"
#include "ui/window/main_window.h"
#include "ui/window/text_size.h"
#include "ui/words/words.h"

#include <QApplication>
#include <QIcon>
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

} // namespace

int openWindow(int& argc, char** argv, const WindowOptions& options)
{
    const std::unique_ptr<QApplication> started = startApplication(argc, argv);
    QApplication& application = *started;
    QApplication::setApplicationName(QStringLiteral("holdband"));
    QApplication::setApplicationDisplayName(QStringLiteral("Holdband"));
    QApplication::setDesktopFileName(QStringLiteral("holdband"));
    QApplication::setWindowIcon(ownIcon());
    useChosenLanguage();
    useOwnTypeFace(application);
    applyStoredTextSize(application);
    applyStoredAppearance(application);
    MainWindow window(store::systemNow, shown(options.sample.value_or(std::string())));
    window.setSampleDescription(shown(options.sampleDescription.value_or(std::string())));
    if (options.logbook)
        window.openLogbook(shown(*options.logbook));
    if (const auto page = options.page ? pageNamed(*options.page) : std::nullopt)
        window.setPage(*page);
    window.show();
    return QApplication::exec();
}

} // namespace holdband::ui
