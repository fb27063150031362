// Shows what the program is, its licence, and the cautions for every setup.
#pragma once

class QWidget;

namespace holdband::ui {

void showAbout(QWidget& window);

} // namespace holdband::ui
