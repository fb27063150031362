#include "ui/forms/choices.h"

#include "ui/words/words.h"

#include <QComboBox>
#include <QSignalBlocker>

namespace holdband::ui {

QComboBox* makeChoice(const QString& name, QWidget* parent)
{
    auto* list = new QComboBox(parent);
    list->setAccessibleName(name);
    list->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    list->setMinimumContentsLength(16);
    return list;
}

void offerChoices(QComboBox* list, const std::vector<std::string>& names, const std::string& chosen,
                  const QString& none)
{
    const QSignalBlocker quiet(list);
    list->clear();
    for (const std::string& name : names)
        list->addItem(shown(name), shown(name));
    if (!none.isEmpty())
        list->addItem(none, QString());
    const int at = list->findData(shown(chosen));
    list->setCurrentIndex(at >= 0 ? at : 0);
}

std::string chosenIn(const QComboBox* list)
{
    return core(list->currentData().toString());
}

} // namespace holdband::ui
