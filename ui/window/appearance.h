// Light, dark, or as the desktop is: kept with the desk, since eyesight and light are no part of
// the record.
#pragma once

#include "ui/theme/colours.h"

class QApplication;
class QMenu;

namespace holdband::ui {

/// Before anything has dressed the application: notes what the desktop uses, then dresses it as
/// was chosen last.
void dressAsKept(QApplication& application);

/// "Appearance" with its three choices.
void addAppearanceMenu(QMenu& menu);

} // namespace holdband::ui
