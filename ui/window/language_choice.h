// The language that was chosen in the window.
#pragma once

#include <QString>
#include <functional>

class QMenu;

namespace holdband::ui {

/// As was chosen in the window, else as the desktop says.
void speakAsChosen();

/// "Language" with its choices; one that was chosen holds from the next start.
void addLanguageMenu(QMenu& menu, const std::function<void(const QString&)>& say);

} // namespace holdband::ui
