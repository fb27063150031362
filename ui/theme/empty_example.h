// Faint pictures of what a page will show, for pages that have nothing to show yet. They are
// decoration: made-up shapes without words or figures.
#pragma once

#include "ui/theme/colours.h"

#include <QPainter>

namespace holdband::ui {

enum class EmptyExample { rounds, run, sideBySide, nextBatch, equipment, imports };

/// Paints inside (0, 0) … size, faded towards the page.
void paintEmptyExample(QPainter& painter, QSizeF size, EmptyExample example,
                       const Colours& colours);

} // namespace holdband::ui
