// Light, dark, or as the desktop: stored in the preferences, because eyesight and light are not
// part of the record.
#pragma once

#include "ui/theme/colours.h"

class QApplication;
class QMenu;

namespace holdband::ui {

/// Call before anything has set the application's look: notes the desktop's scheme, then sets the
/// look that was chosen last.
void applyStoredAppearance(QApplication& application);

/// "Appearance" with its three choices.
void addAppearanceMenu(QMenu& menu);

} // namespace holdband::ui
