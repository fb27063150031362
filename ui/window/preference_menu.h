// Preferences that are not part of the record: light or dark, the text size, the language. Each is
// a menu of a few choices.
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

/// The last choice under this key; empty if there is none.
QString storedChoice(const QString& key);
void storeChoice(const QString& key, const QString& stored);

/// Adds a menu of the choices under `title`. A choice is stored, then passed to `taken`. If nothing
/// was chosen yet, or something unknown, the first choice is ticked.
void addChoiceMenu(QMenu& menu, const QString& title, const QString& key,
                   const std::vector<PreferenceChoice>& choices,
                   const std::function<void(const QString& stored)>& taken);

} // namespace holdband::ui
