// A picture as SVG.
#pragma once

#include "ui/report/compose/document.h"

#include <QByteArray>
#include <functional>

namespace holdband::report {

struct SvgWords {
    QString title;
    QString description;
    QSize shown = {}; ///< CSS pixels; empty: one per unit
};

/// Only the <svg> element, to embed in a page; `size` in units of the painter. Text is in the
/// reader's sans-serif font.
QByteArray svgElement(const std::function<void(QPainter&)>& paint, QSizeF size,
                      const SvgWords& words);

/// A complete SVG file.
QByteArray svgFile(const QByteArray& element);

} // namespace holdband::report
