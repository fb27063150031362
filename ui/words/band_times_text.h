// What the two times inside the band do, for the hints of the controls that set them.
#pragma once

#include <QString>

namespace holdband::ui {

QString dwellTip();
QString returnTip();

} // namespace holdband::ui
