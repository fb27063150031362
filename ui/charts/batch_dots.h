// One measure of every batch of two setups: one dot each, with the mean and its 95 % interval.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"
#include "ui/charts/plot.h"

namespace holdband::ui {

class BatchDotsPicture : public PlotPicture {
public:
    /// `title`: the measure with its unit, "Energy, kWh". The figures are in that unit.
    BatchDotsPicture(QString title, results::MeasureBatches figures, double scale, PairSides sides);

    bool empty() const { return m_figures.a.batches.empty() && m_figures.b.batches.empty(); }
    std::vector<Plot> plots(QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return 0.24 * width; }

private:
    ValueRange range() const;
    void addSide(Plot& plot, bool first) const;

    QString m_title;
    results::MeasureBatches m_figures;
    double m_scale; ///< from the measure's own unit to the shown one
    PairSides m_sides;
};

} // namespace holdband::ui
