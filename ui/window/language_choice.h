// The language chosen in the window.
#pragma once

#include <QString>
#include <functional>

class QMenu;

namespace holdband::ui {

/// Uses the language chosen in the window, else the desktop's.
void useChosenLanguage();

/// "Language" with its choices; a chosen one applies from the next start.
void addLanguageMenu(QMenu& menu, const std::function<void(const QString&)>& say);

} // namespace holdband::ui
