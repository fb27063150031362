// The four sizes of type in the window, as shares of the desktop's own.
#pragma once

#include <QFont>

namespace holdband::ui {

enum class TypeSize {
    small,   ///< labels of an axis, remarks
    plain,   ///< everything else
    heading, ///< a page's sentence, a figure beside the main one, a reading that is typed
    figure,  ///< the one figure of a page
};

/// The font in that size, if it was plain before; in the same unit.
QFont sized(const QFont& font, TypeSize size);

/// sized(font, TypeSize::small)
QFont smallFont(const QFont& font);

} // namespace holdband::ui
