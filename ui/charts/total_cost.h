// The cost of two arrangements after a number of batches, and where the lines cross.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"
#include "ui/charts/plot.h"

namespace holdband::ui {

class TotalCostPicture : public PlotPicture {
public:
    /// `name`: of the scenario, as it is chosen by. Draws nothing where there is no such scenario.
    TotalCostPicture(const results::Money& money, std::size_t scenario, QString name,
                     QString currency, PairSides sides);

    bool empty() const { return m_last <= 0; }
    std::vector<Plot> plots(QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return 0.5 * width; }

private:
    ValueRange costs() const;
    void addSide(Plot& plot, bool first) const;
    void addCrossing(Plot& plot) const;
    void addEnds(Plot& plot) const;

    results::CostScenario m_scenario;
    QString m_name;
    int m_last = 0; ///< batches
    QString m_currency;
    PairSides m_sides;
};

} // namespace holdband::ui
