// A report as a picture for a post or a video: title and headline in large type above the chart, as
// PNG, SVG, or an image for the clipboard.
#pragma once

#include "ui/report/compose/document.h"

#include <QByteArray>
#include <QImage>
#include <QSize>

namespace holdband::report {

inline constexpr QSize landscape{1920, 1080};
inline constexpr QSize portrait{1080, 1920};
inline constexpr int leastSide = 320; ///< pixels
inline constexpr int mostSide = 8000;

/// Type grows with the picture: at 1920 × 1080 the smallest is over 20 pixels high.
QImage asImage(const Document& document, QSize size, ui::Scheme scheme);
QByteArray asPng(const Document& document, QSize size, ui::Scheme scheme);
QByteArray asSvg(const Document& document, QSize size, ui::Scheme scheme);

} // namespace holdband::report
