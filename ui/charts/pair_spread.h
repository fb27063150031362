// The share of its time that each of two sides spent at each deviation from target, one above the
// other.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"
#include "ui/charts/picture.h"

namespace holdband::ui {

class PairSpreadPicture : public Picture {
public:
    PairSpreadPicture(const results::DeviationCharts& charts, TemperatureUnit unit,
                      PairSides sides);

    bool empty() const { return !m_a && !m_b; }
    void paint(QPainter& painter, QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return 0.3 * width; }

private:
    void paintSide(QPainter& painter, QRectF box, bool first, const PictureLook& look) const;
    void paintTolerance(QPainter& painter, QRectF box, double tolerance,
                        const PictureLook& look) const;
    void paintAxis(QPainter& painter, QRectF box, const PictureLook& look) const;
    double x(QRectF box, double kelvins) const;
    double mostShare() const;

    std::optional<analysis::Distribution> m_a;
    std::optional<analysis::Distribution> m_b;
    double m_toleranceA; ///< K
    double m_toleranceB;
    TemperatureUnit m_unit;
    PairSides m_sides;
    double m_low = -1.0; ///< K
    double m_high = 1.0;
};

} // namespace holdband::ui
