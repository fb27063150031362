#include "ui/window/preference_menu.h"

#include <QActionGroup>
#include <QMenu>
#include <QSettings>
#include <algorithm>

namespace holdband::ui {

namespace {

QSettings settings()
{
    return QSettings(QStringLiteral("holdband"), QStringLiteral("holdband"));
}

} // namespace

QString storedChoice(const QString& key)
{
    return settings().value(key).toString();
}

void storeChoice(const QString& key, const QString& stored)
{
    settings().setValue(key, stored);
}

void addChoiceMenu(QMenu& menu, const QString& title, const QString& key,
                   const std::vector<PreferenceChoice>& choices,
                   const std::function<void(const QString& stored)>& taken)
{
    QMenu* inner = menu.addMenu(title);
    auto* group = new QActionGroup(inner);
    const QString stored = storedChoice(key);
    const bool known =
        std::any_of(choices.begin(), choices.end(),
                    [&](const PreferenceChoice& each) { return each.stored == stored; });
    for (const PreferenceChoice& choice : choices) {
        QAction* action = inner->addAction(choice.words);
        action->setCheckable(true);
        action->setChecked(known ? choice.stored == stored : &choice == &choices.front());
        group->addAction(action);
        QObject::connect(action, &QAction::triggered, inner, [key, taken, stored = choice.stored] {
            storeChoice(key, stored);
            taken(stored);
        });
    }
}

} // namespace holdband::ui
