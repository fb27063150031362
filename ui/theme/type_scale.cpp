#include "ui/theme/type_scale.h"

#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

double shareOf(TypeSize size)
{
    switch (size) {
    case TypeSize::small:
        return 0.88;
    case TypeSize::plain:
        return 1.0;
    case TypeSize::heading:
        return 1.35;
    case TypeSize::figure:
        return 2.6;
    }
    return 1.0;
}

} // namespace

QFont sized(const QFont& font, TypeSize size)
{
    const double share = shareOf(size);
    QFont changed = font;
    if (font.pixelSize() > 0)
        changed.setPixelSize(std::max(1, static_cast<int>(std::lround(font.pixelSize() * share))));
    else
        changed.setPointSizeF(font.pointSizeF() * share);
    return changed;
}

QFont smallFont(const QFont& font)
{
    return sized(font, TypeSize::small);
}

} // namespace holdband::ui
