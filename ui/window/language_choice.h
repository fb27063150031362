// The language chosen in the window.
#pragma once

#include <QString>
#include <functional>

class QMenu;

namespace holdband::ui {

/// Uses the language chosen in the window, else the desktop's.
void useChosenLanguage();

/// "Language" with its choices; `makeWindowAgain` shows the window in a chosen one.
void addLanguageMenu(QMenu& menu, const std::function<void()>& makeWindowAgain);

} // namespace holdband::ui
