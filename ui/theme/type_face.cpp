#include "ui/theme/type_face.h"

#include <QApplication>
#include <QFontDatabase>

namespace holdband::ui {

void useOwnTypeFace(QApplication& application)
{
    for (const char* file : {":/fonts/OpenSans-Regular.ttf", ":/fonts/OpenSans-Semibold.ttf"}) {
        if (QFontDatabase::addApplicationFont(QString::fromLatin1(file)) < 0)
            return; // the desktop's own face is readable too
    }
    QFont font = QApplication::font();
    font.setFamilies({QStringLiteral("Open Sans"), font.family()});
    application.setFont(font);
}

} // namespace holdband::ui
