// What two arrangements cost after so many batches, and where the lines cross.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"
#include "ui/charts/picture.h"

namespace holdband::ui {

class PlotFrame;

class TotalCostPicture : public Picture {
public:
    TotalCostPicture(const results::MoneyWords& money, std::size_t scenario, QString currency,
                     PairSides sides);

    bool empty() const { return m_last <= 0; }
    void paint(QPainter& painter, QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return 0.5 * width; }

private:
    void paintSide(QPainter& painter, const PlotFrame& frame, bool first,
                   const PictureLook& look) const;
    void paintCrossing(QPainter& painter, const PlotFrame& frame, const PictureLook& look) const;

    results::CostScenario m_scenario;
    int m_last = 0; ///< batches
    QString m_currency;
    PairSides m_sides;
};

} // namespace holdband::ui
