#include "ui/report/render/painting.h"

#include "ui/words/language.h"

#include <QGuiApplication>
#include <QLoggingCategory>
#include <string>

namespace holdband::report {

int withPainting(const char* program, const std::function<int()>& work)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qunsetenv("QT_QPA_PLATFORMTHEME"); // a desktop's theme may want its display
    // Qt's remarks on the environment (a missing XDG_RUNTIME_DIR) are none of the command's
    // results.
    QLoggingCategory::setFilterRules(QStringLiteral("default.warning=false"));
    // The command's own arguments are none of Qt's: a batch may be called "-style".
    std::string name = program;
    char* arguments[] = {name.data(), nullptr};
    int count = 1;
    QGuiApplication application(count, arguments);
    QGuiApplication::setApplicationName(QStringLiteral("holdband"));
    ui::speakAsDesktop();
    return work();
}

} // namespace holdband::report
