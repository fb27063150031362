#include "ui/theme/small_font.h"

#include <algorithm>
#include <cmath>

namespace holdband::ui {

QFont smallFont(const QFont& font)
{
    constexpr double small = 0.88;
    QFont smaller = font;
    if (font.pixelSize() > 0)
        smaller.setPixelSize(std::max(1, static_cast<int>(std::lround(font.pixelSize() * small))));
    else
        smaller.setPointSizeF(font.pointSizeF() * small);
    return smaller;
}

} // namespace holdband::ui
