#include "ui/theme/appearance.h"

#include "ui/theme/theme.h"

#include <QActionGroup>
#include <QMenu>
#include <QSettings>
#include <array>

namespace holdband::ui {

namespace {

const char* const desktopProperty = "desktopIsDark"; // of the application
const QString settingsName = QStringLiteral("holdband");
const QString key = QStringLiteral("appearance");

struct Choice {
    Appearance appearance;
    QString stored;
    QString words;
};

const std::array<Choice, 3>& choices()
{
    static const std::array<Choice, 3> all{
        Choice{Appearance::desktop, QStringLiteral("desktop"), QStringLiteral("As the &desktop")},
        Choice{Appearance::light, QStringLiteral("light"), QStringLiteral("&Light")},
        Choice{Appearance::dark, QStringLiteral("dark"), QStringLiteral("D&ark")}};
    return all;
}

Scheme schemeFor(const QApplication& application, Appearance appearance)
{
    if (appearance == Appearance::desktop)
        return application.property(desktopProperty).toBool() ? Scheme::dark : Scheme::light;
    return appearance == Appearance::dark ? Scheme::dark : Scheme::light;
}

} // namespace

void dressAsKept(QApplication& application)
{
    application.setProperty(desktopProperty, systemScheme(QApplication::palette()) == Scheme::dark);
    dress(application, schemeFor(application, keptAppearance()));
}

Appearance keptAppearance()
{
    const QString stored = QSettings(settingsName, settingsName).value(key).toString();
    for (const Choice& choice : choices()) {
        if (choice.stored == stored)
            return choice.appearance;
    }
    return Appearance::desktop;
}

void keepAppearance(QApplication& application, Appearance appearance)
{
    for (const Choice& choice : choices()) {
        if (choice.appearance == appearance)
            QSettings(settingsName, settingsName).setValue(key, choice.stored);
    }
    dress(application, schemeFor(application, appearance));
}

void addAppearanceMenu(QMenu& menu)
{
    QMenu* inner = menu.addMenu(QStringLiteral("&Appearance"));
    auto* group = new QActionGroup(inner);
    for (const Choice& choice : choices()) {
        QAction* action = inner->addAction(choice.words);
        action->setCheckable(true);
        action->setChecked(choice.appearance == keptAppearance());
        group->addAction(action);
        QObject::connect(action, &QAction::triggered, inner,
                         [appearance = choice.appearance] { keepAppearance(*qApp, appearance); });
    }
}

} // namespace holdband::ui
