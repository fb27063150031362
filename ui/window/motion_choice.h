// Whether things ease into their new place: the user's choice, and the desktop's.
#pragma once

class QMenu;

namespace holdband::ui {

/// Motion as it was chosen; without a choice as the desktop says, which is asked in the background.
void applyStoredMotion();
/// Takes effect at once.
void addMotionMenu(QMenu& menu);

} // namespace holdband::ui
