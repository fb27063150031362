// The font of an axis's labels and of remarks.
#pragma once

#include <QFont>

namespace holdband::ui {

/// A smaller version of a font, in the same unit.
QFont smallFont(const QFont& font);

} // namespace holdband::ui
