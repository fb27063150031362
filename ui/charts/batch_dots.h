// One measure of every batch of two setups: one dot each, with the mean and its 95 % interval.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"
#include "ui/charts/picture.h"

namespace holdband::ui {

class BatchDotsPicture : public Picture {
public:
    /// `title`: the measure with its unit, "Energy, kWh". The figures are in that unit.
    BatchDotsPicture(QString title, results::MeasureBatches figures, double scale, PairSides sides);

    bool empty() const { return m_figures.a.batches.empty() && m_figures.b.batches.empty(); }
    void paint(QPainter& painter, QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return 0.24 * width; }

private:
    struct Range {
        double low;
        double high;
    };
    Range range() const;
    void paintSide(QPainter& painter, QRectF row, bool first, const PictureLook& look) const;
    double x(QRectF row, double value) const;

    QString m_title;
    results::MeasureBatches m_figures;
    double m_scale; ///< from the measure's own unit to the shown one
    PairSides m_sides;
};

} // namespace holdband::ui
