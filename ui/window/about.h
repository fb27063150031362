// What the program is, its licence, and the cautions that hold for every setup.
#pragma once

class QWidget;

namespace holdband::ui {

void showAbout(QWidget& window);

} // namespace holdband::ui
