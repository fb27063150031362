#include "ui/report/render/painting.h"

#include "ui/theme/type_face.h"
#include "ui/words/language.h"

#include <QApplication>
#include <QLoggingCategory>
#include <string>

namespace holdband::report {

int withPainting(const char* program, const std::function<int()>& work)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qunsetenv("QT_QPA_PLATFORMTHEME"); // a desktop's theme plugin may need a display
    // Qt's messages about the environment (such as a missing XDG_RUNTIME_DIR) are not part of the
    // command's results.
    QLoggingCategory::setFilterRules(QStringLiteral("default.warning=false"));
    // Qt doesn't get the command's arguments: a batch may be named "-style".
    std::string name = program;
    char* arguments[] = {name.data(), nullptr};
    int count = 1;
    QApplication application(count, arguments);
    QApplication::setApplicationName(QStringLiteral("holdband"));
    ui::useOwnTypeFace(application);
    ui::useDesktopLanguage();
    return work();
}

} // namespace holdband::report
