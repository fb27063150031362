// A chart that can be painted anywhere: on a page, as SVG, into an image. Owns its data, so that it
// outlives the review; painting changes nothing and may happen on any thread.
#pragma once

#include "ui/theme/colours.h"

#include <QFont>
#include <QPainter>
#include <QSizeF>

namespace holdband::ui {

struct PictureLook {
    Scheme scheme = Scheme::light;
    QFont font; ///< in pixels of the picture's own units
    /// For a device of vectors: lines are one path each and clipped at the plot's edge, because not
    /// every such device clips.
    bool vectors = false;
    /// The axis is moving: drawn quickly, a finer drawing follows.
    bool moving = false;
    double columns = 1.0; ///< columns of points per unit of width

    const Colours& colours() const { return coloursOf(scheme); }
};

class Picture {
public:
    virtual ~Picture() = default;
    /// Paints inside (0, 0) … size.
    virtual void paint(QPainter& painter, QSizeF size, const PictureLook& look) const = 0;
    /// The best height for a width.
    virtual double heightFor(double width) const = 0;
};

} // namespace holdband::ui
