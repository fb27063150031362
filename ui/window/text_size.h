// The size of the window's text, relative to the desktop's: stored in the preferences. Reports have
// their own sizes.
#pragma once

#include <QString>
#include <functional>

class QApplication;
class QMenu;

namespace holdband::ui {

/// Call before a window is made: sets the application's font to the size chosen last.
void applyStoredTextSize(QApplication& application);

/// "Text size" with its choices; `makeWindowAgain` shows the window in a chosen one.
void addTextSizeMenu(QMenu& menu, const std::function<void()>& makeWindowAgain);

} // namespace holdband::ui
