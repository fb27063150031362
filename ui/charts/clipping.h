// Clips lines and areas at a rectangle's edge by geometry, for devices that do not clip (SVG).
#pragma once

#include <QPolygonF>
#include <QRectF>
#include <vector>

namespace holdband::ui {

/// The parts of an open line inside the rectangle (Liang and Barsky, 1984, piece by piece).
std::vector<QPolygonF> lineInside(const QPolygonF& line, const QRectF& inside);

/// The part of a closed area inside the rectangle (Sutherland and Hodgman, 1974). Empty if there is
/// none.
QPolygonF areaInside(const QPolygonF& area, const QRectF& inside);

} // namespace holdband::ui
