// Converts between instants and values and the places of a panel, for mouse and keys.
#pragma once

#include "core/quantity/instant.h"
#include "ui/charts/value_range.h"

#include <QRectF>

namespace holdband::ui {

struct PlotMap {
    QRectF plot;
    Span shown;
    ValueRange range;

    double x(Instant at) const;
    double y(double value) const;
    Instant instantAt(double x) const;
};

} // namespace holdband::ui
