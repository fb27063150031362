#include "ui/window/desk_choice.h"

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

QString keptChoice(const QString& key)
{
    return settings().value(key).toString();
}

void keepChoice(const QString& key, const QString& stored)
{
    settings().setValue(key, stored);
}

void addChoiceMenu(QMenu& menu, const QString& title, const QString& key,
                   const std::vector<DeskChoice>& choices,
                   const std::function<void(const QString& stored)>& taken)
{
    QMenu* inner = menu.addMenu(title);
    auto* group = new QActionGroup(inner);
    const QString kept = keptChoice(key);
    const bool known = std::any_of(choices.begin(), choices.end(),
                                   [&](const DeskChoice& each) { return each.stored == kept; });
    for (const DeskChoice& choice : choices) {
        QAction* action = inner->addAction(choice.words);
        action->setCheckable(true);
        action->setChecked(known ? choice.stored == kept : &choice == &choices.front());
        group->addAction(action);
        QObject::connect(action, &QAction::triggered, inner, [key, taken, stored = choice.stored] {
            keepChoice(key, stored);
            taken(stored);
        });
    }
}

} // namespace holdband::ui
