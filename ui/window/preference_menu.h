// What is kept with the desk because it is no part of the record: light or dark, how large the text
// is, which language. Each is a menu of a few choices.
#pragma once

#include <QString>
#include <functional>
#include <vector>

class QMenu;

namespace holdband::ui {

struct PreferenceChoice {
    QString stored;
    QString words;
};

/// What was chosen last under this key; empty where nothing was.
QString storedChoice(const QString& key);
void storeChoice(const QString& key, const QString& stored);

/// A menu of the choices under `title`. What is chosen is kept, then handed to `taken`. Where
/// nothing was chosen yet, or something unknown, the first one is ticked.
void addChoiceMenu(QMenu& menu, const QString& title, const QString& key,
                   const std::vector<PreferenceChoice>& choices,
                   const std::function<void(const QString& stored)>& taken);

} // namespace holdband::ui
