// The energy of every batch of two setups since pitching: a thin line for each.
#pragma once

#include "core/results/comparison/batch_figures.h"
#include "ui/charts/pair_sides.h"
#include "ui/charts/plot.h"

namespace holdband::ui {

class BatchEnergiesPicture : public PlotPicture {
public:
    using Curves = std::vector<results::EnergyCurve>;
    BatchEnergiesPicture(Curves a, Curves b, PairSides sides);

    bool empty() const { return m_a.empty() && m_b.empty(); }
    std::vector<Plot> plots(QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return 0.56 * width; }

private:
    void addSide(Plot& plot, bool first) const;

    Curves m_a;
    Curves m_b;
    PairSides m_sides;
};

} // namespace holdband::ui
