#include "ui/window/appearance.h"

#include "ui/theme/theme.h"
#include "ui/window/preference_menu.h"
#include "ui/words/words.h"

#include <QMenu>

namespace holdband::ui {

namespace {

const char* const desktopProperty = "desktopIsDark"; // property of the application
const QString appearanceKey = QStringLiteral("appearance");

Scheme schemeFor(const QApplication& application, const QString& stored)
{
    if (stored == QStringLiteral("dark"))
        return Scheme::dark;
    const bool asDesktop = stored != QStringLiteral("light");
    return asDesktop && application.property(desktopProperty).toBool() ? Scheme::dark
                                                                       : Scheme::light;
}

} // namespace

void applyStoredAppearance(QApplication& application)
{
    application.setProperty(desktopProperty, systemScheme(QApplication::palette()) == Scheme::dark);
    dress(application, schemeFor(application, storedChoice(appearanceKey)));
}

void addAppearanceMenu(QMenu& menu)
{
    addChoiceMenu(menu, Words::tr("&Appearance"), appearanceKey,
                  {{QStringLiteral("desktop"), Words::tr("As the &desktop")},
                   {QStringLiteral("light"), Words::tr("&Light")},
                   {QStringLiteral("dark"), Words::tr("D&ark")}},
                  [](const QString& stored) { dress(*qApp, schemeFor(*qApp, stored)); });
}

} // namespace holdband::ui
