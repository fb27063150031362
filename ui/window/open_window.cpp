#include "ui/window/open_window.h"

#include "ui/theme/appearance.h"
#include "ui/theme/text_size.h"
#include "ui/window/main_window.h"
#include "ui/words/language.h"
#include "ui/words/words.h"

#include <QApplication>
#include <QIcon>

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

} // namespace

int openWindow(int& argc, char** argv, const WindowOptions& options)
{
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("holdband"));
    QApplication::setApplicationDisplayName(QStringLiteral("Holdband"));
    QApplication::setDesktopFileName(QStringLiteral("holdband"));
    QApplication::setWindowIcon(ownIcon());
    speakAsKept();
    sizeTextAsKept(application);
    dressAsKept(application);
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
