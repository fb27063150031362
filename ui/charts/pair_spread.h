// The share of its time that each of two sides spent at each deviation from target, one above the
// other.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"
#include "ui/charts/plot.h"

namespace holdband::ui {

class PairSpreadPicture : public PlotPicture {
public:
    PairSpreadPicture(const results::DeviationCharts& charts, TemperatureUnit unit,
                      PairSides sides);

    bool empty() const { return !m_a && !m_b; }
    /// A's above B's.
    std::vector<Plot> plots(QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return 0.3 * width; }

private:
    double inUnit(double kelvins) const;
    void addTolerance(Plot& plot, double tolerance) const;
    void addSide(Plot& plot, bool first) const;
    void addAxis(Plot& plot) const;
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
