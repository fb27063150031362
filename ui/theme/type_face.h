// The type face of all texts, which comes with the program: Open Sans, whose figures are all of one
// width, so that those of a column stand below each other.
#pragma once

class QApplication;

namespace holdband::ui {

/// In the size of the desktop. Signs that the face lacks come from the desktop's fonts.
void useOwnTypeFace(QApplication& application);

} // namespace holdband::ui
