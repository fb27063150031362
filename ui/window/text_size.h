// How large the text of the window is, beside what the desktop says: kept with the desk. Reports
// have their own sizes.
#pragma once

#include <QString>
#include <functional>

class QApplication;
class QMenu;

namespace holdband::ui {

/// Before any widget is made: the application's font in the size that was chosen last.
void sizeTextAsKept(QApplication& application);

/// "Text size" with its choices. A size that was chosen holds from the next start, which `say` is
/// told as a sentence.
void addTextSizeMenu(QMenu& menu, const std::function<void(const QString&)>& say);

} // namespace holdband::ui
